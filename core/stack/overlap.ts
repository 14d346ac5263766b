import { OutOfRange } from '#core/quantity/errors.ts';

/** Throws OutOfRange unless *overlap* is a finite number below 1; negative ones leave gaps. Returns it, for use inline. */
export function requireOverlap(overlap: number): number {
  if (!(overlap < 1 && overlap > -Infinity))
    throw new OutOfRange('overlap', overlap, 'a share below 1, else a stack gets nowhere');
  return overlap;
}
