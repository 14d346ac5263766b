import type { SideViewLayout } from './layout.ts';
import type { SideViewChain, SideViewHandle } from './side-view.ts';

/** What a hand took hold of, and where. */
export interface Taken {
  /** mm from the sensor. */
  readonly at: number;
  readonly value: number;
  /** Drawn behind a break, not to scale. */
  readonly far: boolean;
}

/** Pixels over which a subject that is not drawn to scale comes half as near. */
const halving = 50;

/** So many times the apparatus counts as the distance of a subject that is taken from infinity. */
const fromInfinity = 32;

export function takenAt(
  { at, chain = 0, value }: SideViewHandle,
  chains: readonly SideViewChain[],
  { frame }: Pick<SideViewLayout, 'frame'>,
): Taken {
  const { parts, sharpPlane, foremost } = chains[chain]!.positions;
  if (at === 'around') return { at: sharpPlane! - value, value, far: false };
  if (at !== 'subject') return { at: parts[at]!.from, value, far: false };
  return { at: sharpPlane ?? fromInfinity * foremost, value, far: frame.broken[chain]! || sharpPlane === null };
}

/** Where a thing stands that the hand has moved by *x* pixels, towards the camera above 0. */
export function movedTo({ at, far }: Taken, x: number, pixelsPerMillimetre: number): number {
  return far ? at / 2 ** (x / halving) : at - x / pixelsPerMillimetre;
}
