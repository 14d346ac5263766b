import { printQuantity } from '#core/quantity/print.ts';

/** Ends of what eyes see, mm. */
const visible = { least: 0.00038, most: 0.00078 };

/** A wavelength that nobody sees, with the word for it. */
export function unseenInWords(wavelength: number | undefined): string | undefined {
  if (wavelength === undefined) return undefined;
  const printed = printQuantity('wavelength', wavelength);
  if (wavelength > visible.most) return `${printed}, infrared: unseen`;
  return wavelength < visible.least ? `${printed}, ultraviolet: unseen` : undefined;
}

/** The smallest opening that lenses have. */
const smallest = 64;

/** Of an f-number for which no lens has a mark. */
export function closedTooFar(fNumber: number | undefined): string | undefined {
  if (fNumber === undefined) return undefined;
  if (fNumber === 0) return 'any, it has no depth';
  return fNumber > smallest ? `${printQuantity('f-number', fNumber)}: no lens closes so far` : undefined;
}
