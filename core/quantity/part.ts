import { quantityOf, type QuantityName } from './vocabulary.ts';

/** The part a quantity belongs to, in words: `main lens` for `main-lens.focal-length`, '' where there is only one. */
export function partOf(name: QuantityName): string {
  return name.slice(0, Math.max(0, name.lastIndexOf('.'))).replaceAll('-', ' ');
}

/** Prefixes that say which of a quantity is meant, not which part of a chain it belongs to. */
const adjectives: readonly string[] = [
  'ambient',
  'best',
  'closest',
  'corrected',
  'nearest',
  'needed',
  'remaining',
  'sharp',
  'shortest',
  'sideways',
  'slowest',
  'turned',
  'turning',
  'unreversed',
  'working',
];

/** The name of a quantity with its prefix: `focal length of the main lens`, `corrected exposure time`. */
export function nameInFull(name: QuantityName): string {
  const part = partOf(name);
  const { name: bare } = quantityOf(name);
  if (part === '') return bare;
  return adjectives.includes(part) ? `${part} ${bare}` : `${bare} of the ${part}`;
}

/** All parts together: what is of the whole chain has the bare letter, for beside it no other is meant. */
const whole = 'chain';

/** The index by which two letters of one kind are told apart: `main` for `main-lens.focal-length`, '' where there is only one, or the whole chain's. */
export function partIndex(name: QuantityName): string {
  const part = partOf(name);
  return part === whole ? '' : part.replace(/ lens$/, '');
}
