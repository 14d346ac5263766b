import { roundStep } from '#site/state/rungs.ts';
import { steadyScale } from '#site/figures/scale/drawing-scale.ts';
import type { Slab, Stroke } from './layout.ts';

/** How the sensor sees a point at an offset from the sharp plane: image over subject size there, and its blur on the sensor, mm. */
export type Seen = (offset: number) => { readonly enlargement: number; readonly blur: number };

/** A mark's own line, pixels. */
const pen = 1.75;

/**
 * The angle at which the scale leans towards the axis, degrees: such that with an everyday aperture the sharp part is about twenty
 * times as long in the picture as the blur allowed. A slender cone needs a scale seen nearly end on.
 */
export function tiltFor({ usualDepth, usualCircle, magnification }: Slab): number {
  const ideal = (Math.atan((22 * usualCircle) / (usualDepth * magnification)) * 180) / Math.PI;
  return Math.max(1, Math.min(45, 5 * Math.round(ideal / 5)));
}

/** The picture of the scale in a frame, pixels from its upper left corner, at a scale of its own; *spacing* is what a label needs. */
export function slantedScale(slab: Slab, seen: Seen, width: number, height: number, spacing: number) {
  const tilt = tiltFor(slab);
  const rise = Math.tan((tilt * Math.PI) / 180);
  const on = (offset: number) => offset * rise * seen(offset).enlargement;
  const scale = steadyScale(slab.usualDepth * rise * slab.magnification, -2 * on(-slab.nearLimit), height, 0.35);
  const pixels = scale.pixelsPerMillimetre;
  const y = (offset: number) => height / 2 - on(offset) * pixels;
  const perDepth = slab.magnification * rise * pixels;
  const [fine, labelled] = [roundStep(7 / perDepth), roundStep(spacing / perDepth)];

  const marks = [];
  const labels: { readonly words: string; readonly y: number }[] = [];

  // Outwards from the sharp plane, until marks leave the frame or perspective runs them together.
  for (const side of [-1, 1]) {
    for (let index = side === 1 ? 0 : 1, last = Infinity; index <= 150; index++) {
      const offset = Number((side * index * fine).toPrecision(10));
      if (offset <= -slab.entrancePupilDistance) break;
      const middle = y(offset);
      if (Math.abs(middle - height / 2) > height || Math.abs(middle - last) < 2) break;
      last = middle;
      const isLabelled = Math.abs(offset / labelled - Math.round(offset / labelled)) < 1e-6;
      const { enlargement, blur } = seen(offset);
      const spread = blur * pixels;
      const half = ((isLabelled ? 0.3 : 0.17) * width * enlargement) / slab.magnification;
      const thick = pen + spread;
      marks.push({
        // A line with half discs at its ends: one attribute moves faster than six.
        shape: `M${0.56 * width - half} ${middle - thick / 2}h${2 * half}a${spread / 2} ${thick / 2} 0 0 1 0 ${thick}h${-2 * half}a${spread / 2} ${thick / 2} 0 0 1 0 ${-thick}`,
        thick,
        // What the half ellipse of the blurred line gains in width it loses in depth: the ink stays as much.
        ink: Math.min(1, (4 * pen) / (Math.PI * thick)),
      });
      if (isLabelled && Math.abs(middle - height / 2) < (height - spacing) / 2) {
        labels.push({ words: String(offset).replace('-', '−'), y: middle + 0.16 * spacing });
      }
    }
  }

  const nearY = y(-slab.nearLimit);
  const farY = slab.farLimit < Infinity ? y(slab.farLimit) : -9;
  return {
    tilt,
    scale,
    marks,
    labels,
    strokes: [
      ['limit', 'near-limit', `M0 ${nearY}H${width}`],
      ['limit', 'far-limit', `M0 ${farY}H${width}`],
      ['bracket', 'depth-of-field', `M${width - 3} ${nearY}V${farY}`],
      ['frame', undefined, `M0 0H${width}V${height}H0z`],
    ] satisfies Stroke[],
  };
}
