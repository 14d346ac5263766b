import { printQuantity } from '#core/quantity/print.ts';

/** What heads common flashes can give (common practice). */
const weakest = 1 / 128;

/** What a chain needs of the stand-in for a flash, to two figures, for it is no better known: `1/47 of the flash`. */
export function flashInWords(share: number): string {
  if (share < weakest) return `under ${printQuantity('flash-power', weakest)} of the flash`;
  const printed = printQuantity('flash-power', share, { figures: 2 });
  if (printed === '1') return 'all of the flash';
  return share > 1 ? `${printed} times the flash` : `${printed} of the flash`;
}
