import type { SheetBox } from '#site/controls/workbench/workbench.ts';

/** A part of a sheet: a sheet of its own, and where it stands. */
export interface Area extends SheetBox {
  readonly x: number;
  readonly y: number;
}

export interface PlanAreas {
  /** The picture, and the subject in it. */
  readonly frame: Area;
  /** The subject along the axis, enlarged, with its slabs. */
  readonly slabs: Area;
  /** From camera to subject, to scale. */
  readonly side: Area;
}

/** Wide sheets have picture and slabs left of the side view, low ones side by side, narrow ones below it. */
export function planAreas(box: SheetBox): PlanAreas {
  const { width, height, text } = box;
  const area = (x: number, y: number, across: number, down: number): Area => ({
    ...box,
    x,
    y,
    width: across,
    height: down,
  });
  if (width < 34 * text || width < height) {
    const top = Math.round(0.52 * height);
    const left = Math.round(0.42 * width);
    return {
      side: area(0, 0, width, top),
      frame: area(0, top, left, height - top),
      slabs: area(left, top, width - left, height - top),
    };
  }
  if (height < 17 * text) {
    const [one, two] = [Math.round(0.2 * width), Math.round(0.27 * width)];
    return {
      frame: area(0, 0, one, height),
      slabs: area(one, 0, two, height),
      side: area(one + two, 0, width - one - two, height),
    };
  }
  const left = Math.round(Math.min(0.36 * width, Math.max(0.33 * width, 15 * text)));
  const top = Math.round(0.42 * height);
  return {
    frame: area(0, 0, left, top),
    slabs: area(0, top, left, height - top),
    side: area(left, 0, width - left, height),
  };
}
