import * as v from 'valibot';
import { faultOf } from './fault.ts';
import { kindNames, planOf, type Field, type Kind } from './kinds.ts';
import { acceptedWords, rangeOf } from './field.ts';
import type { Kit, KitPart } from './part.ts';
import { currentVersion, upgraded } from './upgrade.ts';

/** More parts than anybody carries: a file with more is no kit. */
export const mostParts = 300;
const longestName = 80;

/** Printed on one line: no characters that break it or turn it round. */
const words = v.pipe(v.string(), v.maxLength(longestName), v.regex(/^[^\p{Cc}\p{Cf}\u2028\u2029]*$/u));

function valueSchema(field: Field) {
  const { reads } = field;
  if (reads.by === 'text') return words;
  if (reads.by === 'choice') return v.picklist(Object.keys(reads.options));
  const { least, most } = rangeOf(reads);
  const number = v.pipe(v.number(), v.finite(), v.minValue(least), v.maxValue(most));
  if (reads.by === 'count') return v.pipe(number, v.integer());
  return reads.withError
    ? v.union([number, v.strictObject({ value: number, error: v.pipe(v.number(), v.minValue(0), v.maxValue(most)) })])
    : number;
}

function partSchema(kind: Kind) {
  const entries = planOf(kind).fields.map((field) => {
    const schema = valueSchema(field);
    return [field.key, field.needed ? schema : v.optional(schema)];
  });
  return v.strictObject({
    id: v.pipe(v.string(), v.regex(/^[a-z0-9-]{1,40}$/)),
    kind: v.literal(kind),
    name: v.pipe(words, v.minLength(1)),
    ...(Object.fromEntries(entries) as Record<string, v.GenericSchema>),
  });
}

const schemas = new Map(kindNames.map((kind) => [kind as string, partSchema(kind)]));

/** What became of something that may be a kit. */
export type KitReading =
  { readonly kind: 'kit'; readonly kit: Kit } | { readonly kind: 'refused'; readonly message: string };

const refused = (message: string): KitReading => ({ kind: 'refused', message });

/**
 * Reads what JSON holds as a kit: of this version or of an earlier one, which is brought up to date.
 *
 * What is no kit is refused as a whole, in a sentence with the part, the field and what is accepted; nothing is mended in silence.
 */
export function readKit(data: unknown): KitReading {
  if (!isRecord(data) || data['kit'] !== 'ring-and-ruler') return refused('This is no kit of Ring and Ruler.');
  const version = data['version'];
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refused('This kit does not say which version it is of.');
  }
  if (version > currentVersion) {
    return refused(
      'This kit was saved by a later edition of the workbook. Load this page again while there is a network, then open it once more.',
    );
  }
  const now = upgraded(data, version);
  if (!isRecord(now) || !Array.isArray(now['parts'])) return refused('This kit holds no list of parts.');
  const stray = Object.keys(now).find((key) => !['kit', 'version', 'parts'].includes(key));
  if (stray !== undefined) return refused(`This kit says “${shortened(stray)}”, which no kit has.`);
  const { parts } = now;
  if (parts.length > mostParts) return refused(`This kit has ${parts.length} parts. A kit has ${mostParts} at most.`);
  const ids = new Set<string>();
  for (const [index, part] of parts.entries()) {
    const fault = partFault(part);
    if (fault !== undefined) return refused(`Part ${index + 1}${calledOf(part)}: ${fault}`);
    const { id } = part as KitPart;
    if (ids.has(id)) return refused(`Part ${index + 1}${calledOf(part)}: its id “${id}” is another part’s already.`);
    ids.add(id);
  }
  return { kind: 'kit', kit: { kit: 'ring-and-ruler', version: currentVersion, parts: parts as KitPart[] } };
}

/** Whether it is a kit of the present version. */
export const isKit = (data: unknown): data is Kit =>
  isRecord(data) && data['version'] === currentVersion && readKit(data).kind === 'kit';

/** What is wrong with a part, in a sentence; undefined where nothing is. */
function partFault(part: unknown): string | undefined {
  if (!isRecord(part)) return 'it is not written as a part.';
  const kind = part['kind'];
  const schema = typeof kind === 'string' ? schemas.get(kind) : undefined;
  if (!schema) return `its kind is “${shortened(String(kind))}”. There are: ${kindNames.join(', ')}.`;
  const { issues } = v.safeParse(schema, part, { abortEarly: true });
  if (!issues) {
    const fault = faultOf(part as unknown as KitPart);
    return fault && `${fault.message}`;
  }
  const key = String(issues[0].path?.[0]?.key ?? '');
  const field = planOf(kind as Kind).fields.find((one) => one.key === key);
  const isMissing = part[key] === undefined;
  if (field) return `“${field.label}” ${isMissing ? 'is missing. It takes' : 'takes'} ${acceptedWords(field)}.`;
  if (isMissing && key === 'name') return 'it has no name.';
  if (isMissing && key === 'id')
    return 'it has no id, a word of the letters a to z, digits and hyphens that no other part has.';
  if (key === 'name') return `its name takes 1 to ${longestName} letters on one line.`;
  if (key === 'id') return 'its id takes up to 40 of the letters a to z, digits and hyphens.';
  return `it says “${shortened(key)}”, which ${planOf(kind as Kind).one} does not have.`;
}

const calledOf = (part: unknown) =>
  isRecord(part) && typeof part['name'] === 'string' && part['name'] !== '' ? `, “${shortened(part['name'])}”` : '';

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Foreign text is quoted back in part. */
function shortened(text: string): string {
  const letters = Array.from(text.slice(0, 60).replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, ' '));
  return letters.length > 24 ? `${letters.slice(0, 24).join('')}…` : letters.join('');
}
