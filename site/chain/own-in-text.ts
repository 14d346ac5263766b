import { readPlainNumber } from '#core/quantity/plain-number.ts';
import { faultOf } from '#site/kit/fault.ts';
import { acceptedWords, rangeOf } from '#site/kit/field.ts';
import { planOf, type Field } from '#site/kit/kinds.ts';
import type { KitValue, NewPart } from '#site/kit/part.ts';
import { quoted, unescaped, type ReadOwn } from './chain-from-text.ts';
import { thingOf, thingsApart } from './own-thing.ts';
import { chainKinds, isChainKind, type ChainKind } from './thing.ts';

const readThing = (kind: string, index: number, words: readonly string[], say: (what: string) => void) => {
  if (!isChainKind(kind)) {
    say(`there is no such kind of part. It is left out. There are ${chainKinds.map((one) => `my-${one}`).join(', ')}.`);
    return undefined;
  }
  const part = readPart(kind, words, say);
  if (!part) return undefined;
  return thingOf(part, `link-${index}`);
};

/** Reads parts that a link spells out; no words make it throw. */
export const readOwn: ReadOwn = Object.assign(readThing, { apart: thingsApart });

/** What a part of a kit has to say, and one of a link may leave out: then nothing is said that leans on it. */
const spared = ['lens.max-aperture'];

/** The part that a link spells out; undefined, and said why, where it lacks or contradicts something. */
function readPart(kind: ChainKind, words: readonly string[], say: (what: string) => void): NewPart | undefined {
  const { fields, one } = planOf(kind);
  const values: Record<string, KitValue> = {};
  let called = one.replace(/^an? /, '');
  for (const word of words) {
    const [key = '', text] = word.split('=');
    if (text === undefined) continue;
    if (key === 'name') {
      // Nothing that breaks a line or turns it round.
      called =
        unescaped(text)
          .replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, '')
          .trim()
          .slice(0, 80) || called;
      continue;
    }
    const field = fields.find((each) => each.key === key);
    const value = field && readValue(field, text);
    if (!field) say(`${quoted(key)} is nothing that is said of ${one}. It is left out.`);
    else if (value === undefined) say(`${field.label} takes ${acceptedWords(field)}; ${quoted(text)} is left out.`);
    else values[key] = value;
  }
  const missing = fields.filter(
    ({ key, needed }) => needed && values[key] === undefined && !spared.includes(`${kind}.${key}`),
  );
  const part: NewPart = { kind, name: called, ...values };
  if (missing.length > 0) {
    say(`it does not say ${missing.map(({ key }) => key).join(', ')}. It is left out.`);
    return undefined;
  }
  const fault = faultOf(part);
  if (fault) {
    say(`${fault.message} It is left out.`);
    return undefined;
  }
  return part;
}

function readValue({ reads }: Field, text: string): KitValue | undefined {
  if (reads.by === 'text') return unescaped(text).slice(0, 80);
  if (reads.by === 'choice') return Object.hasOwn(reads.options, text) ? text : undefined;
  const [number = '', error] = text.split('~');
  const value = readPlainNumber(number);
  const { least, most } = rangeOf(reads);
  if (value === undefined || value < least || value > most) return undefined;
  if (reads.by === 'count') return Number.isInteger(value) ? value : undefined;
  if (error === undefined) return value;
  const off = readPlainNumber(error);
  return reads.withError && off !== undefined && off >= 0 && off <= most ? { value, error: off } : undefined;
}
