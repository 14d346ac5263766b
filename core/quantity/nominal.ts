import { OutOfRange } from './errors.ts';
import type { QuantityName } from './vocabulary.ts';

/**
 * Marked f-numbers a third of a stop apart: rounded numbers that stand for exact powers of two.
 *
 * After ISO 517: exact value 2^(k/6), k counted from f/1. The clause is from memory, as are the thirds above f/22 and below f/1;
 * the whole stops from f/0.5 to f/64 and the thirds from f/1 to f/22 were read where the outside checks name it.
 */
// prettier-ignore
export const fNumberSeries: readonly number[] = [
  0.5, 0.56, 0.63, 0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11,
  13, 14, 16, 18, 20, 22, 25, 29, 32, 36, 40, 45, 51, 57, 64, 72, 80, 90, 102, 114, 128,
];

// prettier-ignore
const denominators = [
  8000, 6400, 5000, 4000, 3200, 2500, 2000, 1600, 1250, 1000, 800, 640, 500, 400, 320, 250, 200, 160, 125, 100, 80, 60, 50, 40,
  30, 25, 20, 15, 13, 10, 8, 6, 5, 4,
];
const seconds = [0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.3, 1.6, 2, 2.5, 3.2, 4, 5, 6, 8, 10, 13, 15, 20, 25, 30];

/** Marked shutter times in seconds, shortest first. After ISO 516 (from memory): exact value 2^(k/3) s, k counted from 1 s. */
export const shutterTimeSeries: readonly number[] = [...denominators.map((denominator) => 1 / denominator), ...seconds];

interface Series {
  readonly quantity: QuantityName;
  readonly marks: readonly number[];
  /** Where the mark 1 stands. */
  readonly one: number;
  /** Marks to a factor of two. */
  readonly perDoubling: number;
}

const fNumbers: Series = { quantity: 'f-number', marks: fNumberSeries, one: 6, perDoubling: 6 };
const shutterTimes: Series = {
  quantity: 'exposure-time',
  marks: shutterTimeSeries,
  one: denominators.length + seconds.indexOf(1),
  perDoubling: 3,
};

/** Marked f-numbers a whole stop apart: 0.5, 0.7, 1, 1.4 ... 128. */
export function fullStopFNumbers(): readonly number[] {
  return fNumberSeries.filter((_, index) => index % 3 === 0);
}

/**
 * Exact value behind a marked f-number of the series; undefined for a number that is not marked.
 *
 * @example exactFNumber(11) // 11.3137...
 */
export function exactFNumber(nominal: number): number | undefined {
  return exactValue(fNumbers, nominal);
}

/**
 * Exact value in seconds behind a marked shutter time of the series; undefined for one that is not marked.
 *
 * @example exactShutterTime(1 / 125) // 0.0078125
 */
export function exactShutterTime(nominal: number): number | undefined {
  return exactValue(shutterTimes, nominal);
}

/**
 * The marked f-number nearest to a value by ratio.
 *
 * @throws OutOfRange for a value more than half a mark beyond the series
 * @example nominalFNumber(11.6) // 11
 */
export function nominalFNumber(value: number): number {
  return nearestMark(fNumbers, value);
}

/**
 * The marked shutter time nearest to a value by ratio, in seconds.
 *
 * @throws OutOfRange for a value more than half a mark beyond the series
 * @example nominalShutterTime(1 / 70) // 0.016666666...
 */
export function nominalShutterTime(value: number): number {
  return nearestMark(shutterTimes, value);
}

/** The mark by which an exact value of the series goes, 11 for 11.3137...; any other value as it is. */
export function asMarkedFNumber(value: number): number {
  return asMarked(fNumbers, value);
}

/** The mark by which an exact shutter time of the series goes, 1/125 s for 1/128 s; any other value as it is. */
export function asMarkedShutterTime(value: number): number {
  return asMarked(shutterTimes, value);
}

function exactAt({ one, perDoubling }: Series, index: number): number {
  return 2 ** ((index - one) / perDoubling);
}

function indexNear({ one, perDoubling }: Series, value: number): number {
  return Math.round(perDoubling * Math.log2(value) + one);
}

function exactValue(series: Series, nominal: number): number | undefined {
  const index = series.marks.indexOf(nominal);
  return index < 0 ? undefined : exactAt(series, index);
}

function nearestMark(series: Series, value: number): number {
  const { marks, quantity } = series;
  const mark = marks[indexNear(series, value)];
  if (mark === undefined) throw new OutOfRange(quantity, value, `near a mark from ${marks[0]} to ${marks.at(-1)}`);
  return mark;
}

/** A millionth leaves room for rounding in arithmetic and none for a value that passes by, which would jump as it is dragged. */
function asMarked(series: Series, value: number): number {
  const index = indexNear(series, value);
  return Math.abs(value / exactAt(series, index) - 1) < 1e-6 ? (series.marks[index] ?? value) : value;
}
