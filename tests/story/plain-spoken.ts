import type { Gravity } from '../../src/domain/gravity';
import type { Litres } from '../../src/domain/unit';
import type { Problem } from '../../src/domain/problem';
import type { Act } from '../../src/procedure/step';
import { Maker, type Wine } from './maker';

/** Dry from the fifth day, through few numbers. */
export const PLAIN_WINE: Wine = {
  gravityOn: (day) => (day < 0.5 ? 1.067 : day < 4 ? 1.026 : 0.995),
  celsius: 21,
};

const SOUND_BOTTLES = 30;
const GAP = 20;

/** A maker whose numbers can all be said in a few words: whole thousandths, whole litres. */
export class PlainSpoken extends Maker {
  override fork(): PlainSpoken {
    return new PlainSpoken(this.sheet, this.wine, this.input.begun, this);
  }

  override shown(): Gravity {
    return (Math.round(super.shown() / 10) * 10) as Gravity;
  }

  override litres(act: Extract<Act, { kind: 'litres' }>): Litres {
    return Math.floor(super.litres(act)) as Litres;
  }

  override answer(): Problem | undefined {
    const { act } = this;
    const how = 'voice';
    if (act?.kind === 'bottles')
      return this.report({
        type: 'bottles counted',
        ...{ how, act: act.id, bottles: SOUND_BOTTLES, closures: SOUND_BOTTLES, threaded: false },
      });
    if (act?.kind === 'gap') return this.report({ type: 'gap measured', how, act: act.id, millimetres: GAP });
    return super.answer();
  }
}
