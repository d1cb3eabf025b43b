import type { Celsius, Litres } from '../../src/domain/unit';
import type { Act } from '../../src/procedure/step';
import type { Maker } from '../story/maker';

type Answer = { name: string; deed: (maker: Maker) => void };
type Answers<Kind extends Act['kind']> = (act: Extract<Act, { kind: Kind }>, maker: Maker) => Answer[];

const how = 'touch' as const;

const OTHERS: { [Kind in Act['kind']]?: Answers<Kind> } = {
  temperature: ({ id }) =>
    [12, 35].map((celsius) => ({
      name: `measures ${String(celsius)} °C`,
      deed: (of) => {
        of.report({ type: 'temperature taken', how, act: id, celsius: celsius as Celsius });
      },
    })),
  gap: ({ id, atMost }) => [
    {
      name: 'finds the gap too wide',
      deed: (of) => {
        of.report({ type: 'gap measured', how, act: id, millimetres: atMost + 20 });
      },
    },
  ],
  litres: ({ id, of: what, suggested }, { sheet }) =>
    LITRES[what]?.(suggested, sheet.batchLitres).map((litres) => ({
      name: `measures ${litres.toFixed(2)} L of ${what}`,
      deed: (of) => {
        of.report({ type: 'litres measured', how, act: id, litres: litres as Litres });
      },
    })) ?? [],
  account: ({ id, sachets }) => [
    {
      name: 'misses a sachet',
      deed: (of) => {
        const missing = sachets.slice(0, 1).map(({ printed }) => printed);
        of.report({ type: 'sachets accounted', how, act: id, missing });
      },
    },
  ],
  bottles: ({ id, wanted }) => [
    {
      name: 'counts too few bottles, some with a screw thread',
      deed: (of) => {
        const counted = { bottles: wanted - 1, closures: wanted, threaded: true };
        of.report({ type: 'bottles counted', how, act: id, ...counted });
      },
    },
  ],
  stir: ({ id, step }) =>
    step !== 'stir must'
      ? []
      : [
          {
            name: 'stirs for a moment only',
            deed: (of) => {
              of.report({ type: 'clock started', how, act: id });
              of.report({ type: 'act done', how, act: id });
            },
          },
        ],
};

/** Vessels that are too small, that are tight, and one that leaves no room for foam. */
const LITRES: Partial<
  Record<Extract<Act, { kind: 'litres' }>['of'], (suggested: number, batch: number) => number[]>
> = {
  brim: (_, batch) => [batch, batch * 1.15],
  vessel: (suggested) => [suggested + 0.2],
};

/** Answers other than a careful maker's, where an act can be answered in more ways than one. */
export function otherAnswers(maker: Maker): Answer[] {
  const { act } = maker;
  const others = act && (OTHERS[act.kind] as Answers<Act['kind']> | undefined);
  return act && others ? others(act, maker) : [];
}
