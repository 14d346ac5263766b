import type { LensSlug } from './crate.ts';

/** The claws of a mount and its contacts stand out behind any flange, mm: assumed. */
export const claws = 5;

/** Glass that stands out behind the flange farther than the claws, mm, to a tenth: traced, and kept as a number so that pages need not trace. */
const glass: Partial<Record<LensSlug, number>> = { 'lens-28': 10.8 };

/**
 * What stands out behind the flange of a lens of the crate set to infinity, mm, to a tenth, as one measures it.
 *
 * Its glass where that is known and longer, else the claws alone.
 */
export const standsOut = (slug: LensSlug): number => glass[slug] ?? claws;
