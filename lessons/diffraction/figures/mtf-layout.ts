import { printQuantity } from '#core/quantity/print.ts';
import { textWidth } from '#site/figures/dimension/text-width.ts';
import type { Label, PlotFrame } from '#site/figures/plot/frame.ts';
import { curvePath, evenSamples } from '#site/figures/plot/plot.ts';
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
  { x, y, top, bottom, right }: PlotFrame,
  text: number,
) {
  const share = contrastAt(frequency, cutoff);
  const [hereX, hereY, cutoffX, nyquistX] = [x.at(frequency), y.at(share), x.at(cutoff), x.at(nyquist)];
  const lp = (value: number) => printQuantity('spatial-frequency', value);
  const label = (name: string, words: string, atX: number, atY: number, isLeft = false): Label => {
    return { name, text: words, size: text, x: atX, y: atY, anchor: isLeft ? 'end' : 'start' };
  };
  /** Beside a place, on the side where the sheet has room. */
  const beside = (name: string, at: number, words: string, atY: number) => {
    const isLeft = at + textWidth(words, text) + 20 > right;
    return label(name, words, isLeft ? Math.min(right, at - 16) : at + 16, atY, isLeft);
  };
  const curve = (limit: number) =>
    curvePath(
      [...evenSamples(0, Math.min(end, limit), 50), end].map((at) => [at, contrastAt(at, limit)] as const),
      x.at,
      y.at,
    );
  const readOff = `${share > 0 ? printQuantity('contrast', share) : 'an even grey'} at ${lp(frequency)}`;
  const readY = Math.max(top + 2.6 * text, Math.min(hereY - 0.5 * text, bottom - 2.2 * text));
  /** What is read off goes before the name of a curve. */
  const isRead = (atX: number, atY: number) =>
    Math.abs(atY - readY) < 1.3 * text && Math.abs(atX - hereX) < textWidth(readOff, text) + 4 * text;
  /** A curve's name stands where the curve is a quarter high, or as far down as the sheet goes; of curves too near only the first has one. */
  const quarter = (mark: number) => Math.min((0.64 * cutoff * fNumber) / mark, 0.93 * end);
  const named = [fNumber, ...neighbours].map((mark) => {
    const [atX, isLeft] = [x.at(quarter(mark)), mark > fNumber];
    const isNear = mark !== fNumber && Math.abs(atX - x.at(quarter(fNumber))) < 2.5 * text;
    const atY = y.at(contrastAt(quarter(mark), (cutoff * fNumber) / mark)) + (isLeft ? text : -5);
    return label(
      mark === fNumber ? 'contrast' : '',
      isNear || isRead(atX, atY) ? '' : printQuantity('f-number', mark),
      atX,
      atY,
      isLeft,
    );
  });
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
    labels: [
      ...named,
      label('nyquist-frequency', `pixels’ limit (Nyquist) ${lp(nyquist)}`, nyquistX + 6, top + 1.1 * text),
      beside('cutoff-frequency', cutoffX, `cutoff ${lp(cutoff)}${cutoffX > right ? ' →' : ''}`, bottom - 0.6 * text),
      beside('contrast', hereX, readOff, readY),
    ],
  };
}
