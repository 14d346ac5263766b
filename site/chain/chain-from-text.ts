import { readPlainNumber } from '#core/quantity/plain-number.ts';
import { printQuantity } from '#core/quantity/print.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { closestMagnification } from '#core/rig/lens-in-use.ts';
import { own } from './chain-in-text.ts';
import { drawReach, firstChain, fNumbersOf, mostLinks, type Chain, type Link } from './chain.ts';
import { crateThings } from './crate-things.ts';
import type { Thing } from './thing.ts';

/** What was read, and in sentences what could not be used. */
export interface ChainReading {
  readonly chain: Chain;
  readonly notices: readonly string[];
}

/** Longer texts are no chain. */
export const longestChain = 6000;

/** Words of a part as they were before they were put into a text. */
export const unescaped = (text: string) =>
  text.replaceAll('_', ' ').replace(/!([0-9a-f]{2})/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)));

/** Foreign text is quoted back in part. */
export const quoted = (text: string) => `“${text.length > 30 ? `${text.slice(0, 30)}…` : text}”`;

/** What reads a reader's own parts. */
export interface ReadOwn {
  /** Makes a thing of what a link spells out: its kind, and words such as `extension=13`; undefined, and said why, where it cannot. */
  (kind: string, index: number, words: readonly string[], say: (what: string) => void): Thing | undefined;
  /** The things of a chain, each of one's own with a name that no other has. */
  readonly apart: (things: readonly Thing[]) => readonly Thing[];
}

/** Whether a text spells out parts of a reader's own: only then has anybody to read them. */
export const spellsOut = (text: string) => text.includes(own);

/**
 * Reads a chain from a text. No text makes it throw: what cannot be used is left out and named, with what is accepted, and the rest is kept.
 *
 * @param readOwn reads parts that are spelled out; without it they are left out
 * @returns a chain that begins with its one camera; that it can be built is for the engine to say
 */
export function readChainBy(text: string, readOwn: ReadOwn | undefined): ChainReading {
  const notices: string[] = [];
  if (text.length > longestChain) {
    return { chain: firstChain(), notices: ['The link’s chain is longer than any chain. The usual one is shown.'] };
  }
  const links: Link[] = [];
  for (const [index, piece] of text.split(',').entries()) {
    if (piece.trim() === '') continue;
    if (links.length === mostLinks) {
      notices.push(`A chain has ${mostLinks} parts at most; the link’s others are left out.`);
      break;
    }
    const link = readLink(piece, index, notices, readOwn);
    if (link) links.push(link);
  }
  const cameras = links.filter(({ thing }) => thing.kind === 'camera');
  if (cameras.length > 1) notices.push(`A chain has one camera: ${cameras[0]!.thing.name} is kept.`);
  if (cameras.length === 0) notices.push('The link names no camera: the crate’s first is taken.');
  const camera = cameras[0] ?? firstChain()[0]!;
  const chain = [camera, ...links.filter(({ thing }) => thing.kind !== 'camera')].slice(0, mostLinks);
  const things = readOwn?.apart(chain.map(({ thing }) => thing));
  return { chain: things ? chain.map((link, at) => ({ ...link, thing: things[at]! })) : chain, notices };
}

function readLink(piece: string, index: number, notices: string[], readOwn: ReadOwn | undefined): Link | undefined {
  const [name = '', ...words] = piece.split(':');
  const say = (what: string) => void notices.push(`Part ${index + 1} of the link, ${quoted(name)}: ${what}`);
  const thing = name.startsWith(own) ? readOwn?.(name.slice(own.length), index, words, say) : crateThings.get(name);
  if (!thing) {
    if (!name.startsWith(own)) {
      say(`the crate has nothing of that name. It is left out. The crate has ${[...crateThings.keys()].join(', ')}.`);
    }
    return undefined;
  }
  let link: Link = { thing };
  for (const word of words.filter((one) => !one.includes('='))) {
    const set = readSetting(thing, word);
    if (typeof set === 'string') say(set);
    else link = { ...link, ...set };
  }
  return withinReach(link, say);
}

/** The link with what its thing does not reach set as near as it goes, and said so. */
function withinReach(link: Link, say: (what: string) => void): Link {
  const { thing } = link;
  const reached = { ...link };
  for (const { key, least, most, print } of reachesOf(thing)) {
    const wanted = link[key];
    if (wanted === undefined) continue;
    const near = Math.min(most, Math.max(least, wanted));
    if (print(near) === print(wanted)) continue;
    const goes = least === 0 ? `up to ${print(most)}` : `from ${print(least)} to ${print(most)}`;
    say(`it goes ${goes}, so ${print(wanted)} is taken as ${print(near)}.`);
    reached[key] = near;
  }
  return reached;
}

interface Reach {
  readonly key: 'focus' | 'fNumber' | 'extension';
  readonly least: number;
  readonly most: number;
  readonly print: (value: number) => string;
}

/** Between what the settings of a thing go. */
function reachesOf(thing: Thing): readonly Reach[] {
  const { kind, lenses } = thing;
  const printed = (name: QuantityName) => (value: number) => printQuantity(name, value);
  if (kind === 'bellows') {
    return [{ key: 'extension', ...drawReach(thing), print: printed('extension') }];
  }
  if (kind !== 'lens') return [];
  const iris: Reach = { key: 'fNumber', ...fNumbersOf(thing), print: printed('f-number') };
  if (!lenses) return [iris];
  const most = closestMagnification(lenses.usual);
  return [iris, { key: 'focus', least: 0, most, print: printed('magnification') }];
}

/** What a word sets of a thing, or a sentence why it sets nothing. */
function readSetting({ kind, name }: Thing, word: string): Omit<Link, 'thing'> | string {
  const left = `${quoted(word)} is no setting of ${name}. It is left out.`;
  if (kind === 'lens' && word === 'turned') return { turned: true };
  if (kind === 'lens' && word === 'far') return { focus: 0 };
  const value = readPlainNumber(word.slice(1));
  if (value === undefined) return left;
  if (kind === 'lens' && word.startsWith('m') && value >= 0 && value <= 5) return { focus: value };
  if (kind === 'lens' && word.startsWith('f') && value >= 0.5 && value <= 128) return { fNumber: value };
  if (kind === 'bellows' && word.startsWith('e') && value > 0 && value <= 1000) return { extension: value };
  return left;
}
