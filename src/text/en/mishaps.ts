import type { Mishap } from '../../procedure/mishap';
import type { MishapWords } from './mishap-words';
import { mishapsWhileFermenting } from './mishaps-fermenting';
import { mishapsWithBottles } from './mishaps-bottles';
import { mishapsWithSachetsIn } from './mishaps-sachets-in';
import { mishapsWithSachetsOut } from './mishaps-sachets-out';
import { mishapsWithTheWine } from './mishaps-wine';
import { mishapsWithGear } from './mishaps-gear';
import { mishapsWithLitres } from './mishaps-litres';

/** Everything that can be told under "What happened?". */
export const mishaps: Record<Mishap, MishapWords> = {
  ...mishapsWithSachetsIn,
  ...mishapsWithSachetsOut,
  ...mishapsWithLitres,
  ...mishapsWithGear,
  ...mishapsWhileFermenting,
  ...mishapsWithTheWine,
  ...mishapsWithBottles,
};
