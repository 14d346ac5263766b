import { drawingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';

/** What the side view needs to know, millimetres; the subject may be infinitely far. */
export interface SideViewState {
  readonly focalLength: number;
  readonly magnification: number;
  readonly extension: number;
  readonly subjectDistance: number;
  readonly imageDistance: number;
  readonly principalSeparation: number;
  readonly frontPrincipalDepth: number;
  readonly registerDistance: number;
  readonly sensorWidth: number;
}

/**
 * Where everything stands on the sheet, pixels. The sensor is the fixed point on the right; all lies to its left, to scale,
 * unless the subject is too far for that: then its line is drawn at the edge and `broken` says so. A scale that is *held*
 * while the hand drags stays.
 */
export function sideViewLayout(state: SideViewState, box: SheetBox, held?: DrawingScale) {
  const margin = 2.6 * box.text;
  const sensorX = box.width - 1.6 * margin;
  const room = sensorX - margin;
  const h = state.imageDistance + state.principalSeparation;
  const rim = h + state.frontPrincipalDepth;
  const mount = state.registerDistance + state.extension;
  const apparatus = Math.max(rim, mount, h, state.imageDistance, 1) + 12;
  const focusDistance = h + state.subjectDistance;
  const whole = drawingScale(Math.max(apparatus, focusDistance), room);
  const smallest = drawingScale(apparatus, 0.62 * room);
  // A lens drawn smaller than about a sixth of the sheet can no longer be read: better to break the axis.
  const broken = apparatus * whole.pixelsPerMillimetre < room / 6;
  const scale = held ?? (broken ? smallest : whole);
  const x = (fromSensor: number) => sensorX - fromSensor * scale.pixelsPerMillimetre;
  return {
    scale,
    broken,
    focusDistance,
    ...heights(box),
    sensorX,
    x,
    subjectX: broken ? margin : Math.max(0.4 * margin, x(focusDistance)),
    frontPrincipalX: x(h),
    rearPrincipalX: x(state.imageDistance),
    rimX: x(rim),
    mountX: x(mount),
    flangeX: x(state.registerDistance),
  };
}

/**
 * How the sheet's height is shared out: two dimension lines above, three below, title block and rule at the foot;
 * what is left is the room on either side of the axis.
 */
function heights(box: SheetBox) {
  const line = 1.6 * box.text;
  const above = 2.8 * line;
  const below = 2.6 * line + 4.4 * box.text;
  const room = Math.max(3 * box.text, (box.height - above - below) / 2);
  return { line, room, axisY: above + room };
}

/** Half of a length along the sheet's height, pixels, kept inside the drawing; `cut` where it had to be. */
export function halfHeight(length: number, pixelsPerMillimetre: number, most: number) {
  const half = (length / 2) * pixelsPerMillimetre;
  return { half: Math.min(half, most), cut: half > most };
}
