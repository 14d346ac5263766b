const decimalNumber = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d{1,3})?$/i;
const scientific = /^(-?)(\d)(?:\.(\d+))?e([+-]\d+)$/;

/**
 * The shortest plain decimals that read back as the same number, for addresses and attributes: without unit and never with
 * an exponent, whose plus sign means a space in an address.
 *
 * @throws RangeError where *value* is not finite
 */
export function plainNumber(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`${value} is not a finite number`);
  const text = String(value);
  const parts = scientific.exec(text);
  if (!parts) return text;
  const [, sign, first, decimals = '', exponent] = parts as unknown as [string, string, string, string?, string?];
  const power = Number(exponent);
  // A number goes by an exponent below a millionth and from 1e21 on, where all of its decimals stand before the point.
  return power < 0
    ? `${sign}0.${'0'.repeat(-power - 1)}${first}${decimals}`
    : `${sign}${first}${decimals.padEnd(power, '0')}`;
}

/** Reads a plain decimal number, exponent allowed; undefined for anything else, infinities and hexadecimal among it. */
export function readPlainNumber(text: string): number | undefined {
  const value = decimalNumber.test(text) ? Number(text) : NaN;
  return Number.isFinite(value) ? value + 0 : undefined;
}
