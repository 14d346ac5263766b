import type { Chain, Link } from '#site/chain/chain.ts';

/** The chain with the link at *from* moved to stand at *to*; the camera stays where it is. */
export function withMoved(chain: Chain, from: number, to: number): Chain {
  const place = Math.min(chain.length - 1, Math.max(1, to));
  if (from < 1 || from >= chain.length || place === from) return chain;
  return chain.toSpliced(from, 1).toSpliced(place, 0, chain[from]!);
}

/** The chain without the link at *at*, if that is not its camera. */
export const withoutLink = (chain: Chain, at: number): Chain => (at < 1 ? chain : chain.toSpliced(at, 1));

/** The chain with other settings of one link; undefined lets one of them go back to its usual. */
export function withSet(
  chain: Chain,
  at: number,
  set: { readonly [Key in Exclude<keyof Link, 'thing'>]?: Link[Key] | undefined },
): Chain {
  const all = { ...chain[at]!, ...set };
  const said = Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined && value !== false));
  return chain.with(at, said as unknown as Link);
}

/** The chain with its lens at *at* turned round; how it was focused means nothing the other way round. */
export const withTurned = (chain: Chain, at: number): Chain =>
  withSet(chain, at, { turned: !chain[at]!.turned, focus: undefined });
