import { blurDiscTransfer } from '#core/wave/blur-disc-transfer.ts';
import { opticalTransfer } from '#core/wave/optical-transfer.ts';
import { strehlRatio } from '#core/wave/point-spread.ts';
import { oursById } from '#tests/support/reference-case.ts';
import { rootBetween } from '#tests/support/root-between.ts';

interface Shares {
  waves: number;
  share: number[];
}

const strehl = (waves: number) => strehlRatio({ defocusAberration: waves, sphericalAberration: 0 });
const transfer = (waves: number, share: number) =>
  opticalTransfer({ spatialFrequency: share, cutoffFrequency: 1, defocusAberration: waves, sphericalAberration: 0 });
const transfers = ({ waves, share }: Shares) => ({ transfer: share.map((s) => transfer(waves, s)) });

/** From 0.3 to 0.6 of the cutoff, where reversal begins, in steps too fine to miss it. */
const middle = Array.from({ length: 301 }, (_, n) => 0.3 + n / 1000);

export const ours = oursById({
  // u = 4π W₀₂₀, so W₀₂₀ is a quarter of u/π.
  'on-axis-through-focus': ({ uOverPi }: { uOverPi: number[] }) => ({ intensity: uOverPi.map((u) => strehl(u / 4)) }),
  'strehl-of-0.8': ({ intensity }: { intensity: number }) => {
    const waves = rootBetween(0, 0.5, (w) => strehl(w) - intensity);
    return { u: 4 * Math.PI * waves, waves };
  },
  'otf-quarter-wave': transfers,
  'otf-half-wave': transfers,
  'otf-one-wave': transfers,
  'onset-of-reversal': ({ from, to }: { from: number; to: number }) => ({
    waves: rootBetween(from, to, (waves) => Math.min(...middle.map((s) => transfer(waves, s)))),
  }),
  'first-zero-one-wave': ({ waves }: { waves: number }) => ({
    share: rootBetween(0.1, 0.25, (s) => transfer(waves, s)),
  }),
  // With λ N_w = 1 the cutoff is 1 and the blur diameter 8 W₀₂₀.
  'blur-disc-at-four-waves': ({ waves, share }: Shares) => ({
    geometry: share.map((s) => blurDiscTransfer({ defocusBlur: 8 * waves, spatialFrequency: s })),
    waveOptics: share.map((s) => transfer(waves, s)),
  }),
});
