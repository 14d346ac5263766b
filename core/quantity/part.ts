import type { QuantityName } from './vocabulary.ts';

/** The part a quantity belongs to, in words: `main lens` for `main-lens.focal-length`, '' where there is only one. */
export function partOf(name: QuantityName): string {
  return name.slice(0, Math.max(0, name.lastIndexOf('.'))).replaceAll('-', ' ');
}

/** The index by which two letters of one kind are told apart: `main` for `main-lens.focal-length`, '' where there is only one. */
export function partIndex(name: QuantityName): string {
  return partOf(name).replace(/ lens$/, '');
}
