import { OutOfRange } from '#core/quantity/errors.ts';
import { glassPositions, glassRays } from '#core/rig/glass-positions.ts';
import { ImpossibleChain } from '#core/rig/impossible-chain.ts';
import type { RigPositions } from '#core/rig/positions.ts';
import type { Chain } from '#site/chain/chain.ts';
import { glassOnSheet } from '#site/figures/side-view/glass-on-sheet.ts';
import type { SideViewChain } from '#site/figures/side-view/side-view.ts';
import { glassLenses, type GlassSlug } from '#site/state/glass.ts';
import type { PlacedChain } from './placed.ts';

/**
 * The glass of a chain's lenses as far as their surfaces are known, and rays traced exactly through it where it is the chain's only glass. Fetched for such
 * chains alone.
 *
 * Every number of the page is the lens's by its points; its surfaces are drawn where their H falls on the lens's own.
 */
export function glassOf(chain: Chain, { positions, linkOf }: PlacedChain): Pick<SideViewChain, 'glass' | 'glassRays'> {
  const known = linkOf.flatMap((at, part) => {
    const { slug } = chain[at]!.thing;
    return Object.hasOwn(glassLenses, slug) ? [{ part, slug: slug as GlassSlug }] : [];
  });
  const withGlass = known.reduce((all, { part, slug }) => prescribed(all, part, slug), positions);
  const glass = known.flatMap(({ part }) => tried(() => glassPositions(withGlass, part)) ?? []);
  const rays =
    known.length === 1 ? tried(() => glassRays(withGlass, known[0]!.part, { field: 0, count: 5 })) : undefined;
  return { glass, ...(rays && { glassRays: rays }) };
}

/** All that draws glass. */
export const benchGlass = { of: glassOf, drawn: glassOnSheet };

export type BenchGlass = typeof benchGlass;

/** Places with the surfaces of one lens: what stands where stays. */
function prescribed(positions: RigPositions, at: number, slug: GlassSlug): RigPositions {
  const placed = positions.parts[at]!;
  const { prescription } = glassLenses[slug];
  if (placed.part.part !== 'lens' || !prescription) return positions;
  const part = { ...placed.part, lens: { ...placed.part.lens, prescription } };
  return { ...positions, parts: positions.parts.with(at, { ...placed, part }) };
}

/** None where the core says that there is none. */
function tried<Result>(what: () => Result): Result | undefined {
  try {
    return what();
  } catch (error) {
    if (error instanceof ImpossibleChain || error instanceof OutOfRange) return undefined;
    throw error;
  }
}
