import { ballRadiusFromCatchlight } from '#core/light/ball-radius-from-catchlight.formula.ts';
import { catchlightWidthParaxial } from '#core/light/catchlight-width-paraxial.formula.ts';
import { convexMirrorImage } from '#core/light/convex-mirror.ts';
import { oursById } from '#tests/support/reference-case.ts';

const radiusOf = (given: { subjectDistance: number; subjectWidth: number; imageWidth: number }) =>
  ballRadiusFromCatchlight({
    sourceSize: given.subjectWidth,
    flashDistance: given.subjectDistance,
    catchlightWidthParaxial: given.imageWidth,
  });

export const ours = oursById({
  'up3-ex2.2': ({ subjectDistance, magnification }: { subjectDistance: number; magnification: number }) => {
    const ballRadius = radiusOf({ subjectDistance, subjectWidth: 1, imageWidth: magnification });
    return { ballRadius, focalLength: ballRadius / 2 };
  },
  'up3-2.37': (given: { subjectDistance: number; subjectWidth: number; imageWidth: number }) => {
    const ballRadius = radiusOf(given);
    const { depth, magnification } = convexMirrorImage({ subjectDistance: given.subjectDistance, ballRadius });
    return { magnification, depth, focalLength: ballRadius / 2, ballRadius };
  },
  'up3-2.129': (given: { ballRadius: number; subjectDistance: number; subjectWidth: number }) => ({
    depth: convexMirrorImage(given).depth,
    imageWidth: catchlightWidthParaxial({
      sourceSize: given.subjectWidth,
      ballRadius: given.ballRadius,
      flashDistance: given.subjectDistance,
    }),
  }),
});
