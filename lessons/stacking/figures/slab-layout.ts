import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { drawingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';
import type { Slab } from './slabs.ts';

/** A stack over its subject, mm along the axis from the subject's nearest part. */
export interface StackState {
  readonly subjectDepth: number;
  readonly slabs: readonly Slab[];
  /** Frames finished in time; the others are drawn as missing. */
  readonly taken: number;
}

/** The subject's outline as half widths, shares of the room, at shares of its depth: a mound that anything may be. */
const mound = [0.02, 0.3, 0.44, 0.52, 0.6, 0.66, 0.72, 0.76, 0.8] as const;

/** Pixels: the lens is on the right, so depth runs to the left; slabs are bands across the axis. */
export function slabLayout({ subjectDepth, slabs, taken }: StackState, box: SheetBox, held?: DrawingScale) {
  const { text, small, width } = box;
  const top = 3.8 * text;
  const height = Math.max(5 * text, box.height - top - 5.6 * text - 1.4 * small);
  const axisY = height / 2;
  const first = slabs[0];
  const reach = Math.max(subjectDepth, slabs.at(-1)?.far ?? 0);
  const room = width - 4.5 * text;
  const scale = held ?? drawingScale(Math.max(reach, 1e-6), 0.94 * room);
  const nearX = width - 2.6 * text;
  const x = (depth: number) => nearX - depth * scale.pixelsPerMillimetre;

  const band = ({ near, far }: Slab) => `M${x(near)} 0V${height}H${x(far)}V0z`;
  const done = slabs.slice(0, taken);
  const gaps = done.slice(1).map(({ near }, index) => ({ from: done[index]!.far, to: near }));
  const end = done.at(-1)?.far ?? 0;
  const soft = [...gaps, { from: end, to: subjectDepth }].filter(
    ({ from, to }) => to > from + 1e-9 && from < subjectDepth,
  );

  const outline = mound.map((share, index) => ({
    at: x((subjectDepth * index) / (mound.length - 1)),
    half: share * axisY,
  }));
  const upper = outline.map(({ at, half }) => `${at} ${axisY - half}`).join('L');
  const lower = outline
    .map(({ at, half }) => `${at} ${axisY + half}`)
    .reverse()
    .join('L');
  return {
    top,
    height,
    axisY,
    scale,
    nearX,
    farX: x(subjectDepth),
    subject: `M${upper}L${lower}z`,
    /** Every other frame by itself: where neighbours overlap both are seen. */
    odd: done
      .filter((_, index) => index % 2 === 0)
      .map(band)
      .join(''),
    even: done
      .filter((_, index) => index % 2 === 1)
      .map(band)
      .join(''),
    lost: slabs.slice(taken).map(band).join(''),
    planes: done.map(({ plane }) => `M${x(plane)} 0V${height}`).join(''),
    soft: soft.map(({ from, to }) => `M${x(from)} 0V${height}H${x(Math.min(to, subjectDepth))}V0z`).join(''),
    first: first && { near: x(first.near), plane: x(first.plane), far: x(first.far) },
    second: slabs[1] && x(slabs[1].plane),
    last: slabs.length > 1 ? x(slabs.at(-1)!.plane) : undefined,
  };
}
