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

const inch = 25.4;

/** What the units of books and manuals are worth in base units. */
const worths: Readonly<Record<string, number>> = {
  mm: 1, cm: 10, m: 1000, km: 1e6, in: inch, ft: 12 * inch, µm: 1e-3, nm: 1e-6, s: 1, D: 1, '°': Math.PI / 180,
};

const pattern = /^([-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?) (\S+)$/;

/** True for a finite number, for 'Infinity' and for a text like `"5.08 cm"` in a unit that is known here. */
export function isPrintedQuantity(value: unknown): value is number | string {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'string') return false;
  return value === 'Infinity' || worths[pattern.exec(value)?.[2] ?? ''] !== undefined;
}

/** Reads a number with its unit. Throws for anything that {@link isPrintedQuantity} refuses. */
export function readPrinted(value: number | string): Printed {
  if (!isPrintedQuantity(value)) throw new Error(`cannot read ${JSON.stringify(value)}; write a number or a text like "5.08 cm"`);
  if (value === 'Infinity') return { number: Infinity, unit: '', worth: 1, base: Infinity };
  if (typeof value === 'number') return { number: value, unit: '', worth: 1, base: value };
  const [, digits, unit] = pattern.exec(value) as unknown as [string, string, string];
  const worth = worths[unit] as number;
  return { number: Number(digits), unit, worth, base: Number(digits) * worth };
}
