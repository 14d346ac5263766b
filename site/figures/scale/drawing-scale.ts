import type { SheetBox } from '#site/controls/workbench/workbench.ts';

/** CSS defines 96 pixels to the inch of 25.4 mm: on paper, and there alone, a drawing's scale is a fact. */
export const pixelsPerPaperMillimetre = 96 / 25.4;

export interface DrawingScale {
  /** Pixels on the page for one millimetre of the real thing. */
  readonly pixelsPerMillimetre: number;
  /** As a title block gives it: `1:2` reduced, `5:1` enlarged. */
  readonly label: string;
}

/** ISO 5455 recommends 1, 2 and 5 times powers of ten for the scales of technical drawings; from 1:500000 to 50000:1. */
const recommended = Array.from({ length: 12 }, (_, index) => index - 6).flatMap((power) =>
  [1, 2, 5].map((factor) => Number(`${factor}e${power}`)),
);

/** The largest recommended scale at which *length* millimetres fit into *room* pixels. */
export function drawingScale(length: number, room: number): DrawingScale {
  const largest = room / pixelsPerPaperMillimetre / length;
  const best = Math.max(...recommended.filter((scale) => scale <= largest * (1 + 1e-9)), recommended[0]!);
  return { pixelsPerMillimetre: best * pixelsPerPaperMillimetre, label: scaleLabel(best) };
}

/**
 * A scale that stays while something moves: chosen for the *usual* length, which shall take up to *share* of *room*, and given
 * up only when the *actual* length would no longer fit or no longer be seen.
 */
export function steadyScale(usual: number, actual: number, room: number, share: number): DrawingScale {
  const steady = drawingScale(usual, share * room);
  const part = (actual * steady.pixelsPerMillimetre) / room;
  if (part > 0.94) return drawingScale(actual, 0.94 * room);
  return part < 0.04 ? drawingScale(actual, 0.2 * room) : steady;
}

/** Any scale as a ratio to one, to two figures where it is not a recommended one. */
export function scaleLabel(scale: number): string {
  const round = (value: number) => String(Number(value.toPrecision(value < 10 ? 2 : 3)));
  return scale >= 1 ? `${round(scale)}:1` : `1:${round(1 / scale)}`;
}

/**
 * What a rule along a drawing cannot say where it is drawn larger across: `across 10 times that along`, for the title block. Undefined where
 * both are alike.
 */
export function acrossInWords(across: DrawingScale, along: DrawingScale): string | undefined {
  const times = timesAsLarge(across.pixelsPerMillimetre, along.pixelsPerMillimetre);
  return times === '1' ? undefined : `across ${times} times that along`;
}

/**
 * What a title block says of a drawing's scale: on paper the ratio, a fact that a ruler confirms; on a screen at most how two scales compare.
 * Undefined where there is nothing to say.
 */
export function scaleInTitle(
  { onPaper = false }: Pick<SheetBox, 'onPaper'>,
  along: DrawingScale,
  across = along,
): string | undefined {
  if (!onPaper) return acrossInWords(across, along);
  return across.label === along.label ? along.label : `${along.label}, across ${across.label}`;
}

/** How many times as large as another a scale is, to two figures: the one ratio that is true on any screen. */
export function timesAsLarge(scale: number, other: number): string {
  return String(Number((scale / other).toPrecision(2)));
}

/** The scale at which a figure just fits: on a screen as it is, on paper the next smaller recommended one. */
export function fittingScale(
  { onPaper = false }: Pick<SheetBox, 'onPaper'>,
  pixelsPerMillimetre: number,
): DrawingScale {
  return onPaper
    ? drawingScale(1, pixelsPerMillimetre)
    : { pixelsPerMillimetre, label: labelOfPixels(pixelsPerMillimetre) };
}

/** The label of a scale that a figure chose for itself. */
export function labelOfPixels(pixelsPerMillimetre: number): string {
  return scaleLabel(pixelsPerMillimetre / pixelsPerPaperMillimetre);
}
