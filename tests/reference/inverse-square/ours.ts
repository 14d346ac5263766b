import { illuminanceByInverseSquare } from '#core/exposure/illuminance-by-inverse-square.formula.ts';
import { illuminanceFromDisc } from '#core/exposure/illuminance-from-disc.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

/** The law for any source: in proportion to what a small disc gives. */
function byLaw({ illuminance, from, to }: { illuminance: number; from: number; to: number }) {
  const at = (flashDistance: number) => illuminanceByInverseSquare({ luminance: 1, sourceSize: 1, flashDistance });
  return { illuminance: (illuminance * at(to)) / at(from) };
}

const disc = (distanceOverRadius: number) => ({ luminance: 1, sourceSize: 2, flashDistance: distanceOverRadius });

const shareOfContact = ({ distanceOverRadius }: { distanceOverRadius: number }) => ({
  shareOfContact: illuminanceFromDisc(disc(distanceOverRadius)) / Math.PI,
});

export const ours = oursById({
  'ryer-halved': byLaw,
  'ryer-doubled': byLaw,
  'ryer-plateau': shareOfContact,
  'ryer-five-times': ({ distanceOverRadius }: { distanceOverRadius: number }) => ({
    overestimate: illuminanceByInverseSquare(disc(distanceOverRadius)) / illuminanceFromDisc(disc(distanceOverRadius)),
  }),
  'jonasz-disc': (given: { luminance: number; radius: number; distances: readonly number[] }) => ({
    illuminance: given.distances.map((flashDistance) =>
      illuminanceFromDisc({ luminance: given.luminance, sourceSize: 2 * given.radius, flashDistance }),
    ),
  }),
  'disc-tenth-of-radius': shareOfContact,
});
