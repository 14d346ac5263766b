import type { BaseUnit, ShownUnit } from './vocabulary.ts';

/**
 * Units that may be typed for each base unit, with what one of them is worth in it; the first spelling is the one printed.
 * Inches are exact (25.4 mm, international yard and pound agreement of 1959).
 */
const units: Readonly<Record<BaseUnit, Readonly<Record<string, number>>>> = {
  mm: { mm: 1, cm: 10, m: 1000, µm: 1e-3, um: 1e-3, μm: 1e-3, nm: 1e-6, in: 25.4, inch: 25.4, inches: 25.4, '"': 25.4, '″': 25.4 },
  s: { s: 1, sec: 1, ms: 1e-3, µs: 1e-6, us: 1e-6, μs: 1e-6, min: 60 },
  m: { m: 1, cm: 0.01, ft: 0.3048 },
  '1/mm': { '1/mm': 1, '/mm': 1, 'lp/mm': 1, 'px/mm': 1 },
  dpt: { dpt: 1, D: 1, dioptre: 1, dioptres: 1, diopter: 1, diopters: 1 },
  lx: { lx: 1, lux: 1 },
  'cd/m²': { 'cd/m²': 1, 'cd/m2': 1 },
  rad: { rad: 1, '°': Math.PI / 180, deg: Math.PI / 180 },
  'rad/s': { 'rad/s': 1, '°/s': Math.PI / 180, 'deg/s': Math.PI / 180 },
  'mm/s': { 'mm/s': 1, 'cm/s': 10, 'm/s': 1000 },
  stops: { stops: 1, stop: 1, EV: 1 },
  px: { px: 1, pixel: 1, pixels: 1 },
  '': { '%': 0.01, '×': 1, x: 1, X: 1 },
};

/** What one *unit* is worth in the base unit, or undefined where it measures something else. */
export function unitWorth(base: BaseUnit, unit: string): number | undefined {
  if (unit === '' || unit === base) return 1;
  const own = units[base];
  return Object.hasOwn(own, unit) ? own[unit] : undefined;
}

/** True when *unit* is a unit of anything at all: "12 s" for a length is a wrong unit, "12 q" is no unit. */
export function isAnyUnit(unit: string): boolean {
  return Object.values(units).some((own) => Object.hasOwn(own, unit));
}

/** A length in mm steps to the unit in which it reads best; other quantities keep the unit they are shown in. */
export function readableUnit(base: BaseUnit, shown: ShownUnit, value: number): ShownUnit {
  if (base !== 'mm') return shown;
  const size = Math.abs(value);
  if (size === 0 || shown === 'nm') return shown;
  if (size >= 1000) return 'm';
  if (shown === 'µm') return size >= 1 ? 'mm' : size >= 1e-4 ? 'µm' : 'nm';
  return size >= 0.01 ? 'mm' : size >= 1e-4 ? 'µm' : 'nm';
}
