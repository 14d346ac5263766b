import { quantityOf, type BaseUnit, type QuantityName, type Writing } from '#core/quantity/vocabulary.ts';

type Unit = readonly [unit: string, inBaseUnits: number];

/** Units of each kind, written down apart from the code that reads them. */
const units: Partial<Record<BaseUnit, readonly Unit[]>> = {
  mm: [
    ['mm', 1],
    ['cm', 10],
    ['m', 1000],
    ['µm', 0.001],
    ['nm', 1e-6],
    ['in', 25.4],
  ],
  m: [
    ['m', 1],
    ['cm', 0.01],
  ],
  s: [
    ['s', 1],
    ['ms', 0.001],
  ],
  rad: [
    ['rad', 1],
    ['°', Math.PI / 180],
  ],
  'rad/s': [
    ['rad/s', 1],
    ['°/s', Math.PI / 180],
  ],
  'mm/s': [
    ['mm/s', 1],
    ['m/s', 1000],
  ],
  '1/mm': [['1/mm', 1]],
  stops: [
    ['stops', 1],
    ['EV', 1],
  ],
};

/** Ways of the trade to write a pure number. */
const writings: Partial<Record<Writing, (value: number) => readonly string[]>> = {
  ratio: (value) => [digits(value), `${digits(value)}x`, `${digits(value)}×`, `1:${digits(1 / value)}`],
  'f-number': (value) => [`f/${digits(value)}`, digits(value)],
  share: (value) => [`${digits(100 * value)} %`, digits(100 * value)],
  'power-fraction': (value) => [`1/${digits(1 / value)}`],
};

/** The same value written in every unit and way that a learner may use, decimal comma included. */
export function spellings(name: QuantityName, value: number): readonly string[] {
  const { base, shown, writing } = quantityOf(name);
  const own = base === '' ? [['', 1] as const] : (units[base] ?? [[base, 1] as const]);
  // What is counted on a millimetre, pixels or line pairs, may be named.
  const counted: readonly Unit[] = base === '1/mm' && shown !== base ? [[shown, 1]] : [];
  const inUnits = [...own, ...counted].map(([unit, worth]) => `${digits(value / worth)} ${unit}`.trim());
  const all = base === '' ? (writings[writing]?.(value) ?? inUnits) : inUnits;
  return [...all, all[0]!.replace('.', ',')].filter((text) => !/^(f\/)?\d{1,3},\d{3}(?!\d)/.test(text));
}

/** Twelve significant digits as people write them, without powers of ten. */
function digits(value: number): string {
  return value.toLocaleString('en', { useGrouping: false, maximumSignificantDigits: 12 });
}
