import { cardinalPoints } from './cardinal-points.ts';
import { elementPoints, type ElementPoints, type PrincipalPoints, type PlacedPupil } from './element-points.ts';
import { outsideRadius } from './outside-radius.ts';
import type { Part } from './part.ts';
import { rigRays, type RayPath } from './ray-paths.ts';
import type { Rig } from './rig.ts';
import { solveRig } from './solve.ts';
import type { SolvedRig } from './solved-rig.ts';

/** One part of a chain where it stands. */
export interface PlacedPart {
  readonly part: Part;
  /** Its end towards the sensor, where it is mounted. */
  readonly from: number;
  /** Where the next part is mounted. */
  readonly to: number;
  /** Its foremost surface; in front of `to` where something stands out there. */
  readonly foremost: number;
  /** Half its width outside, stated or usual, and never less than the cone of light that it lets through. */
  readonly radius: number;
}

/**
 * Where everything in a rig stands: plain data, mm along the axis from the sensor (0) towards the subject, heights from the axis.
 *
 * Nothing in it is infinite: what lies at infinity, or nowhere, is null.
 */
export interface RigPositions {
  readonly solved: SolvedRig;
  readonly parts: readonly PlacedPart[];
  /** Foremost surface of all. */
  readonly foremost: number;
  /** The plane that is sharp; null at infinity, and where none is. */
  readonly sharpPlane: number | null;
  /** Magnification with its sign, below 0 for a picture upside down; 0 at infinity, null where nothing is sharp. */
  readonly signedMagnification: number | null;
  readonly sensor: Extent;
  /** What of the sharp plane fills the sensor; null without a sharp plane. */
  readonly field: Extent | null;
  /** H, H′, F, F′ and the pupils of everything that bends or limits light, from the sensor on. */
  readonly elements: readonly ElementPoints[];
  /** H, H′, F and F′ of the rig as one lens; null where it is afocal. */
  readonly whole: PrincipalPoints | null;
  /** The limiting stop as the subject sees it; null where that is at infinity: an object-side telecentric rig. */
  readonly entrancePupil: PlacedPupil | null;
  /** The limiting stop as the sensor sees it; null at infinity. */
  readonly exitPupil: PlacedPupil | null;
  /** From the middle of the sensor along the rim of the limiting stop to the middle of the field. */
  readonly marginal: RayPath;
  /** From the lower end of the sensor's width through the middle of the limiting stop to the end of the field. */
  readonly chief: RayPath;
}

export interface Extent {
  readonly width: number;
  readonly height: number;
}

/**
 * Where every part, point, pupil and plane of a rig stands, and how its rays run.
 *
 * Heights and slopes of two rays from the sensor give all: N_w = 1/(2 × slope of the marginal ray at the sensor), pupils stand where the
 * chief ray meets the axis, H, H', F, F' by the rig's matrix
 *
 * @param rig see `assembleRig`
 * @returns places in mm from the sensor, towards the subject; see {@link RigPositions}
 * @throws ImpossibleChain where the only stop stands in the picture itself; OutOfRange for an outside that is no width
 *
 * Assumes rays near the axis. Source: derived in [README](README.md#where-everything-stands).
 *
 * @example rigPositions(assembleRig([{ part: 'camera', registerDistance: 44, sensorWidth: 36, sensorHeight: 24 }, { part: 'ring', extension: 50 }, { part: 'lens', lens: { focalLength: 50, principalSeparation: 0, frontPrincipalDepth: 20, pupilMagnification: 1, registerDistance: 44, focusing: { by: 'unit', closestMagnification: 0.1 }, apertureControl: 'lens' }, focusMagnification: 0, fNumber: 8 }])).sharpPlane // 200
 */
export function rigPositions(rig: Rig): RigPositions {
  const solved = solveRig(rig);
  const isSharp = solved.sharpPlane === 'in front' || solved.sharpPlane === 'inside';
  const sharpPlane = isSharp ? solved.focusDistance : null;
  const rays = rigRays(rig, sharpPlane);
  const { sensorWidth, sensorHeight } = rig.camera;
  const whole = cardinalPoints(rig);
  const upright = isSharp && solved.upright ? 1 : -1;
  return {
    solved,
    parts: rig.parts.map((part, index) => ({
      part,
      ...rig.places[index]!,
      radius: outsideRadius(rig, index, rays.marginal),
    })),
    foremost: rig.length,
    sharpPlane,
    signedMagnification: isSharp ? upright * solved.magnification : solved.sharpPlane === 'nowhere' ? null : 0,
    sensor: { width: sensorWidth, height: sensorHeight },
    field: isSharp ? { width: solved.fieldWidth, height: solved.fieldHeight } : null,
    elements: elementPoints(rig),
    whole: whole && {
      rearPrincipal: whole.imageDistance,
      frontPrincipal: rig.length - whole.frontPrincipalDepth,
      rearFocus: whole.imageDistance - whole.focalLength,
      frontFocus: rig.length - whole.frontPrincipalDepth + whole.focalLength,
      focalLength: whole.focalLength,
    },
    ...rays,
  };
}
