import { contrast } from '#core/wave/contrast.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';
import { rootBetween } from '#tests/support/root-between.ts';

const at = (share: number) => contrast({ spatialFrequency: share, cutoffFrequency: 1 });

export const ours = oursById({
  'mtf-of-circle': ({ share }: { share: number[] }) => ({ contrast: share.map(at) }),
  'mtf-scipy': ({ share }: { share: number[] }) => ({ contrast: share.map(at) }),
  'mtf-landmarks': (wanted: { contrast: number[] }) => ({
    share: wanted.contrast.map((left) => rootBetween(0, 1, (share) => at(share) - left)),
  }),
});
