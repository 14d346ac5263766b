import { focusDistance } from '#core/gaussian/focus-distance.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { quantityOf } from '#core/quantity/vocabulary.ts';
import { possibleLenses } from '#core/rig/assumed/possible-lenses.ts';
import { closestMagnification } from '#core/rig/lens-in-use.ts';
import { refusalInWords } from '#site/state/answer.ts';
import { knownLens } from './known-lens.ts';
import { numberIn, type NewPart } from './part.ts';

/** What is wrong with a part whose fields are right each for itself: the field to be changed, and a sentence. */
export interface Fault {
  readonly key: string;
  readonly message: string;
}

/** For a lens that does not say its own register: with the shortest there is none is refused that fits some camera. */
const { least: anyRegister } = quantityOf('register-distance');

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

/** What of a part contradicts itself; undefined where it can be. */
export function faultOf(part: NewPart): Fault | undefined {
  if (part.kind === 'bellows' && numberIn(part, 'longest')! <= numberIn(part, 'shortest')!) {
    return { key: 'longest', message: '“Longest” has to be more than “Shortest”.' };
  }
  if (part.kind !== 'lens') return undefined;
  const smallest = numberIn(part, 'smallest-aperture');
  const widest = numberIn(part, 'max-aperture');
  if (smallest !== undefined && widest !== undefined && smallest < widest) {
    return { key: 'smallest-aperture', message: '“Smallest opening” has to be a larger f-number than the widest.' };
  }
  if (part['focus-magnification'] === undefined && part['focus-distance'] === undefined) {
    return {
      key: 'focus-magnification',
      message: '“Greatest magnification” or “Nearest focus distance” is needed: either says how close the lens comes.',
    };
  }
  try {
    possibleLenses(knownLens(part, numberIn(part, 'register-distance') ?? anyRegister));
    return undefined;
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    return { key: error.quantity, message: `No lens is so. ${refusalInWords(error)}` };
  }
}
