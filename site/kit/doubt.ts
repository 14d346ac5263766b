import { focusDistance } from '#core/gaussian/focus-distance.formula.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { possibleLenses } from '#core/rig/assumed/possible-lenses.ts';
import { closestMagnification } from '#core/rig/lens-in-use.ts';
import { anyRegister, faultOf } from './fault.ts';
import { knownLens } from './known-lens.ts';
import { numberIn, type Fault, type NewPart } from './part.ts';

/** Printed numbers are rounded, and engraved focal lengths too: so much nearer or farther is no contradiction. */
const rounded = 0.05;

/**
 * What of a part does not go together although it may be right; undefined where all does. Its owner is to be asked.
 *
 * A lens that moves as a whole has L = f (2 + m₀ + 1/m₀) + HH′ at its closest; one that gets nearer than that moves glass inside.
 */
export function doubtOf(part: NewPart): Fault | undefined {
  const nearest = numberIn(part, 'focus-distance');
  if (part.kind !== 'lens' || part['focusing'] === 'inside' || nearest === undefined) return undefined;
  if (part['focus-magnification'] === undefined || faultOf(part)) return undefined;
  const { extremes } = possibleLenses(knownLens(part, numberIn(part, 'register-distance') ?? anyRegister));
  const all = extremes.map((lens) =>
    focusDistance({
      focalLength: lens.focalLength,
      principalSeparation: lens.principalSeparation,
      magnification: closestMagnification(lens),
    }),
  );
  const [least, most] = [Math.min(...all) * (1 - rounded), Math.max(...all) * (1 + rounded)];
  if (nearest >= least && nearest <= most) return undefined;
  const print = (value: number) => printQuantity('focus-distance', value);
  const magnification = printQuantity('magnification', numberIn(part, 'focus-magnification')!);
  return {
    key: nearest < least ? 'focusing' : 'focus-distance',
    message:
      `If the whole lens moves out it is ${print(all[0]!)} from the sensor at ${magnification}, not ${print(nearest)}. ` +
      (nearest < least
        ? 'One that gets nearer moves glass inside: choose that. '
        : 'Look at both numbers again: the distance is measured from the sensor. ') +
      'If it is so all the same press once more: everything then goes by the magnification.',
  };
}
