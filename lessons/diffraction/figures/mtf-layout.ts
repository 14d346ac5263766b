import { printQuantity } from '#core/quantity/print.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import type { PlotFrame } from '#site/figures/plot/frame.ts';
import { curvePath, evenSamples } from '#site/figures/plot/plot.ts';
import { around } from '#site/figures/sheet/boxes.ts';
import { labelBox, placeLabels, type Spot, type Wanted } from '#site/figures/sheet/labels.ts';
import type { LensState } from './lens-state.ts';

/** Contrast left at a frequency by a lens with this cutoff. */
export type ContrastAt = (frequency: number, cutoff: number) => number;

/**
 * The lesson's own part of the plot: curves, lines and words, and where the lens and the pattern can be taken hold of. Curves of
 * the *neighbours*, other marks of the same lens, have their cutoffs by the law that these go with 1/N.
 */
export function mtfRemarks(
  { spatialFrequency: frequency, cutoffFrequency: cutoff, nyquistFrequency: nyquist, fNumber }: LensState,
  neighbours: readonly number[],
  contrastAt: ContrastAt,
  end: number,
  { x, y, top, bottom, right, labels: words }: PlotFrame,
  { text, width }: SheetBox,
) {
  const share = contrastAt(frequency, cutoff);
  const [hereX, hereY, cutoffX, nyquistX] = [x.at(frequency), y.at(share), x.at(cutoff), x.at(nyquist)];
  const lp = (value: number) => printQuantity('spatial-frequency', value);
  const curve = (limit: number) =>
    curvePath(
      [...evenSamples(0, Math.min(end, limit), 50), end].map((at) => [at, contrastAt(at, limit)] as const),
      x.at,
      y.at,
    );
  const readOff = `${share > 0 ? printQuantity('contrast', share) : 'an even grey'} at ${lp(frequency)}`;
  /** Beside a place, right of it first. */
  const beside = (at: number, heights: readonly number[]): Spot[] =>
    heights.flatMap((atY): Spot[] => [
      { x: at + 16, y: atY, anchor: 'start' },
      { x: Math.min(right, at - 16), y: atY, anchor: 'end' },
    ]);
  const wanted = (
    key: string,
    texts: readonly string[],
    quantity: string | undefined,
    spots: readonly Spot[],
  ): Wanted => ({
    key,
    texts,
    size: text,
    spots,
    ...(quantity && { quantity }),
  });
  /** A curve's name stands where the curve is a quarter high, or as far down as the sheet goes. */
  const quarter = (mark: number) => Math.min((0.64 * cutoff * fNumber) / mark, 0.93 * end);
  const nameOf = (mark: number) => {
    const [atX, isSlower] = [x.at(quarter(mark)), mark > fNumber];
    const atY = y.at(contrastAt(quarter(mark), (cutoff * fNumber) / mark));
    const spots = [0, -1.2, 1.2].flatMap((lines): Spot[] => [
      { x: atX, y: atY + (isSlower ? text : -5) + lines * text, anchor: isSlower ? 'end' : 'start' },
      { x: atX, y: atY + (isSlower ? -5 : text) + lines * text, anchor: isSlower ? 'start' : 'end' },
    ]);
    const isHere = mark === fNumber;
    // Of curves too near only the first has a name.
    const isNear = !isHere && Math.abs(atX - x.at(quarter(fNumber))) < 2.5 * text;
    return wanted(`f/${mark}`, isNear ? [] : [printQuantity('f-number', mark)], isHere ? 'contrast' : undefined, spots);
  };
  const limit = lp(nyquist);
  const nyquistSpots = [1.1, 2.4].flatMap((lines): Spot[] => [
    { x: nyquistX + 6, y: top + lines * text, anchor: 'start' },
    { x: nyquistX - 6, y: top + lines * text, anchor: 'end' },
  ]);
  const readHeights = [-0.5, -1.8, 1.4].map((lines) =>
    Math.max(top + 2.6 * text, Math.min(hereY + lines * text, bottom - 2.2 * text)),
  );
  const off = `cutoff ${lp(cutoff)}${cutoffX > right ? ' →' : ''}`;
  const labels = placeLabels(
    [
      wanted('read', [readOff], 'contrast', beside(hereX, readHeights)),
      wanted('nyquist', [`pixels’ limit (Nyquist) ${limit}`, `Nyquist ${limit}`], 'nyquist-frequency', nyquistSpots),
      wanted('cutoff', [off], 'cutoff-frequency', beside(cutoffX, [bottom - 0.6 * text, bottom - 1.9 * text])),
      nameOf(fNumber),
      ...neighbours.map(nameOf),
    ],
    [
      around(hereX, hereY, 14),
      around(Math.min(right, cutoffX), bottom, 14),
      ...words.map((word) => labelBox(word.text, word.size, word)),
    ],
    { left: x.at(0) + 2, top: 2, right: width - 2, bottom },
    [
      { left: hereX - 1, right: hereX + 1, top: hereY, bottom },
      { left: nyquistX - 1, right: nyquistX + 1, top, bottom },
    ],
  );
  return {
    hereX,
    hereY,
    cutoffX: Math.min(right, cutoffX),
    sampled: `M${x.at(0)} ${top}H${nyquistX}V${bottom}H${x.at(0)}`,
    curve: curve(cutoff),
    others: neighbours.map((mark) => curve((cutoff * fNumber) / mark)).join(''),
    lines: {
      'nyquist-frequency': `M${nyquistX} ${top}V${bottom}`,
      'spatial-frequency': `M${hereX} ${bottom}V${hereY}`,
      contrast: `M${hereX} ${hereY}H${x.at(0)}`,
      'cutoff-frequency': `M${Math.min(right, cutoffX)} ${bottom}v${-2 * text}`,
    },
    labels,
  };
}
