import { ambientShare } from '#core/exposure/ambient-share.formula.ts';
import { electrons } from '#core/exposure/electrons.formula.ts';
import { isoAtFullWell } from '#core/exposure/iso-at-full-well.formula.ts';
import { signalToNoise } from '#core/exposure/signal-to-noise.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

const tone = (pixel: Parameters<typeof electrons>[0] & Parameters<typeof isoAtFullWell>[0]) => ({
  electrons: electrons(pixel),
  isoAtFullWell: isoAtFullWell(pixel),
});

export const ours = oursById({
  'tone-scipy-1': tone,
  'tone-scipy-2': tone,
  'tone-scipy-3': tone,
  'noise-scipy': ({ counts, readNoise }: { counts: readonly number[]; readNoise: readonly number[] }) => ({
    signalToNoise: counts.map((count, index) => signalToNoise({ electrons: count, readNoise: readNoise[index]! })),
  }),
  'ambient-scipy': ({ stops }: { stops: readonly number[] }) => {
    const shares = stops.map((ambientUnderexposure) => ambientShare({ ambientUnderexposure }));
    // The flash alone is the rest of the light, and makes a full exposure.
    return { ambientShare: shares, overexposure: shares.map((share) => -Math.log2(1 - share)) };
  },
});
