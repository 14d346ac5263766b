import { filmReflectance } from '#core/light/film-reflectance.formula.ts';
import { refractionAngle } from '#core/light/refraction-angle.formula.ts';
import { surfaceReflectanceP } from '#core/light/surface-reflectance-p.formula.ts';
import { surfaceReflectanceS } from '#core/light/surface-reflectance-s.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Surface {
  incidenceAngle: number;
  refractiveIndex: number;
}

const inside = (given: Surface) => ({ refractionAngle: refractionAngle(given) });
const both = (given: Surface) => ({ s: surfaceReflectanceS(given), p: surfaceReflectanceP(given) });

/** Where p is least, in steps of a hundredth of a degree. */
function leastReflecting({ refractiveIndex }: { refractiveIndex: number }) {
  const steps = Array.from({ length: 9000 }, (_, index) => ((index / 100) * Math.PI) / 180);
  const shareAt = (incidenceAngle: number) => surfaceReflectanceP({ incidenceAngle, refractiveIndex });
  return { incidenceAngle: steps.reduce((best, angle) => (shareAt(angle) < shareAt(best) ? angle : best)) };
}

export const ours = oursById({
  'colour-snell-glass': inside,
  'colour-snell-water': inside,
  'colour-fresnel-square': both,
  'colour-fresnel-30': both,
  // Squarely, where both polarisations are alike.
  'colour-film': (film: { refractiveIndex: number; filmThickness: number; wavelength: number }) => ({
    filmReflectance: filmReflectance({
      ...film,
      refractionAngle: 0,
      reflectance: surfaceReflectanceS({ ...film, incidenceAngle: 0 }),
    }),
  }),
  'up3-ex1.7-water': leastReflecting,
  'up3-ex1.7-glass': leastReflecting,
});
