import { imageThrough } from '#core/rig/image-through.ts';
import { glassPoints } from '#core/rig/paraxial-trace.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Singlet {
  radii: readonly [number, number];
  thickness?: number;
  index: number;
}

const points = ({ radii: [first, second], thickness = 0, index }: Singlet) =>
  glassPoints([
    { radius: first, thickness, index },
    { radius: second, thickness: 0, index: 1 },
  ]);

function thinAndThick(singlet: Singlet) {
  return { thin: points({ ...singlet, thickness: 0 }).focalLength, thick: points(singlet).focalLength };
}

function surface(given: { indexBefore: number; index: number; radius: number; subjectDistance: number }) {
  const { imageDistance } = imageThrough([{ ...given, thickness: 0 }], given.subjectDistance, given.indexBefore);
  return { imageDistance };
}

interface Reflection {
  subjectDistance: number;
  magnification: number;
}

/** The mirror that shows a subject upright and so large: a surface with the negative index of air behind it. */
function mirrorFor({ subjectDistance, magnification }: Reflection) {
  const shown = (curvature: number) =>
    imageThrough([{ radius: 1 / curvature, thickness: 0, index: -1 }], subjectDistance).magnification;
  // 1/m is linear in the curvature, so that a flat mirror and one other tell all. A concave mirror's radius is negative.
  const perCurvature = (1 / shown(1 / subjectDistance) - 1 / shown(0)) * subjectDistance;
  const curvature = (1 / magnification - 1 / shown(0)) / perCurvature;
  return { focalLength: -1 / (2 * curvature) };
}

export const ours = oursById({
  'hecht-thick': (singlet: Singlet) => {
    const { focalLength, frontPrincipal, rearPrincipal } = points(singlet);
    return { focalLength, frontPrincipal, rearPrincipal };
  },
  'biconvex-thin-thick': (singlet: Singlet) => {
    const both = thinAndThick(singlet);
    return { ...both, power: 1000 / both.thick };
  },
  'plano-convex-thin-thick': thinAndThick,
  'ball-lens': ({ radius, index }: { radius: number; index: number }) => {
    const { focalLength, backFocus } = points({ radii: [radius, -radius], thickness: 2 * radius, index });
    return { focalLength, backFocus };
  },
  // A thin lens scales: its focal length is its radius times that of radius 1.
  'up3-ex2.3': ({ index, focalLength }: { index: number; focalLength: number }) => ({
    radius: focalLength / points({ radii: [-1, 1], index }).focalLength,
  }),
  'up3-2.135': (singlet: Singlet) => ({ focalLength: points(singlet).focalLength }),
  'up3-2.45': surface,
  'up3-2.47': surface,
  'up3-2.35': mirrorFor,
});
