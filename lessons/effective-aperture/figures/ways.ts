import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { effectiveFNumberOfReversedLens } from '#core/rig/effective-f-number-of-reversed-lens.formula.ts';
import { effectiveFNumberWithCloseUpLens } from '#core/rig/effective-f-number-with-close-up-lens.formula.ts';
import { effectiveFNumberWithConverter } from '#core/rig/effective-f-number-with-converter.formula.ts';
import type { Named } from '#core/quantity/formula.ts';

/** The ways in which a lens comes to its magnification, as the reader chooses among them. */
export const ways = {
  focusing: 'focusing, or rings',
  'close-up-lens': 'a close-up lens',
  converter: 'a converter',
  reversed: 'turning the lens round',
} as const;

export type Way = keyof typeof ways;

type Given = Named<'f-number' | 'magnification' | 'pupil-magnification' | 'focus-magnification' | 'converter-factor'>;

/** Whether a magnification can be had this *way*: a close-up lens adds to what the lens gives alone, and gives no less. */
export const isReached = (
  way: Way,
  { magnification, focusMagnification }: Named<'magnification' | 'focus-magnification'>,
) => way !== 'close-up-lens' || magnification >= focusMagnification;

/** *N_w* of a lens that has come to its magnification this *way*. */
export function worksAt(way: Way, given: Given): number {
  if (way === 'close-up-lens') return effectiveFNumberWithCloseUpLens(given);
  if (way === 'converter') return effectiveFNumberWithConverter(given);
  if (way === 'reversed') return effectiveFNumberOfReversedLens(given);
  return effectiveFNumber(given);
}
