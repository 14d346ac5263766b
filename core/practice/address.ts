import type { ProblemFamily } from './family.ts';
import { isSeed } from './seed.ts';

/** What `?practice=ring-on-a-lens:12` in an address says. */
export interface PracticeAddress {
  /** Id of the family. */
  readonly family: string;
  readonly seed: number;
}

export type PracticeReading =
  | { readonly kind: 'value'; readonly family: ProblemFamily; readonly seed: number }
  /** *message* says what was found, what is accepted and what is shown instead. */
  | { readonly kind: 'unreadable'; readonly message: string };

/** `ring-on-a-lens:12`: which problem it is, for an address, a printed sheet or a room. */
export function practiceText({ family, seed }: PracticeAddress): string {
  return `${family}:${seed}`;
}

/** The problem that *text* names, if it is one of *families*, of which there is at least one. */
export function readPracticeText(text: string, families: readonly ProblemFamily[]): PracticeReading {
  const [id, seed, ...more] = text.split(':');
  const family = families.find((one) => one.id === id);
  if (family && more.length === 0 && /^\d{1,6}$/.test(seed ?? '') && isSeed(Number(seed))) {
    return { kind: 'value', family, seed: Number(seed) };
  }
  const found = text.length > 24 ? `${text.slice(0, 24)}…` : text;
  return {
    kind: 'unreadable',
    message: `The link asks for a problem “${found}” that is not here. You see the first problem instead.`,
  };
}
