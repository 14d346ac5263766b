import { printQuantity } from '#core/quantity/print.ts';

/** What common cameras can be set to. */
const [lowest, highest] = [100, 25_600];

/** What there is to be said of an ISO that common cameras do not have. */
export function isoInWords(iso: number | undefined): string | undefined {
  if (iso === undefined || (iso >= lowest && iso <= highest)) return undefined;
  if (iso > highest) return `${printQuantity('iso', iso)}, more than cameras have: too dark`;
  return iso < 0.5 ? 'far below 100: too bright' : `${printQuantity('iso', iso)}, below 100: too bright`;
}
