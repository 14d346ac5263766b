import type { KnownNumber } from '#core/rig/assumed/known-lens.ts';
import type { Kind } from './kinds.ts';
import { currentVersion } from './upgrade.ts';

/** A number in the base unit, words, or a number that was measured with its standard error. */
export type KitValue = number | string | { readonly value: number; readonly error: number };

/** One part of a kit, as its file holds it: what `kinds` says of its kind, by the fields' keys. */
export interface KitPart {
  /** Its name in the kit, unlike any other's. */
  readonly id: string;
  readonly kind: Kind;
  /** What its owner calls it. */
  readonly name: string;
  readonly [key: string]: KitValue | undefined;
}

/** A part before it has its place in a kit. */
export type NewPart = Omit<KitPart, 'id'> & Pick<KitPart, 'kind' | 'name'>;

/** What is wrong with a part whose fields are right each for itself: the field to be changed, and a sentence. */
export interface Fault {
  readonly key: string;
  readonly message: string;
}

/** A whole kit, as it is kept and as its file has it. */
export interface Kit {
  /** Says what this file is. */
  readonly kit: 'ring-and-ruler';
  readonly version: typeof currentVersion;
  readonly parts: readonly KitPart[];
}

export const emptyKit: Kit = { kit: 'ring-and-ruler', version: currentVersion, parts: [] };

/** The number of a field, without its error; undefined where it is not known. */
export function numberIn(part: NewPart, key: string): number | undefined {
  const value = part[key];
  return typeof value === 'object' ? value.value : typeof value === 'number' ? value : undefined;
}

/** The number of a field, with its error where it has one, as the core takes it. */
export function knownIn(part: NewPart, key: string): KnownNumber | undefined {
  const value = part[key];
  if (typeof value === 'object') return { value: value.value, standardError: value.error };
  return typeof value === 'number' ? value : undefined;
}

/** The words of a field; '' where there are none. */
export function wordsIn(part: NewPart, key: string): string {
  const value = part[key];
  return typeof value === 'string' ? value : '';
}

/** The parts of one kind. */
export function partsOf({ parts }: Kit, kind: Kind): readonly KitPart[] {
  return parts.filter((part) => part.kind === kind);
}
