import { plainNumber } from '#core/quantity/plain-number.ts';
import type { KitValue } from '#site/kit/part.ts';
import type { Chain, Link } from './chain.ts';
import type { Thing } from './thing.ts';

/*
 * A chain as a short text, for addresses: `body-36,ring-24,lens-50:f11:m0.1`. Parts from the camera outwards, each with its settings: `turned`,
 * `far` or `m0.1` for the focus, `f11` for the f-number, `e80` for the draw of bellows. A part of a reader's own is its kind with everything that is said
 * of it: `my-ring:name=thick_ring:extension=13:contacts=no`.
 * `chain-from-text.ts` reads it.
 */

/** Before the kind of a part that is spelled out. */
export const own = 'my-';

/** The chain as a text; `readChain` reads it back, without a kit at hand. */
export function textOfChain(chain: Chain): string {
  return chain.map(linkText).join(',');
}

/** Whether two things are one: what a link spells out is the part of the kit that says the same. */
export const isSameThing = (one: Thing, other: Thing): boolean =>
  one.slug === other.slug || (one.isOwn && other.isOwn && ownText(one) === ownText(other));

/** The same as the value of a query's parameter: the separators stay as they are, for an address should be read. */
export function addressOfChain(chain: Chain): string {
  return encodeURIComponent(textOfChain(chain)).replaceAll('%2C', ',').replaceAll('%3A', ':').replaceAll('%3D', '=');
}

function linkText({ thing, turned, focus, fNumber, extension }: Link): string {
  const set = [
    ...(turned ? ['turned'] : []),
    ...(focus === undefined ? [] : [focus === 0 ? 'far' : `m${plainNumber(focus)}`]),
    ...(fNumber === undefined ? [] : [`f${plainNumber(fNumber)}`]),
    ...(extension === undefined ? [] : [`e${plainNumber(extension)}`]),
  ];
  return [thing.isOwn ? ownText(thing) : thing.slug, ...set].join(':');
}

function ownText({ kind, part }: Thing): string {
  const said = Object.entries(part).flatMap(([key, value]) =>
    value === undefined || ['id', 'kind', 'name'].includes(key) ? [] : [`${key}=${valueText(value)}`],
  );
  return [`${own}${kind}`, `name=${escaped(part.name)}`, ...said].join(':');
}

function valueText(value: KitValue): string {
  if (typeof value === 'number') return plainNumber(value);
  return typeof value === 'string' ? escaped(value) : `${plainNumber(value.value)}~${plainNumber(value.error)}`;
}

/** Without the characters that mean something here; a space of any width is an underscore. */
const escaped = (words: string) =>
  words.replace(/[!,:=_~]/g, (letter) => `!${letter.charCodeAt(0).toString(16)}`).replace(/[ \u00a0\u202f]/g, '_');
