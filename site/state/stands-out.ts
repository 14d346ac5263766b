import type { LensSlug } from './crate.ts';
import { glassLenses, type GlassSlug } from './glass.ts';

/** The claws of a mount and its contacts stand out behind any flange, mm: assumed. */
export const claws = 5;

const isGlass = (slug: LensSlug): slug is LensSlug & GlassSlug => slug in glassLenses;

/**
 * What stands out behind the flange of a lens of the crate set to infinity, mm, to a tenth, as one measures it.
 *
 * Its glass where that is known and longer, else the claws alone.
 */
export function standsOut(slug: LensSlug): number {
  const glass = isGlass(slug) ? (glassLenses[slug].rearProtrusion ?? 0) : 0;
  return Math.round(10 * Math.max(claws, glass)) / 10;
}
