import { erf } from '#core/exposure/erf.ts';
import { framesForChance } from '#core/exposure/frames-for-chance.ts';
import { keeperFrames } from '#core/exposure/keeper-frames.formula.ts';
import { keeperShare } from '#core/exposure/keeper-share.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

const erfOf = ({ x }: { x: readonly number[] }) => ({ erf: x.map(erf) });
const trials = ({ share, chance }: { share: number; chance: number }) => ({ frames: framesForChance(share, chance) });

export const ours = oursById({
  'erf-table': erfOf,
  'erf-sigma-rule': ({ deviations }: { deviations: readonly number[] }) => ({
    share: deviations.map((limit) => keeperShare({ nearLimit: limit, farLimit: limit, sway: 1, focusOffset: 0 })),
  }),
  'erf-scipy': erfOf,
  'trials-nineteen-in-twenty': (given: { keeperShare: number }) => ({ frames: keeperFrames(given) }),
  'trials-one-in-three': trials,
  'trials-three-of-half': trials,
});
