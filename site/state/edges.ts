import { printQuantity } from '#core/quantity/print.ts';

/* What lessons about one lens say alike where its numbers come to an end. */

/** A subject a million times its image away, or farther, is at infinity for every purpose here. */
export const asGoodAsZero = 1e-6;

/** Of a distance to such a subject. */
export const infinite = '∞, set to infinity';

/** Of the magnification there. */
export const noneAtInfinity = (magnification: number | undefined) =>
  magnification === 0 ? '0, set to infinity' : undefined;

/** Of a working distance: infinite, or none because the sharp plane lies behind the rim. */
export function roomInWords(room: number | undefined): string | undefined {
  if (room === Infinity) return infinite;
  if (room === 0) return 'none: the sharp plane is at the rim';
  return room === undefined || room > 0
    ? undefined
    : `inside the lens, ${printQuantity('working-distance', -room)} behind the rim`;
}

/** The same beside a drawing, where the caution has it in words: bare figures, below zero behind the rim. */
export function roomInFigures(room: number, words: string): string {
  return room > 0 ? words : printQuantity('working-distance', room);
}
