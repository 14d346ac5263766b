import { printQuantity } from '#core/quantity/print.ts';
import { numberIn, wordsIn } from '#site/kit/part.ts';
import { drawOf, mainLensAt, type Chain, type Link } from './chain.ts';
import type { ChainKind, Thing } from './thing.ts';

/** A lens on a camera of another register than it is made for. */
export interface OtherRegister {
  /** Link of the lens. */
  readonly at: number;
  /** '' where the adapter is there. */
  readonly words: string;
  /** What brings it to where it focuses as marked, and at which place; nothing where there is such a thing, or can be none. */
  readonly adapter?: { readonly thing: Thing; readonly at: number };
}

/** Registers that differ less are taken for one, mm: a mount is made to some hundredths, a ruler reads to tenths. */
const alike = 0.1;

const behindLens: readonly ChainKind[] = ['camera', 'ring', 'bellows', 'converter'];

/**
 * The lens next to the camera where it is made for another register than the camera has, and what follows: one for a longer register needs an adapter of
 * the difference, one for a shorter cannot focus far. Undefined where both agree, and where the lens is turned round.
 *
 * Source: an adapter without glass is as long as the difference of the registers, common practice.
 */
export function otherRegister(chain: Chain): OtherRegister | undefined {
  const at = mainLensAt(chain);
  const link = chain[at];
  if (!link?.thing.lenses || link.turned) return undefined;
  const behind = chain.slice(0, at);
  if (behind.some(({ thing }) => !behindLens.includes(thing.kind))) return undefined;
  const made = link.thing.lenses.usual.registerDistance;
  const register = numberIn(chain[0]!.thing.part, 'register-distance')!;
  const lacking = made - register;
  if (Math.abs(lacking) < alike) return undefined;
  const [own, there] = [made, register].map(length);
  const { name } = link.thing;
  if (lacking < 0) {
    return {
      at,
      words: `${name} is made for a register of ${own}, and this camera has ${there}: it stands ${length(-lacking)} too far out, as if on a ring, and cannot focus far. No adapter without glass brings it nearer.`,
    };
  }
  // What is behind a converter does not bring nearer what is in front of it.
  const first = behind.findLastIndex(({ thing }) => thing.kind === 'converter') + 1 || 1;
  const between = behind.slice(first);
  if (between.some(({ thing }) => isAdapter(thing, lacking))) return { at, words: '' };
  const left = between.reduce((sum, one) => sum + lengthOf(one), 0) - lacking;
  const begins = `${name} is made for a register of ${own}`;
  const adapter = { thing: adapterOf(lacking, link.thing), at: first };
  if (left < -alike) {
    const needs = `needs an adapter of ${length(lacking)}: now it stands ${length(-left)} too near the sensor.`;
    return { at, words: `${begins}. On this camera, which has ${there}, it ${needs}`, adapter };
  }
  const closer = left < alike ? 'Nothing is left to bring it closer' : `${length(left)} are left to bring it closer`;
  return {
    at,
    words: `${begins}, and this camera has ${there}: ${length(lacking)} of what is between them are no more than the adapter that it needs. ${closer}.`,
    adapter,
  };
}

const length = (value: number) => printQuantity('extension', value);

const lengthOf = (link: Link) =>
  link.thing.kind === 'bellows' ? drawOf(link) : (numberIn(link.thing.part, 'extension') ?? 0);

/** A ring of a reader's own that is as long as the registers differ. */
const isAdapter = ({ kind, isOwn, part }: Thing, lacking: number) =>
  kind === 'ring' && isOwn && Math.abs(numberIn(part, 'extension')! - lacking) < alike;

/** An adapter so long for such a lens, spelled out as an address does it. */
function adapterOf(lacking: number, { part: lens }: Thing): Thing {
  const extension = Number(lacking.toFixed(2));
  const name = `${length(extension)} adapter`;
  const contacts = wordsIn(lens, 'iris') === 'lens' ? 'no' : 'yes';
  return {
    slug: `adapter-${extension}`,
    kind: 'ring',
    name,
    part: { kind: 'ring', name, extension, contacts },
    isOwn: true,
  };
}
