import type { RigPositions } from '#core/rig/positions.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { drawingScale } from '#site/figures/scale/drawing-scale.ts';

/** How several chains stand above each other. */
export type Alignment = 'sensor' | 'subject';

/** Scale and places that stay while a hand drags. */
export interface HeldFrame {
  readonly pixelsPerMillimetre: number;
  /** Where each chain's sensor stands, pixels from the left. */
  readonly sensorX: readonly number[];
  /** Where all subjects stand that are aligned. */
  readonly subjectX?: number;
  /** Whether each chain's axis is broken. */
  readonly broken: readonly boolean[];
  /** Rows of dimensions above and below each chain that have been given room. */
  readonly rows: readonly DimensionLevels[];
}

/** How many levels of dimensions stand above and below a drawing. */
export interface DimensionLevels {
  readonly above: number;
  readonly below: number;
}

/** Where things stand on the sheet. One scale both ways. */
export interface Frame extends HeldFrame {
  /** Half of the height that one chain's drawing may take, pixels. */
  readonly room: number;
  /** Where a subject is drawn that is too far for the scale. */
  readonly farX: number;
}

/** Of a body, behind the sensor, mm: usual for cameras. */
export const bodyBehind = 14;

/** Room for a handle's mark at the left edge, and for the paper's edge at the right. */
const margins = { left: 30, right: 8 };

/** Foremost thing that belongs to the apparatus: the foremost surface, or a principal plane not too far before it. */
function apparatusFront({ foremost, whole }: RigPositions): number {
  const planes = whole ? [whole.frontPrincipal, whole.rearPrincipal] : [];
  return Math.max(foremost, ...planes.filter((at) => at < 2 * foremost));
}

/** Scales go in twentieths of a decade, the preferred numbers of ISO 3: near enough to fill the sheet, far enough apart to stay still. */
const steps = [1, 1.12, 1.25, 1.4, 1.6, 1.8, 2, 2.24, 2.5, 2.8, 3.15, 3.55, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9];

function stepBelow(scale: number): number {
  const power = 10 ** Math.floor(Math.log10(scale));
  return steps.findLast((step) => step * power <= scale * (1 + 1e-9))! * power;
}

/** How much smaller than the width allows a drawing may get so that no outline is cut at the top. */
const shrinkForBodies = 0.5;

/** Share of the width that is left in front of a subject that can be moved. */
const roomToMove = 0.16;

interface FramePlan {
  readonly room: number;
  readonly rows: readonly DimensionLevels[];
  readonly align: Alignment;
  /** A subject that can be taken hold of needs paper to be drawn away to. */
  readonly subjectMoves: boolean;
  /** How high above the axis something else stands, mm. */
  readonly reachesUp?: number;
  readonly held?: HeldFrame | undefined;
}

/**
 * Scale and places for one or more chains, aligned at their sensors or at their subjects.
 *
 * A subject so far that the lens would be smaller than a sixth of the sheet is drawn behind a break of the axis.
 *
 * @param plan.room half the height of one drawing, pixels
 * @param box on paper the scale is one that standards recommend, to be printed as a ratio
 */
export function frameOf(
  all: readonly RigPositions[],
  box: SheetBox,
  { room, rows, align, subjectMoves, reachesUp = 0, held }: FramePlan,
): Frame {
  const farX = margins.left;
  const left = Math.max(margins.left, subjectMoves ? roomToMove * box.width : 0);
  const width = box.width - left - margins.right;
  const apparatus = Math.max(...all.map(apparatusFront)) + bodyBehind;
  const subjects = all.map(({ sharpPlane, solved }) => (solved.sharpPlane === 'in front' ? sharpPlane! : 0));
  const fit = (length: number, share = 1) => (share * width) / length;
  const length = Math.max(apparatus, ...subjects.map((at) => at + bodyBehind));
  const whole = fit(length);
  const isFar = apparatus * whole < width / 6;
  // The light and the sensor must be seen; bodies may be cut where the sheet is low.
  const sensor = Math.max(...all.map((one) => one.sensor.width)) / 2;
  const bodies = Math.max(...all.flatMap(({ parts }) => parts.map(({ radius }) => radius)));
  const wide = isFar ? fit(apparatus, 0.62) : whole;
  const scale = Math.min(
    wide,
    (0.92 * room) / sensor,
    Math.max(room / Math.max(bodies, reachesUp), shrinkForBodies * wide),
  );
  const pixelsPerMillimetre =
    held?.pixelsPerMillimetre ?? (box.onPaper ? drawingScale(1, scale).pixelsPerMillimetre : stepBelow(scale));
  const atRight = box.width - margins.right - bodyBehind * pixelsPerMillimetre;
  const subjectsFit = subjects.every((at) => at > 0 && left + at * pixelsPerMillimetre <= atRight);
  const broken =
    held?.broken ??
    all.map(
      ({ sharpPlane, solved }, index) =>
        solved.sharpPlane === 'at infinity' ||
        (sharpPlane !== null && atRight - subjects[index]! * pixelsPerMillimetre < farX - 1),
    );
  // What a low sheet leaves over is shared between both sides; where the axis is broken nothing is left over.
  const spare = broken.includes(true) ? 0 : Math.max(0, width - length * pixelsPerMillimetre) / 2;
  // A hand that moves the camera leaves the subjects where they are.
  const subjectX = held ? held.subjectX : align === 'subject' && subjectsFit ? left + spare : undefined;
  const sensorX = subjects.map((at, index) =>
    subjectX !== undefined && at > 0 ? subjectX + at * pixelsPerMillimetre : (held?.sensorX[index] ?? atRight - spare),
  );
  return {
    pixelsPerMillimetre,
    sensorX,
    ...(subjectX !== undefined && { subjectX }),
    broken,
    rows,
    room,
    farX,
  };
}
