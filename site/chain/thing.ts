import type { PossibleLenses } from '#core/rig/assumed/known-lens.ts';
import type { Kind } from '#site/kit/kinds.ts';
import type { NewPart } from '#site/kit/part.ts';

/** The kinds of parts that a chain is made of; flashes, lights and supports stand beside it. */
export const chainKinds = [
  'camera',
  'lens',
  'ring',
  'bellows',
  'close-up-lens',
  'converter',
  'reversing-ring',
  'coupling-ring',
  'objective',
  'tube-lens',
  'finite-objective',
] as const satisfies readonly Kind[];

export type ChainKind = (typeof chainKinds)[number];

export const isChainKind = (kind: string): kind is ChainKind => (chainKinds as readonly string[]).includes(kind);

/** Something that can stand in a chain: of the crate, or a reader's own. */
export interface Thing {
  /** What an address calls a thing of the crate; for a reader's own, unlike any other's while the page is open. */
  readonly slug: string;
  readonly kind: ChainKind;
  readonly name: string;
  /** Its numbers, by the fields of a kit. */
  readonly part: NewPart;
  readonly isOwn: boolean;
  /** Of a lens: as it is taken to be, and between which it lies. */
  readonly lenses?: PossibleLenses;
  /** Why it can stand in no chain. */
  readonly fault?: string;
}
