import { printNumber, printQuantity } from '#core/quantity/print.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { AssumedOfLens, PossibleLenses } from '#core/rig/assumed/known-lens.ts';
import type { AnswerSpan } from '#core/rig/assumed/span-over.ts';

/** What can be assumed of a lens, as a sentence names it, in the order in which it does. */
const letters: Readonly<Record<AssumedOfLens, string>> = {
  'pupil-magnification': 'P',
  'front-principal-depth': 'h',
  'principal-separation': 'HH′',
  'barrel-length': 'length',
  'focus-magnification': 'm₀',
  'focus-distance': 'L',
  'focal-length': 'f close up',
};

const inOrder = (names: readonly AssumedOfLens[]) =>
  (Object.keys(letters) as AssumedOfLens[]).filter((name) => names.includes(name)).map((name) => letters[name]);

/** `P, h and HH′` */
const listed = (names: readonly string[]) =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** What of a lens is assumed, by its letters: `P, h, HH′`. '' where nothing is. */
export const assumedLetters = ({ assumed }: Pick<PossibleLenses, 'assumed'>): string => inOrder(assumed).join(', ');

/** Why answers that lean on a lens have a range: `P, h and HH′ of this lens are assumed`; '' where all is known. */
export function leanWords({ assumed, measured }: Pick<PossibleLenses, 'assumed' | 'measured'>): string {
  const taken = inOrder(assumed);
  // What is measured is the focal length that is engraved.
  const found = inOrder(measured).map((letter) => letter.replace(' close up', ''));
  const parts = [
    ...(taken.length > 0 ? [`${listed(taken)} of this lens ${taken.length > 1 ? 'are' : 'is'} assumed`] : []),
    ...(found.length > 0 ? [`${listed(found)} ${found.length > 1 ? 'were' : 'was'} measured, with an error`] : []),
  ];
  return parts.join('; ');
}

/**
 * Least and most of an answer as they are printed, `78 to 96 mm`; one number where both print alike. Of room below zero there is none: the sharp plane is
 * inside the lens, `up to 96 mm or inside the lens`.
 */
export function rangeWords(name: QuantityName, { least, most }: Pick<AnswerSpan, 'least' | 'most'>): string {
  const [from, to] = [printQuantity(name, least), printQuantity(name, most)];
  if (name === 'working-distance' && least < 0) return `${most > 0 ? `up to ${to} or ` : ''}inside the lens`;
  if (from === to) return to;
  const [low, high] = [printNumber(name, least), printNumber(name, most)];
  const isBare = low.unit === high.unit && !from.startsWith('f/');
  return `${isBare ? low.number : from} to ${to}`;
}

/** Whether an answer is one number as it is printed, whichever of the possible lenses it is. */
export const isOneNumber = (name: QuantityName, { least, most, isOpen }: AnswerSpan): boolean =>
  !isOpen && printQuantity(name, least) === printQuantity(name, most);
