import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import { assembleRig } from './assemble.ts';
import { rigMatrix } from './cardinal-points.ts';
import { ImpossibleChain } from './impossible-chain.ts';
import { closestMagnification } from './lens-in-use.ts';
import type { Bellows, MountedLens, Part } from './part.ts';
import { solveRig } from './solve.ts';
import type { SolvedRig } from './solved-rig.ts';

/** From where to where a chain can be focused. */
export interface FocusRange {
  /** Lens at infinity, bellows closed: at infinity, past it, or as far as the chain still reaches. */
  readonly farthest: SolvedRig;
  /** Lens at its closest, bellows drawn out. */
  readonly closest: SolvedRig;
}

/**
 * Where a chain can be focused, from one end of its focusing to the other.
 *
 * @param parts the camera first, the foremost last
 * @returns the chain solved at both ends. With a ring in it the farthest is near: infinity is lost.
 * @throws ImpossibleChain, OutOfRange as `assembleRig` does
 *
 * Assumes that the lens nearest the camera is the one that is focused, others staying as they are set.
 *
 * Source: derived in [README](README.md#focusing).
 */
export function focusRange(parts: readonly Part[]): FocusRange {
  const lens = parts.findIndex(({ part }) => part === 'lens');
  const end = (atClosest: boolean) =>
    solveRig(
      assembleRig(
        parts.map((part, index) => {
          if (part.part === 'bellows') return { ...part, extension: atClosest ? part.longest : part.shortest };
          if (part.part !== 'lens' || index !== lens) return part;
          return { ...part, focusMagnification: atClosest ? closestMagnification(part.lens) : 0 };
        }),
      ),
    );
  return { farthest: end(false), closest: end(true) };
}

/** *m* with its sign: below 0 for the usual picture upside down. It grows less with extension, without a jump. */
function signedMagnification(parts: readonly Part[]): number {
  return rigMatrix(assembleRig(parts))[3];
}

function withPart(parts: readonly Part[], index: number, changed: Partial<MountedLens> | Partial<Bellows>): Part[] {
  return parts.map((part, place) => (place === index ? ({ ...part, ...changed } as Part) : part));
}

/**
 * The focus setting of one lens at which the chain gives a wanted magnification.
 *
 * @param parts the chain, the lens at any setting
 * @param index place of that lens in the chain
 * @param magnification *m*, wanted of the whole chain, picture upside down; above 0
 * @returns *m₀*, to 1e-12, or null where the lens does not reach it in this chain
 * @throws ImpossibleChain where no lens stands at that place; OutOfRange for a magnification not above 0
 *
 * Assumes that *m* changes one way only from infinity to the closest setting, as it does for a lens in its normal place.
 * A lens turned round and
 * focused as a whole changes nothing, for its rim is mounted and not its flange; one with inner focusing still changes its focal length.
 *
 * Source: derived in [README](README.md#focusing).
 */
export function focusMagnificationFor(parts: readonly Part[], index: number, magnification: number): number | null {
  requirePositive('magnification', magnification);
  const mounted = parts[index];
  if (mounted?.part !== 'lens') throw new ImpossibleChain(index, mounted?.part ?? 'nothing', 'only a lens is focused');
  const excess = (setting: number) =>
    signedMagnification(withPart(parts, index, { focusMagnification: setting })) + magnification;
  let [low, high] = [0, closestMagnification(mounted.lens)];
  const [atLow, atHigh] = [excess(low), excess(high)];
  const rounding = 1e-12 * magnification;
  if (Math.abs(atLow) <= rounding) return low;
  if (Math.abs(atHigh) <= rounding) return high;
  if (atLow > 0 === atHigh > 0) return null;
  while (high - low > 1e-13 * high) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (excess(middle) > 0 === atLow > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * How far bellows, or a ring to be chosen, must be for a wanted magnification of the chain. Exact.
 *
 * m is linear in every single length of a chain, so two settings tell all others
 *
 * @param parts the chain, the ring or bellows at any length
 * @param index place of that ring or bellows in the chain
 * @param magnification *m*, wanted of the whole chain, picture upside down; above 0
 * @returns *e*, mm, or null where no length from 0 up (or within the bellows' draw) gives it
 * @throws ImpossibleChain where neither ring nor bellows stand there; OutOfRange for a magnification not above 0
 *
 * Source: derived in [README](README.md#focusing).
 */
export function extensionFor(parts: readonly Part[], index: number, magnification: number): number | null {
  if (!(magnification > 0 && magnification < Infinity)) throw new OutOfRange('magnification', magnification, 'above 0');
  const spacer = parts[index];
  if (spacer?.part !== 'ring' && spacer?.part !== 'bellows') {
    throw new ImpossibleChain(index, spacer?.part ?? 'nothing', 'only a ring or bellows has a length to choose');
  }
  const [least, most] = spacer.part === 'bellows' ? [spacer.shortest, spacer.longest] : [0, Infinity];
  const [one, other] = spacer.part === 'bellows' ? [least, most] : [0, 100];
  const at = (extension: number) => signedMagnification(withPart(parts, index, { extension }));
  const [first, second] = [at(one), at(other)];
  if (first === second) return Math.abs(first + magnification) <= 1e-12 * magnification ? least : null;
  const extension = one + ((-magnification - first) * (other - one)) / (second - first);
  return extension >= least - 1e-9 && extension <= most + 1e-9 ? Math.min(most, Math.max(least, extension)) : null;
}
