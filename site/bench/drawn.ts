import { printQuantity } from '#core/quantity/print.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { rigSpans, type AxialSpan } from '#core/rig/spans.ts';
import type { Chain } from '#site/chain/chain.ts';
import type { ChainKind } from '#site/chain/thing.ts';
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

const spacers: readonly ChainKind[] = ['ring', 'bellows', 'reversing-ring', 'coupling-ring'];

/** Whether a run of rings begins with one that somebody put there, no seat of a close-up lens, and is all that is added: else *e* would be another number there than elsewhere. */
function isAllAdded(chain: Chain, { positions: { parts }, linkOf }: PlacedChain, [start, end]: AxialSpan): boolean {
  const kindOf = (part: number) => chain[linkOf[part] ?? 0]!.thing.kind;
  const begins = parts.findIndex(({ from }, part) => part > 0 && from === start);
  const goesOn = parts.some(({ from }, part) => from >= end && (kindOf(part) === 'ring' || kindOf(part) === 'bellows'));
  return spacers.includes(kindOf(begins)) && !goesOn;
}

/** A chain as the side view takes it: named, and dimensioned with the numbers that the page prints. */
export function drawnChain({ chain, placed }: Drawn): SideViewChain {
  const { positions, linkOf } = placed;
  const spans = rigSpans(positions);
  const dimensions = dimensioned.flatMap((name) => {
    const span = spans[name];
    const value = span && span[1] - span[0];
    if (value === undefined || !(value > 0)) return [];
    if (name === 'extension' && !isAllAdded(chain, placed, span!)) return [];
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
