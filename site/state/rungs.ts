import { fNumberSeries, shutterTimeSeries } from '#core/quantity/nominal.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { degree } from '#core/quantity/units.ts';
import { quantityOf, type Quantity, type QuantityName } from '#core/quantity/vocabulary.ts';
import type { Range } from './address.ts';

/**
 * The values a slider stops at, from least to most: third stops for f-numbers and times, whole millimetres for extension,
 * two-figure preferred numbers where the trade thinks in ratios, a round step elsewhere.
 */
export function rungs(name: QuantityName, range: Range): readonly number[] {
  const { writing, scale, shown } = quantityOf(name);
  const inside = (value: number) => value > range.least && value < range.most;
  // An angle's steps are round in degrees, as it is shown.
  const inner = between(writing, scale, range, shown === '°' ? degree : 1).filter(inside);
  // One step from an end is seen to be one.
  while (inner.length > 1 && printQuantity(name, inner[0]!) === printQuantity(name, range.least)) inner.shift();
  while (inner.length > 1 && printQuantity(name, inner.at(-1)!) === printQuantity(name, range.most)) inner.pop();
  return [range.least, ...inner, range.most];
}

function between(writing: string, scale: Quantity['scale'], range: Range, unit: number): readonly number[] {
  if (writing === 'f-number') return fNumberSeries;
  if (writing === 'shutter-time') return shutterTimeSeries;
  if (scale === 'log') return preferredNumbers(range);
  if (scale === 'log both ways') {
    const one = preferredNumbers({ least: finest, most: Math.max(-range.least, range.most) });
    return [...one.map((step) => -step).reverse(), 0, ...one];
  }
  return evenSteps({ least: range.least / unit, most: range.most / unit }).map((step) => step * unit);
}

/** The first step from zero, in the base unit: a hundredth of a millimetre is a tenth of what is sharp at twice life size. */
const finest = 0.01;

/** 1.0, 1.1 ... 9.9 in every decade: steps of 1 to 10 per cent, all of two figures. */
function preferredNumbers({ least, most }: Range): number[] {
  const numbers: number[] = [];
  for (let decade = Math.floor(Math.log10(least)); decade <= Math.log10(most); decade++) {
    for (let mantissa = 10; mantissa < 100; mantissa++) numbers.push(Number(`${mantissa}e${decade - 1}`));
  }
  return numbers;
}

/** About two to four hundred even steps of 1, 2 or 5 times a power of ten. */
function evenSteps({ least, most }: Range): number[] {
  const step = roundStep((most - least) / 400);
  const count = Math.floor((most - least) / step);
  const first = Math.ceil(least / step);
  return Array.from({ length: count + 1 }, (_, index) => Number(((first + index) * step).toPrecision(12)));
}

/** The smallest of 1, 2, 5 times a power of ten that is not below *least*. */
export function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return Number(([1, 2, 5, 10].find((factor) => factor * power >= least * (1 - 1e-12))! * power).toPrecision(3));
}

/** Index of the rung nearest to *value*: by ratio above zero, else by difference. Rungs are in order. */
export function nearestRung(ladder: readonly number[], value: number): number {
  let low = 0;
  let high = ladder.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (ladder[middle]! <= value) low = middle;
    else high = middle;
  }
  return value - ladder[low]! <= ladder[high]! - value ? low : high;
}
