import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { textWidth } from '#site/figures/dimension/text-width.ts';
import { fittingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';
import { titleHeight } from '#site/figures/sheet/title-block.ts';

/** One opening of the row, whole stops from the widest. */
export interface Opening {
  /** As a page prints its f-number and the share of the light that it lets through. */
  readonly label: string;
  readonly light: string;
  /** mm */
  readonly diameter: number;
}

export interface PlacedOpening extends Opening {
  readonly x: number;
  readonly radius: number;
  readonly isLabelled: boolean;
  /** How high its column of light is, pixels. */
  readonly column: number;
}

export interface StopsLayout {
  readonly pixels: number;
  /** The same as a title block states it. */
  readonly scale: DrawingScale;
  readonly axisY: number;
  readonly openings: readonly PlacedOpening[];
  /** Baselines of both rows of labels, and the foot of the columns of light with their width. */
  readonly rows: readonly [fNumbers: number, light: number];
  readonly foot: number;
  readonly columnWidth: number;
  /** Where an opening stands that is so many stops from the widest; the other way round. */
  readonly xOf: (stops: number) => number;
  readonly stopsAt: (x: number) => number;
}

const gap = 10;

/** Openings side by side to one scale, the widest at the left, and under each what share of its light is left. */
export function stopsLayout(openings: readonly Opening[], set: number, box: SheetBox): StopsLayout {
  const { width, height, text, small } = box;
  const label = Math.max(...openings.map((one) => textWidth(one.label, small))) + gap;
  const least = Math.min(label, (width - 2 * gap) / openings.length);
  const foot = height - 11 - titleHeight * small - 8;
  const columns = Math.min(0.2 * height, 5 * text);
  const rows = [foot - columns - 1.5 * small, foot - columns - 0.35 * small] as const;
  const room = rows[0] - 1.1 * small - 2.4 * text;
  const widths = (pixels: number) => openings.map(({ diameter }) => Math.max(least, diameter * pixels + gap));
  const total = (pixels: number) => widths(pixels).reduce((sum, one) => sum + one, 0);
  const widest = Math.max(set, ...openings.map(({ diameter }) => diameter));
  let [low, pixels] = [0, room / widest];
  if (total(pixels) > width - 2 * gap) {
    // Halving closes in on the largest scale at which the row is as wide as the sheet.
    for (let round = 0; round < 40; round++) {
      const between = (low + pixels) / 2;
      if (total(between) > width - 2 * gap) pixels = between;
      else low = between;
    }
    pixels = low;
  }
  const scale = fittingScale(box, pixels);
  pixels = scale.pixelsPerMillimetre;
  const each = widths(pixels);
  let x = (width - total(pixels)) / 2;
  const placed = openings.map((one, index): PlacedOpening => {
    const middle = x + each[index]! / 2;
    x += each[index]!;
    return {
      ...one,
      x: middle,
      radius: (one.diameter / 2) * pixels,
      isLabelled: least >= label - gap / 2 || index % Math.ceil(label / least) === 0,
      column: columns / 2 ** index,
    };
  });
  const at = (index: number) => placed[Math.min(placed.length - 1, Math.max(0, index))]!.x;
  return {
    scale,
    pixels,
    axisY: 2.2 * text + room / 2,
    openings: placed,
    rows,
    foot,
    columnWidth: Math.min(0.7 * least, 3 * text),
    xOf: (stops) => {
      const index = Math.min(placed.length - 1, Math.max(0, stops));
      const before = Math.floor(index);
      return at(before) + (index - before) * (at(before + 1) - at(before));
    },
    stopsAt: (place) => {
      const after = placed.findIndex((one) => one.x >= place);
      if (after < 0) return placed.length - 1;
      if (after === 0) return 0;
      return after - 1 + (place - at(after - 1)) / (at(after) - at(after - 1));
    },
  };
}
