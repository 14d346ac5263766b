const decimalNumber = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d{1,3})?$/i;

/** The shortest text that reads back as the same number: for addresses and attributes, without unit. Finite numbers only. */
export function plainNumber(value: number): string {
  return String(value);
}

/** Reads a plain decimal number, exponent allowed; undefined for anything else, infinities and hexadecimal among it. */
export function readPlainNumber(text: string): number | undefined {
  const value = decimalNumber.test(text) ? Number(text) : NaN;
  return Number.isFinite(value) ? value : undefined;
}
