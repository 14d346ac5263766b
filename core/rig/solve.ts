import { ImpossibleChain } from './impossible-chain.ts';
import type { Element, Rig } from './rig.ts';
import type { SolvedRig } from './solved-rig.ts';

/** A magnification below this is none: rounding, with a subject tens of thousands of kilometres away. */
const infinity = 1e-9;

/**
 * Everything about a rig at once: what is sharp, how large, how far away, how bright, and which stop decides.
 *
 * [[A, B], [C, D]] from the sensor to the front; m = D, w = −B/D; N_w = |height of the axial ray in the exit pupil|/(2 × its radius)
 *
 * @param rig see `assembleRig`
 * @returns by where the sharp plane lies; see {@link SolvedRig}. Numbers are Gaussian optics: they know no aberration and no vignetting.
 *
 * Assumes thin or thick lenses in air, on one axis, and a sensor on the axis as well.
 * Source: Gerrard and Burch, Introduction to Matrix Methods in Optics (from memory). Derived in [README](README.md#the-engine).
 */
export function solveRig(rig: Rig): SolvedRig {
  // Two rays walk from the sensor to the subject, y their heights and v their slopes: the columns of the matrix.
  // The first leaves parallel to the axis at height 1, the second from the middle of the sensor at slope 1.
  let y1 = 1;
  let v1 = 0;
  let y2 = 0;
  let v2 = 1;
  // How many times wider than its stop the second ray runs, where it does so most, and the heights of both rays there.
  let widest = 0;
  let a = 0;
  let b = 0;
  let limit: Element | undefined;
  for (const element of rig.elements) {
    y1 += element.gap * v1;
    y2 += element.gap * v2;
    const height = y2 - element.exitDepth * v2;
    const width = Math.abs(height) / element.exitRadius;
    if (width > widest) {
      widest = width;
      limit = element;
      a = y1 - element.exitDepth * v1;
      b = height;
    }
    v1 -= element.power * y1;
    v2 -= element.power * y2;
  }
  if (limit === undefined)
    throw new ImpossibleChain(rig.parts.length - 1, 'stop', 'the only stop stands in the picture itself');

  const towardsPlane = -y2 / v2;
  const frontY1 = y1 + rig.frontGap * v1;
  const frontY2 = y2 + rig.frontGap * v2;
  const effectiveFNumber = widest / 2;
  const fNumber = limit.fNumber > 0 ? limit.fNumber : null;
  const lightLoss = fNumber === null ? null : 2 * Math.log2(effectiveFNumber / fNumber);
  const { part: limitedBy, control: apertureControl } = limit;
  if (Math.abs(v2) < infinity) {
    return { sharpPlane: 'at infinity', effectiveFNumber, limitedBy, fNumber, lightLoss, apertureControl };
  }
  if (!(towardsPlane > 0)) return { sharpPlane: 'nowhere' };

  const magnification = Math.abs(v2);
  const workingDistance = -frontY2 / v2;
  // The ray through the middle of the stop is b times the first less a times the second; it points at the entrance pupil.
  const slope = b * v1 - a * v2;
  const telecentric = Math.abs(slope * rig.length) < infinity * Math.abs(b);
  return {
    sharpPlane: workingDistance > 0 ? 'in front' : 'inside',
    magnification,
    upright: v2 > 0,
    workingDistance,
    focusDistance: rig.length + workingDistance,
    fieldWidth: rig.camera.sensorWidth / magnification,
    fieldHeight: rig.camera.sensorHeight / magnification,
    effectiveFNumber,
    limitedBy,
    fNumber,
    lightLoss,
    apertureControl,
    // It crosses the axis b/(v2 × slope) from the sharp plane, for y1 v2 − y2 v1 = 1.
    inverseEntrancePupilDistance: telecentric ? 0 : (v2 * slope) / b,
    pupil: telecentric
      ? null
      : {
          entrancePupil: (2 * Math.abs(b / slope)) / widest,
          entrancePupilDistance: workingDistance + (b * frontY1 - a * frontY2) / slope,
        },
  };
}
