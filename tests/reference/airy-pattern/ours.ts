import { airyIntensity, encircledEnergy } from '#core/wave/airy-pattern.ts';
import { airyRings } from '#core/wave/airy-rings.ts';
import { oursById } from '#tests/support/reference-case.ts';
import { rootBetween } from '#tests/support/root-between.ts';

/** With λ N_w = 1 lengths are in units of λ N_w. */
const unit = { wavelength: 1, effectiveFNumber: 1 };
const energyWithin = (imageRadius: number) => encircledEnergy({ ...unit, imageRadius });

export const ours = oursById({
  'airy-dark-rings': ({ count }: { count: number }) => {
    const radius = airyRings(unit, count).dark;
    return { radius, energy: radius.map(energyWithin) };
  },
  'airy-encircled-energy': ({ opticalRadius }: { opticalRadius: number[] }) => ({
    energy: opticalRadius.map((v) => energyWithin(v / Math.PI)),
  }),
  'airy-ring-energies': ({ count }: { count: number }) => {
    const within = airyRings(unit, count).dark.map(energyWithin);
    return { energy: within.map((share, ring) => share - (within[ring - 1] ?? 0)) };
  },
  'airy-half-width': ({ intensity }: { intensity: number }) => ({
    width: 2 * rootBetween(0, 1, (imageRadius) => airyIntensity({ ...unit, imageRadius }) - intensity),
  }),
});
