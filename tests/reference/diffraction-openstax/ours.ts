import { airyDiameter } from '#core/wave/airy-diameter.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Opening {
  wavelength: number;
  /** Diameter, mm. */
  aperture: number;
}

/** Radius of the Airy disc at a distance behind an opening: the separation that Rayleigh calls just resolved. */
const separation = ({ wavelength, aperture }: Opening, distance: number) =>
  airyDiameter({ wavelength, effectiveFNumber: distance / aperture }) / 2;

/** Small as an angle, whatever the distance: from far enough that the cone is slender. */
const far = 1e5;
const angle = (opening: Opening) => separation(opening, far) / far;

export const ours = oursById({
  'openstax-rayleigh-galaxy': ({ distanceInLightYears, ...telescope }: Opening & { distanceInLightYears: number }) => ({
    angle: angle(telescope),
    separationInLightYears: angle(telescope) * distanceInLightYears,
  }),
  'openstax-airy-retina': ({ distance, ...eye }: Opening & { distance: number }) => ({
    radius: separation(eye, distance),
  }),
  'openstax-beam-divergence': ({ distance, ...beam }: Opening & { distance: number }) => ({
    angle: angle(beam),
    spot: 2 * separation(beam, distance),
  }),
  // The separation falls as one over the aperture, so what an aperture of 1 mm leaves unresolved says how many mm are needed.
  'openstax-moon-detail': (moon: { wavelength: number; detail: number; distance: number }) => ({
    aperture: separation({ wavelength: moon.wavelength, aperture: 1 }, moon.distance) / moon.detail,
  }),
  'openstax-lamps': ({ distance, ...eye }: Opening & { distance: number }) => ({
    separation: separation(eye, distance),
  }),
  // On the subject's side the cone's f-number is 1/(2 NA).
  'openstax-microscope': (microscope: { wavelength: number; numericalAperture: number[] }) => ({
    separation: microscope.numericalAperture.map(
      (na) => airyDiameter({ wavelength: microscope.wavelength, effectiveFNumber: 1 / (2 * na) }) / 2,
    ),
  }),
});
