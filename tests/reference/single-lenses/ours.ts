import { glassPoints, imageThrough } from '#core/rig/paraxial-trace.ts';
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

/** Lengths behind a mirror run against the light that comes: an image behind it, which books call negative, is positive. */
const mirror = (radius: number, subjectDistance: number) => {
  const { imageDistance, magnification } = imageThrough([{ radius, thickness: 0, index: -1 }], subjectDistance);
  return { imageDistance: -imageDistance, magnification };
};

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
  'up3-2.129': (given: { radius: number; subjectDistance: number; subjectHeight: number }) => {
    const { imageDistance, magnification } = mirror(given.radius, given.subjectDistance);
    return { imageDistance, imageHeight: magnification * given.subjectHeight };
  },
  // Half the radius is the focal length; the concave mirror's radius is negative, and m = f/(f − s) asks for f = s m/(m − 1).
  'up3-2.35': ({ magnification, subjectDistance }: { magnification: number; subjectDistance: number }) => {
    const focalLength = (subjectDistance * magnification) / (magnification - 1);
    const check = mirror(-2 * focalLength, subjectDistance).magnification;
    return { focalLength: focalLength * (check / magnification) };
  },
});
