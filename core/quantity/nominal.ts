/**
 * The marked series: rounded numbers that stand for exact powers of two.
 *
 * f-numbers after ISO 517, a third of a stop apart: exact value 2^(k/6), k counted from f/1. The table of thirds was read where
 * the checks name it; the clause from memory. Shutter times after ISO 516 (from memory): exact value 2^(k/3) s, k from 1 s.
 */
export const fNumberSeries: readonly number[] = [
  1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11, 13, 14, 16, 18, 20, 22, 25, 29,
  32, 36, 40, 45, 51, 57, 64,
];

const denominators = [
  8000, 6400, 5000, 4000, 3200, 2500, 2000, 1600, 1250, 1000, 800, 640, 500, 400, 320, 250, 200, 160, 125, 100, 80, 60, 50, 40,
  30, 25, 20, 15, 13, 10, 8, 6, 5, 4,
];
const seconds = [0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.3, 1.6, 2, 2.5, 3.2, 4, 5, 6, 8, 10, 13, 15, 20, 25, 30];

/** Marked shutter times in seconds, shortest first. */
export const shutterTimeSeries: readonly number[] = [...denominators.map((denominator) => 1 / denominator), ...seconds];

const secondIndex = shutterTimeSeries.indexOf(1);

/** Exact value behind a marked f-number of the series: 11 stands for 11.31...; undefined for a number that is not marked. */
export function exactFNumber(nominal: number): number | undefined {
  const index = fNumberSeries.indexOf(nominal);
  return index < 0 ? undefined : 2 ** (index / 6);
}

/** Exact value behind a marked shutter time of the series: 1/125 s stands for 1/128 s; undefined for one that is not marked. */
export function exactShutterTime(nominal: number): number | undefined {
  const index = shutterTimeSeries.indexOf(nominal);
  return index < 0 ? undefined : 2 ** ((index - secondIndex) / 3);
}

/** The marked f-number nearest to a value by ratio, within the series. */
export function nominalFNumber(value: number): number {
  return marked(fNumberSeries, 6 * Math.log2(value));
}

/** The marked shutter time nearest to a value by ratio, within the series. */
export function nominalShutterTime(value: number): number {
  return marked(shutterTimeSeries, 3 * Math.log2(value) + secondIndex);
}

function marked(series: readonly number[], step: number): number {
  return series[Math.min(series.length - 1, Math.max(0, Math.round(step)))]!;
}
