import { steadyScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';

/** What both views need to know, millimetres; the far limit may be infinite. */
export interface Slab {
  readonly magnification: number;
  readonly circleOfConfusion: number;
  readonly entrancePupil: number;
  readonly entrancePupilDistance: number;
  readonly nearLimit: number;
  readonly farLimit: number;
  /** Depth, and circle of confusion, that an everyday aperture gives at this magnification: scales are chosen for these. */
  readonly usualDepth: number;
  readonly usualCircle: number;
}

/** Of the side view: along the axis, and across it. */
export interface Scales {
  readonly along: DrawingScale;
  readonly across: DrawingScale;
}

/** A stroke of the drawing: its line type, the quantity it shows, its path. */
export type Stroke = readonly [line: string, quantity: string | undefined, path: string];

/**
 * Where everything stands on the sheet, pixels: the slab from the side on the left, the scale as the sensor sees it on the right, title block and
 * rule below.
 *
 * The sharp plane is the fixed point in the middle of the side view, whose heights count from *top*; the lens is to its right. Cones are
 * slender, so heights have a scale of their own, never smaller than that along the axis. Scales that are *held* while the hand drags stay.
 */
export function sheetLayout(slab: Slab, box: SheetBox, held?: Scales) {
  const { text, small } = box;
  const frame = Math.max(0.28 * box.width, Math.min(9 * text, 0.4 * box.width)) - 6;
  const width = box.width - frame - text - 6;
  const foot = box.height - 2.6 * text - 1.7 * small;
  const top = 5.3 * text;
  const height = Math.max(4 * text, foot - 3 * text - top);
  const middle = height / 2;
  const planeX = 0.48 * width;
  const spot = slab.circleOfConfusion / slab.magnification;
  // A far limit very far behind is drawn at the edge, lest the near one be drawn too small to see.
  const reach = Math.max(slab.nearLimit, Math.min(slab.farLimit, 3 * slab.nearLimit));
  const along = held?.along ?? steadyScale(slab.usualDepth / 2, reach, planeX, 0.45);
  const wide = held?.across ?? steadyScale(slab.usualCircle / slab.magnification, spot, middle, 0.5);
  const across = wide.pixelsPerMillimetre > along.pixelsPerMillimetre ? wide : along;
  const x = (offset: number) => planeX - offset * along.pixelsPerMillimetre;
  const nearX = x(-slab.nearLimit);
  const farX = x(slab.farLimit);
  const pupil = x(-slab.entrancePupilDistance);
  const isPupilFar = pupil > width - text;
  const breakX = isPupilFar ? width - 1.8 * text : pupil;
  const pupilX = isPupilFar ? width - 0.6 * text : pupil;
  const halfSpot = (spot / 2) * across.pixelsPerMillimetre;
  const halfPupil = (slab.entrancePupil / 2) * across.pixelsPerMillimetre;
  /** Half the width at *at* of the cone that has none at *tip* and is as wide as the spot in the sharp plane. */
  const halfWidth = (tip: number, at: number) =>
    tip > -Infinity ? (halfSpot * (at - tip)) / (planeX - tip) : halfPupil;
  /** Both edges of a cone from its tip, or from where the sheet begins, to the pupil, or to where the axis is broken. */
  const cone = (tip: number, from: number) =>
    [1, -1]
      .map(
        (side) =>
          `M${from} ${middle + side * halfWidth(tip, from)}L${breakX} ${middle + side * halfWidth(tip, breakX)}`,
      )
      .join('');
  const opening = Math.min(isPupilFar ? -halfWidth(nearX, breakX) : halfPupil, 0.8 * middle);
  const zigzag = (at: number) => `M${at} ${middle - 16}l6 12l-6 6l6 12`;
  const isFarCut = farX < 0.5 * text;
  return {
    along,
    across,
    width,
    frame,
    frameX: width + text,
    frameY: 1.9 * text,
    frameHeight: foot - 2.5 * text,
    top,
    height,
    planeX,
    nearX,
    farX,
    isFarCut,
    pupilX,
    halfSpot,
    strokes: [
      ['axis', undefined, `M4 ${middle}H${width}`],
      ['cone', 'far-limit', cone(farX, Math.max(0, farX))],
      ['cone', 'near-limit', cone(nearX, planeX)],
      ['plane', undefined, `M${planeX} 0v${height}`],
      ['spot', 'circle-of-confusion', `M${planeX - 9} ${middle - halfSpot}h18m-9 0v${2 * halfSpot}m-9 0h18`],
      ['pupil', 'entrance-pupil', `M${pupilX} 0v${middle - opening}m0 ${2 * opening}V${height}`],
      ['break', undefined, (isPupilFar ? zigzag(breakX) : '') + (isFarCut ? zigzag(6) : '')],
    ] satisfies Stroke[],
  };
}
