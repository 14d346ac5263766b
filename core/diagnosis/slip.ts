import type { QuantityName } from '#core/quantity/vocabulary.ts';

/** A wrong route that may have led to somebody's number. */
export interface Slip {
  readonly id: string;
  /** Where it leads, base unit. */
  readonly value: number;
  /** Why that comes out, and what to do instead. */
  readonly because: string;
  /** 1 for what the problems of the lessons know of this very quantity, 2 for what may happen with any, 3 for the rest. */
  readonly tier: 1 | 2 | 3;
  /** The quantity of which it takes another usual number. */
  readonly instead?: QuantityName;
}
