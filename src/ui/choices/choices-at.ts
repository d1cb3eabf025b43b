import type { Problem } from '../../domain/problem';
import { canBeLeftOut } from '../../procedure/can-be-left-out';
import type { Check } from '../../procedure/check';
import type { Sachet } from '../../procedure/kit-sheet';
import { isEnd, type Gate } from '../../procedure/phase';
import { mayYield } from '../../workflow/may-yield';
import type { Bench } from '../bench/bench.svelte';
import { isWaiting } from '../bench/is-waiting';
import type { Offer } from '../bench/offer';
import type { Choice } from './choice';
import { paceAt } from './pace-at';

/** What the maker may choose where the batch stands, beside the procedure. On the pads it is folded, after all others. */
export function choicesAt(bench: Bench): Offer[] {
  if (isEnd(bench.place)) return [];
  const ways = bench.words.otherWays;
  const choose = (phrase: string, choice: Choice): Offer => ({
    phrase,
    folded: 'always',
    onpress: () => bench.choose(choice),
  });
  const offers = [
    ...(isForAReason(bench) ? [choose(ways.inSpiteOf, { page: 'in spite of' })] : []),
    ...(isForNone(bench) ? [choose(ways.whyNot, { page: 'why not' })] : []),
    ...(isTooHeavy(bench) ? [choose(ways.sugarTest, { page: 'sugar test' })] : []),
    ...(paceAt(bench)?.code === 'stuck' ? [choose(ways.help, { page: 'help' })] : []),
    ...leavable(bench).map((sachet) => choose(ways.leaveOut(sachet.printed), { page: 'leave out', sachet })),
    ...(bench.facts.entries === 0 ? [choose(ways.join, { page: 'join' })] : []),
    ...(isWaiting(bench) ? [choose(ways.away, { page: 'away' })] : []),
  ];
  return offers.filter(({ phrase }, index) => offers.findIndex((each) => each.phrase === phrase) === index);
}

const failedIn = ({ held }: Bench): readonly Problem[] =>
  held ? [held.verdict.because, ...held.verdict.also] : [];

/** Every clause that fails gives way to a reason. */
const isForAReason = ({ held, facts }: Bench): boolean =>
  held !== undefined &&
  [held.verdict.because, ...held.verdict.also].every(
    ({ code }) => mayYield(held.question, code, facts) === 'to a reason',
  );

const isForNone = (bench: Bench): boolean =>
  bench.held !== undefined && GUARDS_THE_WINE.has(bench.held.question) && !isForAReason(bench);

/** What is asked so that nobody is hurt and no wine is lost. The rest asks for gear, counts and warmth. */
const GUARDS_THE_WINE: ReadonlySet<Gate | Check> = new Set<Gate | Check>([
  'proving dry',
  'proving gas-free',
  'proving clear',
  'proving still',
  'may stabilise',
  'may sweeten',
  'may bottle',
]);

const isTooHeavy = (bench: Bench): boolean =>
  bench.place === 'proving dry' &&
  failedIn(bench).some(({ code }) => code === 'not-dry' || code === 'was-not-dry');

/** The sachet that is to go in, or those that were not found. */
function leavable({ act, facts, sheet }: Bench): readonly Sachet[] {
  const missing = (act && facts.missing[act.id]) ?? [];
  const asked =
    act?.kind === 'add'
      ? [act.sachet]
      : act?.kind === 'account'
        ? act.sachets.filter(({ printed }) => missing.includes(printed))
        : [];
  return asked.filter((sachet) => canBeLeftOut(sheet, facts, sachet));
}
