import { OutOfRange } from '#core/quantity/errors.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import { ImpossibleChain } from '#core/rig/impossible-chain.ts';
import type { Lens } from '#core/rig/lens.ts';
import { rigPositions, type RigPositions } from '#core/rig/positions.ts';
import { engineChain, faultIn, type Chain } from '#site/chain/chain.ts';
import type { Thing } from '#site/chain/thing.ts';
import { refusalInWords } from '#site/state/answer.ts';

/** A chain that was put together: where all stands, and how it is lit. What a figure draws of it. */
export interface PlacedChain {
  readonly kind: 'built';
  readonly positions: RigPositions;
  /** Which link each part of the engine belongs to. */
  readonly linkOf: readonly number[];
}

/** A chain that cannot be: which of its links is at fault, and why. */
export interface ImpossibleLinks {
  readonly kind: 'impossible';
  readonly at: number;
  readonly why: string;
}

/** Puts a chain together. Throws for nothing that a reader can put together. */
export function placedChain(chain: Chain, lensOf?: (thing: Thing) => Lens): PlacedChain | ImpossibleLinks {
  const fault = faultIn(chain);
  if (fault) return { kind: 'impossible', ...fault };
  const { parts, linkOf } = engineChain(chain, lensOf);
  return unlessImpossible(chain, linkOf, () => ({
    kind: 'built',
    positions: rigPositions(assembleRig(parts)),
    linkOf,
  }));
}

/** What *ask* finds of a chain, or what the core has against it. */
export function unlessImpossible<Found>(
  chain: Chain,
  linkOf: readonly number[],
  ask: () => Found,
): Found | ImpossibleLinks {
  try {
    return ask();
  } catch (error) {
    if (error instanceof ImpossibleChain) {
      return { kind: 'impossible', at: linkOf[error.index] ?? 0, why: sentence(error.reason) };
    }
    if (error instanceof OutOfRange)
      return { kind: 'impossible', at: linkOfRefusal(chain), why: refusalInWords(error) };
    throw error;
  }
}

/** What the engine says of a number is about a lens mostly: the foremost. */
const linkOfRefusal = (chain: Chain) =>
  Math.max(
    0,
    chain.findLastIndex(({ thing }) => thing.kind === 'lens'),
  );

const sentence = (words: string) => `${words[0]!.toUpperCase()}${words.slice(1)}.`;

/** What is measured from rim, sensor and sharp plane. */
export type Measure = 'magnification' | 'field-width' | 'working-distance' | 'focus-distance';

/** What the engine by itself says of the sharp plane; nothing where there is none within reach. */
export function measuresOf({
  positions: { solved },
}: PlacedChain): Readonly<Partial<Record<Measure & QuantityName, number>>> {
  if (solved.sharpPlane === 'nowhere' || solved.sharpPlane === 'at infinity') return {};
  return {
    magnification: solved.magnification,
    'field-width': solved.fieldWidth,
    'working-distance': solved.workingDistance,
    'focus-distance': solved.focusDistance,
  };
}
