import type { Mishap } from '../../procedure/mishap';
import type { MishapWords } from './mishap-words';
import { mishapsWhileFermenting } from './mishaps-fermenting';
import { mishapsWithBottles } from './mishaps-bottles';
import { mishapsWithSachets } from './mishaps-sachets';
import { mishapsWithTheWine } from './mishaps-wine';
import { mishapsWithVessels } from './mishaps-vessels';

/** Everything that can be told under "What happened?". */
export const mishaps: Record<Mishap, MishapWords> = {
  ...mishapsWithSachets,
  ...mishapsWithVessels,
  ...mishapsWhileFermenting,
  ...mishapsWithTheWine,
  ...mishapsWithBottles,
};
