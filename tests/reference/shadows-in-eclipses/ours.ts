import { illuminanceByInverseSquare } from '#core/exposure/illuminance-by-inverse-square.formula.ts';
import { illuminanceFromDisc } from '#core/exposure/illuminance-from-disc.formula.ts';
import { diffuserDistance } from '#core/light/diffuser-distance.formula.ts';
import { penumbra } from '#core/light/penumbra.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

/** How far something one wide has to be to look so wide. */
const widthsAway = (sunAngle: number) => diffuserDistance({ sourceSize: 1, sourceAngle: sunAngle });

interface Lunar {
  readonly sunAngle: number;
  readonly sunDistance: number;
  readonly edgeHeight: number;
  readonly edgeDiameter: number;
}
interface Solar {
  readonly sunDiameter: number;
  readonly sunDistance: number;
  readonly edgeHeight: number;
  readonly edgeDiameter: number;
}

export const ours = oursById({
  'lunar-eclipse': ({ sunAngle, sunDistance, edgeHeight, edgeDiameter }: Lunar) => {
    const rim = penumbra({
      sourceSize: sunDistance / widthsAway(sunAngle),
      flashDistance: sunDistance + edgeHeight,
      edgeHeight,
    });
    return { core: edgeDiameter - rim, whole: edgeDiameter + rim };
  },
  'moon-shadow': ({ sunDiameter, sunDistance, edgeHeight, edgeDiameter }: Solar) => ({
    whole: edgeDiameter + penumbra({ sourceSize: sunDiameter, flashDistance: sunDistance, edgeHeight }),
  }),
  'bright-sunlight': ({ luminance, sunAngle }: { luminance: number; sunAngle: number }) => {
    const sun = { luminance, sourceSize: 1, flashDistance: widthsAway(sunAngle) };
    return { illuminance: illuminanceFromDisc(sun), bySquareLaw: illuminanceByInverseSquare(sun) };
  },
});
