import type { Ranged } from './planned-chain.ts';

/** Between what answers lie that lean on something assumed, as it is printed; set by what works ranges out, once that is here. */
class RangesAtHand {
  of: ((name: Ranged) => string | undefined) | undefined = $state.raw();
}

export const ranged = new RangesAtHand();
