import { expectedWords } from '#core/quantity/expected.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { readQuantity } from '#core/quantity/read.ts';
import { quantityOf } from '#core/quantity/vocabulary.ts';
import type { Field, Reads } from './kinds.ts';
import type { KitValue } from './part.ts';

/** The range in which a field's number is accepted, base unit. */
export function rangeOf(reads: Extract<Reads, { by: 'quantity' | 'count' }>): { least: number; most: number } {
  if (reads.by === 'count') return reads;
  const { least, most } = quantityOf(reads.as);
  return { least: reads.least ?? least, most: reads.most ?? most };
}

/** What a field takes, in words: `a length from 4 mm to 800 mm, for example 50 mm`. */
export function acceptedWords({ reads }: Field): string {
  if (reads.by === 'text') return 'up to 80 letters on one line';
  if (reads.by === 'choice') return Object.values(reads.options).join(', or ');
  if (reads.by === 'count') return `a whole number from ${reads.least} to ${reads.most}, for example 6000`;
  return expectedWords(reads.as, rangeOf(reads), reads.example);
}

/** What became of something typed into a field. */
export type FieldReading =
  | { readonly kind: 'blank' }
  | { readonly kind: 'value'; readonly value: KitValue }
  | { readonly kind: 'refused'; readonly message: string };

const withError = /^(?<value>.*?)(?:±|\+\/-|\+-)(?<error>.*)$/;

/** Reads what was typed into a field: `50`, `0.45 m`, `1:2`, `49.4 ± 0.3 mm` where errors are known. A blank is said to be missing where it is needed. */
export function readField(field: Field, text: string): FieldReading {
  const { reads, label } = field;
  const tidy = text.replace(/\s+/g, ' ').trim();
  const refused = (why: string): FieldReading => ({
    kind: 'refused',
    message: `${why} ${label} takes ${acceptedWords(field)}.`,
  });
  if (tidy === '') return field.needed ? refused('This is needed.') : { kind: 'blank' };
  if (reads.by === 'text') {
    return tidy.length <= 80 ? { kind: 'value', value: tidy } : refused('That is too long.');
  }
  if (reads.by === 'choice') return Object.hasOwn(reads.options, tidy) ? { kind: 'value', value: tidy } : refused('');
  if (reads.by === 'count') {
    // Of 6000 × 4000 it is the first that is asked for.
    const count = Number(/^(\d{1,7})(?: ?[x×] ?\d{1,7})?$/i.exec(tidy)?.[1] ?? NaN);
    return count >= reads.least && count <= reads.most ? { kind: 'value', value: count } : refused(quoted(tidy));
  }
  const asked = engravedOf(field.key, reads.as === 'rim-diameter' ? tidy.replace(/^[⌀Øø∅] ?/, '') : tidy);
  const { value = asked, error } = reads.withError ? (withError.exec(asked)?.groups ?? {}) : {};
  const found = readQuantity(reads.as, error === undefined ? asked : withUnit(value, error), rangeOf(reads));
  if (found.kind === 'blank') return refused(quoted(tidy));
  if (found.kind !== 'value') {
    if (/^f?\/?\d+(?:[.,]\d+)? ?[-–] ?\d+(?:[.,]\d+)?(?: ?mm)?$/.test(tidy))
      return refused(`${quoted(tidy)} It is a range: enter a zoom twice, once for each of its ends.`);
    const metres = /^\d*[.,]?\d+$/.test(tidy) ? 1000 * Number(tidy.replace(',', '.')) : NaN;
    const { least, most } = rangeOf(reads);
    if (quantityOf(reads.as).base === 'mm' && metres >= least && metres <= most)
      return refused(`${quoted(tidy)} Did you mean ${tidy} m? Then write the m.`);
  }
  // The quantity has a name of its own; here it goes by the field's.
  if (found.kind !== 'value')
    return refused(found.message.slice(0, found.message.indexOf('.', found.message.lastIndexOf('”')) + 1));
  if (error === undefined) return { kind: 'value', value: found.value };
  const off = readQuantity(reads.as, error, { least: 0, most: rangeOf(reads).most });
  return off.kind === 'value'
    ? { kind: 'value', value: { value: found.value, error: off.value } }
    : refused(`${quoted(error.trim())} is no error.`);
}

/** What a field asks for of a line of an objective's barrel: of `4×/0.10` the magnification or NA, of `160/0.17` the tube. */
function engravedOf(key: string, text: string): string {
  const [, before, behind] = /^([\d.,]+ ?[x×]?|[\d.,]+ ?mm) ?\/ ?([\d.,]+|-|–)$/i.exec(text) ?? [];
  if (before === undefined) return text;
  if (key === 'numerical-aperture') return behind!;
  return key === 'objective-magnification' || key === 'tube-length' ? before : text;
}

const quoted = (text: string) => `“${text.slice(0, 24)}${text.length > 24 ? '…' : ''}” cannot be used.`;

/** `49.4 ± 0.3 mm`: the unit behind the error is that of both. */
function withUnit(value: string, error: string): string {
  return /[^\d.,\s-]/.test(value) ? value : `${value} ${error.replace(/^[\s\d.,]+/, '')}`;
}

/** A field's value as text, to be read by people: `49.4 mm`, `49.4 ± 0.3 mm`. */
export function printField({ reads }: Field, value: KitValue, figures = 3): string {
  if (reads.by === 'choice') return reads.options[String(value)] ?? '';
  if (typeof value === 'string' || reads.by !== 'quantity') return String(value);
  const print = (number: number) => printQuantity(reads.as, number, { figures, exact: figures > 3 });
  if (typeof value === 'number') return print(value);
  return `${print(value.value)} ± ${print(value.error)}`;
}

/** A field's value as text to be typed over: what is read back from it is the value. */
export const typedField = (field: Field, value: KitValue): string =>
  field.reads.by === 'choice' ? String(value) : printField(field, value, 12);
