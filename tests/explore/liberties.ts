import { asOf } from '../../src/procedure/facts';
import { judge } from '../../src/procedure/judge';
import { isPhase, type Gate } from '../../src/procedure/phase';
import { stabilisersOf } from '../../src/procedure/limits';
import type { Maker } from '../story/maker';
import type { Move } from './moves';

const REASON = 'my own decision, for good reasons';

/** What a maker may do against the guide's advice: whether a clause yields to it is the guide's to say. */
export function liberties(maker: Maker): Move[] {
  const at = maker.now.at;
  const { place, act } = maker;
  const question = isPhase(place) ? act?.check : (place as Gate);
  return [...(question ? overrides(maker, question) : []), ...leavesOut(maker), ...sugarTest(maker)].map(
    (move) => ({ ...move, at, costs: 'liberties' }),
  );
}

type Liberty = Pick<Move, 'name' | 'deed'>;

/** Every clause that fails is pressed, those that yield to nothing as well. */
function overrides(maker: Maker, question: Parameters<typeof judge>[0]): Liberty[] {
  const verdict = judge(question, maker.sheet, asOf(maker.facts, maker.now));
  if (verdict.open) return [];
  return [verdict.because, ...verdict.also].map(({ code: clause }) => ({
    name: `overrides ${question}: ${clause}`,
    deed: (of) => {
      of.report({ type: 'overridden', how: 'touch', question, clause, reason: REASON });
    },
  }));
}

function leavesOut({ sheet, act }: Maker): Liberty[] {
  const [sachet] = act?.kind === 'account' ? stabilisersOf(sheet) : [];
  return sachet
    ? [
        {
          name: `leaves out ${sachet.printed}`,
          deed: (of) => {
            of.report({ type: 'left out', how: 'touch', sachet: sachet.id, reason: REASON });
          },
        },
      ]
    : [];
}

const sugarTest = ({ place }: Maker): Liberty[] =>
  place !== 'proving dry'
    ? []
    : [1.5, 6].map((gramsPerLitre) => ({
        name: `tests the sugar: ${String(gramsPerLitre)} g/L`,
        deed: (of) => {
          of.report({ type: 'sugar tested', how: 'touch', gramsPerLitre });
        },
      }));
