import { camelCase, type Named } from '#core/quantity/formula.ts';

/** What a plan asks of a chain, and what it sets on it. */
export const ofAsked = [
  'magnification',
  'f-number',
  'sensor-width',
  'subject-depth',
  'flight-distance',
  'circle-of-confusion',
  'wavelength',
] as const;

/** The same, as functions take it. *magnification* is the one that is wanted. */
export type AskedOfChain = Readonly<Named<(typeof ofAsked)[number]>>;

/** That of what is *given*, and nothing else: the same question is the same to whoever remembers answers. */
export const askedOf = (given: AskedOfChain): AskedOfChain =>
  Object.fromEntries(
    ofAsked.map(camelCase).map((name) => [name, (given as Readonly<Record<string, number>>)[name]]),
  ) as unknown as AskedOfChain;

/** One lens, moved as a whole; everything else is a chain of parts. */
export const oneLens = 'own';

/** The best chain of what there is; what an address spells out is a chain by itself. */
export const chainWays = {
  [oneLens]: 'one lens, moved as a whole',
  bag: 'the best of a member’s bag',
  crate: 'the best of the whole crate',
} as const;

/** The best chain of the reader's own kit, where one is kept. */
export const ownKit = 'kit';

/** A chain has a camera, and something on it: no single word is one. */
const spelled = /^[^\s,]+(?:,[^\s,]+){1,15}$/;
const longest = 6000;

/** What the list calls a chain that an address spells out; undefined for what is none. */
export const spelledOut = (text: string): string | undefined =>
  text.length <= longest && spelled.test(text) ? 'a chain part by part' : undefined;
