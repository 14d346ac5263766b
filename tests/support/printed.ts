import { unitWorth } from '#core/quantity/units.ts';

/** A number as a source prints it, beside what one of its units is worth in the base unit of the core. */
export interface Printed {
  readonly number: number;
  /** As printed; '' for a pure number. */
  readonly unit: string;
  /** Base units in one of `unit`. */
  readonly worth: number;
  /** The number in base units. */
  readonly base: number;
}

const pattern = /^([-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?) (\S+)$/;

/** What sources measure in and no page does. */
const onlyInSources: Readonly<Record<string, number | undefined>> = {
  ft: 12 * worthOf('in'),
  km: 1000 * worthOf('m'),
};

/** What a unit is worth in the base unit of whatever it measures. NaN for one that is not known. */
function worthOf(unit: string): number {
  const worths = (['mm', 's', 'dpt', 'rad'] as const).map((base) => unitWorth(base, unit));
  return worths.find((worth) => worth !== undefined) ?? onlyInSources[unit] ?? NaN;
}

/** True for a finite number, for 'Infinity' and for a text like `"5.08 cm"` in a unit that is known here. */
export function isPrintedQuantity(value: unknown): value is number | string {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'string') return false;
  return value === 'Infinity' || worthOf(pattern.exec(value)?.[2] ?? 'none') > 0;
}

/** Reads a number with its unit. Throws for anything that {@link isPrintedQuantity} refuses. */
export function readPrinted(value: number | string): Printed {
  if (!isPrintedQuantity(value))
    throw new Error(`cannot read ${JSON.stringify(value)}; write a number or a text like "5.08 cm"`);
  if (value === 'Infinity') return { number: Infinity, unit: '', worth: 1, base: Infinity };
  if (typeof value === 'number') return { number: value, unit: '', worth: 1, base: value };
  const [, digits, unit] = pattern.exec(value) as unknown as [string, string, string];
  const worth = worthOf(unit);
  return { number: Number(digits), unit, worth, base: Number(digits) * worth };
}
