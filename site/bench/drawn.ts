import { printQuantity } from '#core/quantity/print.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { rigSpans } from '#core/rig/spans.ts';
import type { Chain } from '#site/chain/chain.ts';
import type { SideViewShown } from '#site/figures/side-view/shown.ts';
import type { SideViewChain } from '#site/figures/side-view/side-view.ts';
import { measuresOf, type PlacedChain } from './placed.ts';
import { shortName } from './short-names.ts';

/** A chain that stands in a figure. */
export interface Drawn {
  readonly chain: Chain;
  readonly placed: PlacedChain;
}

/** The most important first. */
const dimensioned = [
  'working-distance',
  'focus-distance',
  'extension',
  'entrance-pupil-distance',
] as const satisfies readonly QuantityName[];

/** What a reader can have drawn besides bodies, sensor and sharp plane, by the name that an address has for it. */
export const layers = {
  rays: 'marginal and chief rays',
  planes: 'principal planes',
  foci: 'focal points',
  pupils: 'pupils',
} as const;

export type Layer = keyof typeof layers;

export const usualLayers: readonly Layer[] = ['rays', 'planes', 'pupils'];

/** What the side view is to show of them. */
export function shownOf(chosen: readonly Layer[]): SideViewShown {
  const has = (layer: Layer) => chosen.includes(layer);
  return {
    ...(has('rays') && { rays: ['cone', 'chief'] }),
    ...(has('planes') && { planes: 'rig' }),
    foci: has('foci'),
    pupils: has('pupils'),
  };
}

const isSpacer = (chain: Chain, linkOf: readonly number[], part: number) =>
  ['ring', 'bellows', 'reversing-ring', 'coupling-ring'].includes(chain[linkOf[part] ?? 0]!.thing.kind);

/** A chain as the side view takes it: named, and dimensioned with the numbers that the page prints. */
export function drawnChain({ chain, placed }: Drawn): SideViewChain {
  const { positions, linkOf } = placed;
  const spans = rigSpans(positions);
  const dimensions = dimensioned.flatMap((name) => {
    const span = spans[name];
    const value = span && span[1] - span[0];
    if (value === undefined || !(value > 0)) return [];
    // The seat of a close-up lens is no ring that somebody put there.
    if (
      name === 'extension' &&
      !isSpacer(
        chain,
        linkOf,
        positions.parts.findIndex(({ from }, part) => part > 0 && from === span![0]),
      )
    )
      return [];
    return [{ name, value: printQuantity(name, value) }];
  });
  // A link of two parts is named at the second: the glass, not its seat.
  const labels = linkOf.map((at, part) => (linkOf[part + 1] === at ? '' : shortName(chain[at]!)));
  const width = measuresOf(placed)['field-width'];
  return {
    positions,
    dimensions,
    labels,
    ...(width !== undefined && { field: `${printQuantity('field-width', width)} wide` }),
  };
}
