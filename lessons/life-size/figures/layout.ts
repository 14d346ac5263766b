import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { labelOfPixels } from '#site/figures/scale/drawing-scale.ts';

/** A sensor as the figures need it. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly pitch: number;
  /** How it is called: its size. */
  readonly name: string;
  /** The field it sees, with unit. */
  readonly sees: string;
  readonly pixelsPerMillimetre: number;
}

/** Where a frame stands on the sheet, pixels. */
export interface Place {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** What every view of the picture needs: magnification, and the plate the frames share. */
export interface PictureScale {
  /** Pixels for one millimetre of the sensor. */
  readonly pixels: number;
  readonly centreX: number;
  readonly centreY: number;
  /** The ruler's zero and its edge. */
  readonly zeroX: number;
  readonly edgeY: number;
}

/** CSS pixels in a millimetre of paper. */
const paper = 96 / 25.4;
/** Scales of a sheet that has to hold a sensor: finer steps than the standard's, for the picture should be large. */
const scales = [10, 8, 6, 5, 4, 3.5, 3, 2.5, 2, 1.5, 1, 0.5];

/** Height of the ruler as drawn, in text sizes: enough for its marks and numbers whatever the magnification. */
export const rulerHeight = 2.35;

/** True where a sheet is wide enough to put things side by side. */
export const isWide = ({ width, height }: SheetBox) => width > 1.45 * height;

/** Both sensors about one middle, as large as the sheet allows, with room for dimensions and for what the loupe shows. */
export function sensorLayout(box: SheetBox, chosen: Frame, other: Frame) {
  const { text, small } = box;
  const wide = isWide(box);
  const outer = { width: Math.max(chosen.width, other.width), height: Math.max(chosen.height, other.height) };
  const left = 1.9 * text;
  const top = (wide ? 3.6 : 2) * text;
  const foot = box.height - 2.3 * small;
  const loupe = wide ? { width: 13.5 * text, height: 0 } : { width: 0, height: 3.6 * small + 2.4 * text };
  const room = {
    width: box.width - left - 0.6 * text - loupe.width,
    height: foot - top - 2 * text - loupe.height,
  };
  const fits = (scale: number) =>
    outer.width * scale * paper <= room.width && outer.height * scale * paper <= room.height;
  const scale = scales.find(fits) ?? scales.at(-1)!;
  const pixels = scale * paper;
  const width = outer.width * pixels;
  // On a wide sheet the picture stands left and the loupe takes what is left over; else the picture stands in the middle.
  const centreX = wide ? left + width / 2 : Math.max(left + width / 2, box.width / 2);
  const centreY = top + (outer.height * pixels) / 2;
  const place = (frame: Frame) => placed(frame, pixels, centreX, centreY);
  const bottom = place(outer as Frame).top + outer.height * pixels;
  const picture: PictureScale = {
    pixels,
    centreX,
    centreY,
    zeroX: place(chosen).left,
    edgeY: centreY + rulerEdge(Math.min(chosen.height, other.height), pixels, small) * pixels,
  };
  const strips = wide
    ? { x: centreX + width / 2 + 1.6 * text, y: 0.6 * text, width: 0 }
    : { x: 0.5 * text, y: bottom + 2.1 * text, width: (box.width - 1.5 * text) / 2 };
  return {
    wide,
    label: labelOfPixels(pixels),
    picture,
    outer: place(outer as Frame),
    chosen: place(chosen),
    other: place(other),
    bottom,
    foot,
    strips: { ...strips, width: wide ? box.width - strips.x - 0.6 * text : strips.width },
  };
}

/** A frame about a middle. */
export function placed(
  { width, height }: Pick<Frame, 'width' | 'height'>,
  pixels: number,
  x: number,
  y: number,
): Place {
  return {
    left: x - (width / 2) * pixels,
    top: y - (height / 2) * pixels,
    width: width * pixels,
    height: height * pixels,
  };
}

/** How far below the middle the ruler's edge lies, mm on the sensor: the ruler fits into the lower sensor's frame if it can. */
export function rulerEdge(height: number, pixels: number, small: number): number {
  return Math.max(0.12 * height, height / 2 - (rulerHeight * small + 4) / pixels);
}
