import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import {
  pixelsPerPaperMillimetre as paper,
  drawingScale,
  scaleLabel,
  type DrawingScale,
} from '#site/figures/scale/drawing-scale.ts';
import type { Range } from '#site/state/address.ts';
import type { Ruler } from './ruler.ts';

/** What lies in front of the lens, and how large the lens draws it. */
export interface Scene {
  readonly magnification: number;
  /** The same as a ratio. */
  readonly ratio: string;
  /** Which outline is drawn. */
  readonly subject: string;
  readonly subjectWidth: number;
  readonly ruler: Ruler;
  /** Width of the sensor at whose left edge the ruler begins, mm. */
  readonly rulerFrom: number;
}

/** A sensor as the figures need it. */
export interface Frame {
  readonly sensorWidth: number;
  readonly sensorHeight: number;
  readonly pitch: number;
  /** How it is called: its size. */
  readonly name: string;
  /** Its field, in words. */
  readonly field: string;
  readonly pixelsPerMillimetre: number;
}

/** A rectangle on the sheet, pixels. */
export interface Place {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** How the picture may be dragged. */
export interface Drag {
  readonly range: Range;
  readonly onmove: (magnification: number) => void;
}

/** Scales of a sheet that has to hold a sensor: finer steps than the standard's, for the picture should be large. */
const scales = [10, 8, 6, 5, 4, 3.5, 3, 2.5, 2, 1.5, 1, 0.5];

function steps(most: number): DrawingScale {
  const found = scales.find((scale) => scale * paper <= most) ?? scales.at(-1)!;
  return { pixelsPerMillimetre: found * paper, label: scaleLabel(found) };
}

/** Height of the ruler as drawn, in text sizes: enough for its marks and numbers whatever the magnification. */
export const rulerHeight = 2.35;

/** True where a sheet is wide enough to put things side by side. */
export const isWide = ({ width, height }: SheetBox) => width > 1.45 * height;

/**
 * The sensors *frames* about one middle, as large as the sheet allows, with room for dimensions above, beside and below. With
 * *strips* also for the magnifier's two of pixels: beside the picture on a wide sheet, which is then at the left; else below it.
 * Without them the image goes on beyond the sensors to both sides.
 */
export function sensorLayout(box: SheetBox, frames: readonly Frame[], strips: boolean) {
  const { text, small } = box;
  const wide = isWide(box);
  const sensorWidth = Math.max(...frames.map((frame) => frame.sensorWidth));
  const sensorHeight = Math.max(...frames.map((frame) => frame.sensorHeight));
  const left = 1.9 * text;
  const top = (wide ? 3.6 : 2) * text;
  const foot = box.height - 2.3 * small;
  const room = {
    width: box.width - left - (wide && strips ? 14.1 : 0.6) * text,
    // Under a narrow picture: the strips, or at least the title block.
    height: foot - top - 2 * text - (wide ? 0 : strips ? 3.6 * small + 2.4 * text : 2 * small),
  };
  const most = Math.min(room.width / sensorWidth, room.height / sensorHeight);
  // On paper, where it is printed as a ratio, a scale that the standard recommends.
  const scale = box.onPaper ? drawingScale(1, most) : steps(most);
  const pixels = scale.pixelsPerMillimetre;
  const half = (sensorWidth / 2) * pixels;
  const x = wide && strips ? left + half : Math.max(left + half, (left + box.width) / 2);
  const y = top + (sensorHeight / 2) * pixels;
  const outer = placed({ sensorWidth, sensorHeight }, pixels, x, y);
  const bottom = outer.top + outer.height;
  // No farther than twice the sensor: the rest of a lens's image is dark.
  const beyond = strips ? 0 : Math.min(x - half - left, box.width - 0.6 * text - x - half, half);
  const image = { ...outer, left: outer.left - beyond, width: outer.width + 2 * beyond };
  const stripX = wide ? x + half + 1.6 * text : 0.5 * text;
  const stripY = (wide ? 2.1 * text : bottom + 2.1 * text) + 1.3 * small;
  const stripWidth = wide ? box.width - stripX - 0.6 * text : (box.width - 1.5 * text) / 2;
  const step = wide ? Math.min(9 * text, (foot - stripY - 1.2 * small) / 2) : 0;
  const strip = { width: stripWidth, height: wide ? step - 2.6 * small - 4 : foot - stripY - 2.1 * small - 8 };
  return {
    wide,
    scale,
    pixels,
    outer,
    /** What of the lens's image is drawn. */
    image,
    bottom,
    places: frames.map((frame) => ({ ...frame, ...placed(frame, pixels, x, y) })),
    // A strip lower than its own text shows nothing.
    strips: (strips && strip.height > small ? [0, 1] : []).map((index) => ({
      ...strip,
      left: stripX + (wide ? 0 : index * (stripWidth + 0.5 * text)),
      top: stripY + index * step,
    })),
  };
}

/** A sensor about a middle. */
export function placed(
  { sensorWidth, sensorHeight }: Pick<Frame, 'sensorWidth' | 'sensorHeight'>,
  pixels: number,
  x: number,
  y: number,
): Place {
  const width = sensorWidth * pixels;
  const height = sensorHeight * pixels;
  return { left: x - width / 2, top: y - height / 2, width, height };
}

/** How far below the middle of a frame so high the ruler's edge lies: the ruler fits into it if it can. Pixels. */
export function rulerEdge(height: number, size: number): number {
  return Math.max(0.12 * height, height / 2 - rulerHeight * size - 4);
}

/** A rectangle as a path. */
export function outline({ left, top, width, height }: Place): string {
  return `M${left} ${top}h${width}v${height}h${-width}z`;
}
