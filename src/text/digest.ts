import { litresNow, type Facts } from '../procedure/facts';
import { printedOn } from '../procedure/judge';
import type { KitSheet } from '../procedure/kit-sheet';
import { isPhase, type Place } from '../procedure/phase';
import { currentAct } from '../procedure/plan';
import { dayOf, momentOf } from '../procedure/selections';
import type { Moment } from '../domain/calendar';
import type { Formats } from './formats';
import type { Text } from './text';

type Digested = { sheet: KitSheet; facts: Facts; place: Place };

/** The facts that every helper asks for, in one short text to copy: nothing that names the maker. */
export function digest({ sheet, facts, place }: Digested, text: Text, formats: Formats): string {
  const { digest: words } = text;
  const told = { sheet, facts, text, formats };
  const sections = [
    [words.head(sheet.name, sheet.edition, sheet.wine.style)],
    [standing(place, told)],
    section(words.readings, readings(told)),
    section(words.additions, additions(told)),
    section(
      words.overrides,
      facts.overrides.map(
        ({ clause, reason, ...moment }) => `${on(moment, told)}: ${text.override.afterwards(clause, reason)}`,
      ),
    ),
    section(
      words.leftOut,
      Object.entries(facts.leftOut).map(([id, reason]) => `${printedOn(sheet, id)}: ${reason}`),
    ),
    section(words.mishaps, mishaps(told)),
  ];
  return sections.flat().join('\n');
}

type Telling = { sheet: KitSheet; facts: Facts; text: Text; formats: Formats };

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', title, ...lines.map((line) => `- ${line}`)];

function standing(place: Place, { sheet, facts, text, formats }: Telling): string {
  const day = dayOf(facts, facts.now);
  const act = isPhase(place) ? currentAct(place, sheet, facts) : undefined;
  return text.digest.standing(
    text.places[place],
    act && text.stepNames[act.step],
    day === undefined ? undefined : formats.dayNumber(day),
    litresNow(facts) > 0 ? formats.litres(litresNow(facts)) : undefined,
  );
}

const on = (moment: Moment, { facts, text, formats }: Telling): string => {
  const day = dayOf(facts, moment);
  return day === undefined || day < 0 ? text.digest.beforeYeast : formats.dayNumber(day);
};

const readings = (told: Telling): string[] =>
  told.facts.readings
    .filter(({ struck }) => !struck)
    .toSorted((a, b) => a.takenAt - b.takenAt)
    .map((reading) =>
      told.text.digest.reading(
        on(momentOf(reading), told),
        told.formats.gravity(reading.gravity),
        told.formats.gravity(reading.read),
        told.formats.celsius(reading.sample),
        told.formats.celsius(reading.wine),
        reading.degassed,
      ),
    );

const additions = (told: Telling): string[] =>
  told.facts.additions.map(
    ({ sachet, ...moment }) => `${on(moment, told)}: ${printedOn(told.sheet, sachet)}`,
  );

const mishaps = (told: Telling): string[] =>
  told.facts.mishaps
    .filter(({ struck }) => !struck)
    .map(({ mishap, sachet, litres, ...moment }) =>
      [
        `${on(moment, told)}: ${told.text.whatHappened.mishaps[mishap].title}`,
        ...(sachet === undefined ? [] : [printedOn(told.sheet, sachet)]),
        ...(litres === undefined ? [] : [told.formats.litres(litres)]),
      ].join(', '),
    );
