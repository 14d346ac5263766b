import { OutOfRange } from '#core/quantity/errors.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { quantityOf } from '#core/quantity/vocabulary.ts';
import { possibleLenses } from '#core/rig/assumed/possible-lenses.ts';
import { faultOfConverter } from './converter-fault.ts';
import { knownLens } from './known-lens.ts';
import { numberIn, type Fault, type NewPart } from './part.ts';

/** For a lens that does not say its own register: with the shortest there is none is refused that fits some camera. */
export const { least: anyRegister } = quantityOf('register-distance');

/** What of a part contradicts itself; undefined where it can be. */
export function faultOf(part: NewPart): Fault | undefined {
  if (part.kind === 'bellows' && numberIn(part, 'longest')! <= numberIn(part, 'shortest')!) {
    return { key: 'longest', message: '“Longest” has to be more than “Shortest”.' };
  }
  if (part.kind === 'converter') return faultOfConverter(part);
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
    return { key: error.quantity, message: `There is no such lens: ${refused(error)}` };
  }
}

/** What the core said of a number, as it goes on in a sentence; what it asks for in the unit that readers have. */
function refused({ quantity, value, accepted }: OutOfRange): string {
  const asked = accepted.replace(
    /^(at least|at most|above|below) (-?\d+(?:\.\d+)?)/,
    (_, how: string, number: string) => `${how} ${printQuantity(quantity, Number(number), { figures: 4 })}`,
  );
  return `the ${quantityOf(quantity).name} would be ${printQuantity(quantity, value)}, and has to be ${asked}.`;
}
