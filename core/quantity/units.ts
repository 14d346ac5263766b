import type { BaseUnit, Quantity, ShownUnit } from './vocabulary.ts';

/** Something that units measure, with what one of each is worth in the base unit. Spellings are in lower case. */
interface Measure {
  /** With its article, in a beginner's words. */
  readonly words: string;
  readonly base: BaseUnit;
  readonly worth: Readonly<Record<string, number>>;
}

/** Exact: international yard and pound agreement of 1959. */
const inch = 25.4;
const foot = 304.8;
/** rad */
export const degree = Math.PI / 180;

// µ is two characters of Unicode, the micro sign and the Greek letter; keyboards give u. Cameras write seconds as 2″.
// prettier-ignore
const millimetres = {
  mm: 1, cm: 10, m: 1000, µm: 1e-3, μm: 1e-3, um: 1e-3, micron: 1e-3, microns: 1e-3, nm: 1e-6,
  in: inch, inch, inches: inch, '"': inch, '″': inch, '”': inch, ft: foot, foot, feet: foot,
};
// prettier-ignore
const seconds = {
  s: 1, sec: 1, second: 1, seconds: 1, '"': 1, '″': 1, '”': 1, ms: 1e-3, µs: 1e-6, μs: 1e-6, us: 1e-6, min: 60, h: 3600,
};
const metres = Object.fromEntries(Object.entries(millimetres).map(([unit, worth]) => [unit, worth / 1000]));
const perMillimetre = { '1/mm': 1, '/mm': 1 };

const share: Measure = { words: 'a share', base: '', worth: { '%': 0.01 } };
const ratio: Measure = { words: 'a ratio', base: '', worth: { '×': 1, x: 1, '%': 0.01 } };

/** Whole numbers are counted; frames are what is counted here most. */
const count: Measure = { words: 'a number of frames', base: '', worth: { frames: 1, frame: 1 } };

/** Where a unit measures several things, the likeliest comes first. */
const measures: readonly Measure[] = [
  { words: 'a length', base: 'mm', worth: millimetres },
  { words: 'a time', base: 's', worth: seconds },
  { words: 'a length', base: 'm', worth: metres },
  { words: 'a number of line pairs per millimetre', base: '1/mm', worth: { 'lp/mm': 1, ...perMillimetre } },
  { words: 'a number of pixels per millimetre', base: '1/mm', worth: { 'px/mm': 1, ...perMillimetre } },
  { words: 'one over a length', base: '1/mm', worth: { '1/m': 1e-3, '/m': 1e-3 } },
  { words: 'a power', base: 'dpt', worth: { dpt: 1, d: 1, dioptre: 1, dioptres: 1, diopter: 1, diopters: 1 } },
  { words: 'an illuminance', base: 'lx', worth: { lx: 1, lux: 1 } },
  { words: 'a luminance', base: 'cd/m²', worth: { 'cd/m²': 1, 'cd/m2': 1 } },
  { words: 'an angle', base: 'rad', worth: { rad: 1, '°': degree, deg: degree, degree, degrees: degree } },
  { words: 'a rate of turning', base: 'rad/s', worth: { 'rad/s': 1, 'mrad/s': 0.001, '°/s': degree, 'deg/s': degree } },
  { words: 'a speed', base: 'mm/s', worth: { 'mm/s': 1, 'cm/s': 10, 'm/s': 1000 } },
  { words: 'a number of stops', base: 'stops', worth: { stops: 1, stop: 1, ev: 1 } },
  { words: 'a number of pixels', base: 'px', worth: { px: 1, pixel: 1, pixels: 1 } },
  share,
  ratio,
  count,
];

/** Every spelling of a unit that may be typed, in lower case, the longest first: so that none is taken for the beginning of another. */
export const unitSpellings: readonly string[] = [...new Set(measures.flatMap(({ worth }) => Object.keys(worth)))].sort(
  (one, other) => other.length - one.length,
);

/** What one *unit* is worth in the base unit, or undefined where it measures something else. Capitals make no difference. */
export function unitWorth(base: BaseUnit, unit: string): number | undefined {
  if (unit === '' || unit === base) return 1;
  return worthIn(
    measures.find((measure) => measure.base === base && worthIn(measure, unit) !== undefined),
    unit,
  );
}

/** What one *unit* typed for a quantity is worth in its base unit; '' is the unit it is shown in. Undefined where it does not fit. */
export function typedUnitWorth(quantity: Quantity, unit: string): number | undefined {
  return unit === '' ? unitWorth(quantity.base, quantity.shown) : worthIn(measureOf(quantity), unit);
}

/** What a quantity is in a beginner's words, with its article: `a length`, `an angle`. */
export function measureWords(quantity: Quantity): string {
  return (quantity.base === '' && quantity.writing === 'plain' ? undefined : measureOf(quantity)?.words) ?? 'a number';
}

/** What a unit measures, whatever is asked for: “12 s” for a length is `a time`, “12 q” is nothing. */
export function unitWords(unit: string): string | undefined {
  return measures.find((measure) => worthIn(measure, unit) !== undefined)?.words;
}

/** Pure numbers may be so many times something, or a share of it, where the trade has no writing of its own for them. */
function measureOf({ base, shown, writing }: Quantity): Measure | undefined {
  if (base !== '') return measures.find((measure) => measure.base === base && worthIn(measure, shown) !== undefined);
  if (writing === 'share') return share;
  if (writing === 'whole') return count;
  return writing === 'ratio' || writing === 'plain' ? ratio : undefined;
}

/** Written out, in either spelling, or with the point of an abbreviation. */
const metresInFull = /^(?:(m)illi|(c)enti|(n)ano)?met(?:re|er)s?$/;

function worthIn(measure: Measure | undefined, unit: string): number | undefined {
  const spelling = unit.toLowerCase().replace(/\.$/, '').replace(metresInFull, '$1$2$3m');
  return measure && Object.hasOwn(measure.worth, spelling) ? measure.worth[spelling] : undefined;
}

/** From which size, in the base unit, a quantity shown in a unit reads best in another; the largest first. */
// prettier-ignore
const steps: Partial<Record<ShownUnit, readonly (readonly [from: number, unit: ShownUnit])[]>> = {
  mm: [[1000, 'm'], [0.01, 'mm'], [1e-4, 'µm'], [1e-9, 'nm']],
  µm: [[1000, 'm'], [1, 'mm'], [1e-4, 'µm'], [1e-9, 'nm']],
  s: [[7200, 'h'], [120, 'min'], [0.1, 's'], [1e-9, 'ms']],
  'mm/s': [[1000, 'm/s']],
};

/**
 * The unit in which a value reads best: lengths step from nm to m, times from ms to h, speeds to m/s; the rest stay in theirs.
 *
 * @param shown the unit the quantity is shown in
 * @param value in the base unit
 */
export function readableUnit(shown: ShownUnit, value: number): ShownUnit {
  const step = steps[shown]?.find(([from]) => Math.abs(value) >= from);
  return step ? step[1] : shown;
}
