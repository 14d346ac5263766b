import { printQuantity } from '#core/quantity/print.ts';

/** What common cameras can be set to. */
const [lowest, highest] = [100, 25_600];

/** Less than that is printed as next to nothing, in words. */
export const leastPrinted = { iso: 1, electrons: 0.01, signalToNoise: 0.01 } as const;

/** What there is to be said of an ISO that common cameras do not have. */
export function isoInWords(iso: number | undefined): string | undefined {
  if (iso === undefined || (iso >= lowest && iso <= highest)) return undefined;
  if (iso > highest) return `${printQuantity('iso', iso)}, more than cameras have: too dark`;
  return `${iso < leastPrinted.iso ? 'less than 1' : printQuantity('iso', iso)}, below 100: too bright`;
}

/** Of electrons that hardly any pixel gets. */
export function electronsInWords(electrons: number | undefined): string | undefined {
  return electrons !== undefined && electrons < leastPrinted.electrons ? 'next to none' : undefined;
}

/** Of a signal that nobody finds. */
export function signalToNoiseInWords(ratio: number | undefined): string | undefined {
  return ratio !== undefined && ratio < leastPrinted.signalToNoise ? 'lost in the noise' : undefined;
}
