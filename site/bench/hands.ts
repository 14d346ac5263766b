import { sideViewLayout, type SideViewPlan } from '#site/figures/side-view/layout.ts';
import type { Chain } from '#site/chain/chain.ts';
import { withMoved, withoutLink, withTurned } from './change.ts';
import type { Drawn } from './drawn.ts';
import { focusedTo } from './focus-by-hand.ts';

/* What hands do in the figure of the bench, fetched once that is drawn. */

/** The chains under the hand, and who is told what becomes of them. */
export interface UnderHand {
  readonly chains: readonly Drawn[];
  /** Whether a chain can be built: what cannot is no place to be dragged to. */
  readonly canBe: (chain: Chain) => boolean;
  readonly change: (which: number, chain: Chain, words?: string) => void;
  readonly say: (words: string) => void;
}

/** Which chain, and where in it. */
export interface PlaceInChain {
  readonly which: number;
  readonly at: number;
}

/** So far from its place, pixels, a part is pulled off the chain. */
const away = 110;

/** Focuses a chain on where its sharp plane has been pulled. */
export function focus(
  { chains, change }: UnderHand,
  which: number,
  name: 'focus-distance' | 'working-distance',
  value: number,
) {
  const focused = focusedTo(chains[which]!.chain, name, value);
  if (focused) change(which, focused);
}

/** Puts the link at *from* where it stands *to* links from the camera, if that can be. */
export function put({ chains, canBe, change }: UnderHand, which: number, from: number, to: number) {
  if (to === from) return;
  const moved = withMoved(chains[which]!.chain, from, to);
  if (canBe(moved)) change(which, moved);
}

/** Puts a link where its rear end has been dragged to, mm from the sensor: before all whose middle is nearer to it. */
export function move(under: UnderHand, which: number, at: number, now: number) {
  const { chain, placed } = under.chains[which]!;
  const { linkOf, positions } = placed;
  const places = chain.map((_, link) => {
    const own = positions.parts.filter((_, part) => linkOf[part] === link);
    return { from: own[0]!.from, to: own.at(-1)!.to };
  });
  // Of a thing of two parts the foremost is taken hold of.
  const { from, to } = positions.parts[linkOf.lastIndexOf(at)]!;
  const middle = now + (to - from) / 2;
  const before = places.filter((other, link) => link > 0 && link !== at && (other.from + other.to) / 2 < middle);
  put(under, which, at, before.length + 1);
}

/** Takes a link off that has been let go far from its place, and says so while it is held there. */
export function pull({ chains, change, say }: UnderHand, which: number, at: number, by: number, isHeld: boolean) {
  const { chain } = chains[which]!;
  const { name } = chain[at]!.thing;
  const isAway = Math.abs(by) > away;
  if (isHeld) say(isAway ? `Let go, and ${name} is off the chain.` : '');
  else if (isAway) change(which, withoutLink(chain, at), `${name} is off the chain.`);
}

/** Turns a lens round. */
export function turn({ chains, change }: UnderHand, which: number, at: number) {
  const { chain } = chains[which]!;
  const { thing, turned } = chain[at]!;
  const words = turned ? `${thing.name} is the right way round again.` : `${thing.name} is turned round.`;
  change(which, withTurned(chain, at), words);
}

/** Where in which chain something is put that is let go at (*x*, *y*) on the sheet, pixels: before what stands nearer to the subject there. */
export function placeAt(chains: readonly Drawn[], plan: SideViewPlan, x: number, y: number): PlaceInChain {
  const { chains: laidOut } = sideViewLayout(plan);
  const heights = laidOut.map(({ place }) => Math.abs(place.axisY - y));
  const which = heights.indexOf(Math.min(...heights));
  const { chain, placed } = chains[which]!;
  const before = chain.filter((_, at) => {
    const { left, right } = laidOut[which]!.outlines[placed.linkOf.lastIndexOf(at)]!;
    return at > 0 && (left + right) / 2 > x;
  });
  return { which, at: before.length + 1 };
}
