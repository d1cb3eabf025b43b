import { render } from '@testing-library/svelte';
import { userEvent } from '@testing-library/user-event';
import { flushSync } from 'svelte';
import { vi } from 'vitest';
import { FIRST_PREFERENCES, type Preferences } from '../../src/domain/preferences';
import type { Instant } from '../../src/domain/unit';
import { builtInSheets } from '../../src/procedure/kits';
import type { KitSheet } from '../../src/procedure/kit-sheet';
import type { Gate } from '../../src/procedure/phase';
import { en } from '../../src/text/en';
import { formatsFor } from '../../src/text/formats';
import { RULES } from '../../src/domain/gates/passing';
import type { Problem } from '../../src/domain/problem';
import type { Told } from '../../src/workflow/journal';
import { silentHands } from './silent-hands.svelte';
import { Maker } from './maker';
import BenchScreen from '../../src/ui/bench/BenchScreen.svelte';
import { laterParts } from '../../src/ui/bench/later-parts';
import type { RestOfBench } from '../../src/ui/bench/rest-of-bench';

/** A sheet with no wine of its own name: a light fruit wine, three stabiliser sachets, sweetened, racked when dry. */
export const fruitWine = builtInSheets.find(({ id }) => id === 'hedge-lantern') as KitSheet;

/** A maker who stands before an act. */
export function before(act: string, maker = new Maker(fruitWine)): Maker {
  for (let steps = 0; maker.act?.id !== act; steps += 1) {
    const problem = maker.act ? maker.answer() : maker.prove(maker.place as Gate);
    if (problem ?? steps > 500) throw new Error(`never came to ${act}: ${JSON.stringify(problem)}`);
  }
  return maker;
}

/** All of the bench has come. */
const rest = { parts: laterParts, text: en };
const come: RestOfBench = { now: rest, failed: false, bring: () => Promise.resolve(rest) };

/** The bench in front of a maker: what is reported goes to the real batch, and the screen follows. */
export function benchOf(maker: Maker, preferences: Partial<Preferences> = {}, restOfBench = come) {
  const chosen = { ...FIRST_PREFERENCES, ...preferences };
  const reports: Told[] = [];
  const formats = formatsFor({ preferences: chosen, language: 'en', timeZone: 'Europe/Berlin' });
  const calls = {
    onleave: vi.fn(),
    onjournal: vi.fn(),
    onlabels: vi.fn(),
    onsafety: vi.fn(),
    onwake: vi.fn(),
    oncopy: vi.fn(() => Promise.resolve(true)),
  };
  const props = $state({
    snapshot: maker.snapshot,
    now: maker.now,
    text: en,
    formats,
    preferences: chosen,
    hands: silentHands({ text: en, formats, whole: () => restOfBench.now?.text }, () => maker.now.at, take),
    rest: restOfBench,
    ...calls,
    onreport: take,
  });
  function take(told: Told): Promise<Problem | undefined> {
    reports.push(told);
    const problem = maker.report(
      told.type === 'gate passed' ? { ...told, rules: RULES, readings: [] } : told,
    );
    props.snapshot = maker.snapshot;
    return Promise.resolve(problem);
  }
  const screen = render(BenchScreen, { props });
  const user = userEvent.setup();
  const press = (name: string | RegExp) => user.click(screen.getByRole('button', { name }));
  return {
    ...screen,
    ...calls,
    user,
    reports,
    pad: (name: string | RegExp) => screen.getByRole('button', { name }),
    press,
    /** Answers the warning that stands before the act. */
    heed: () => press(/^ready to continue/),
    type: (label: string | RegExp, words: string) => user.type(screen.getByLabelText(label), words),
    captions: () => props.hands.captions,
    heading: () => screen.getByRole('heading', { level: 1 }).textContent,
    /** The clock moves on, as the app's does. */
    later: (seconds: number) => {
      maker.now = { ...maker.now, at: (maker.now.at + seconds * 1000) as Instant };
      flushSync(() => {
        props.now = maker.now;
      });
      props.hands.tick();
    },
  };
}
