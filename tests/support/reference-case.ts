/**
 * One outside check as data: what a source prints for what inputs, and how far the core may lie from it.
 *
 * A value is a bare number where it has no unit, or the source's own text with its unit (`"5.08 cm"`), which is read
 * into base units before the core sees it.
 */
import { isPrintedQuantity, readPrinted, type Printed } from './printed.ts';

export const kinds = [
  'published',
  'derived-from-published-formula',
  'published-inputs computed-outputs',
  'run-here',
  'library',
  'common practice',
] as const;

export type Kind = (typeof kinds)[number];

/** A margin in the unit that the expected value is printed in, or relative to the expected value. */
export type Margin = number | { readonly relative: number };

export type PrintedValue = number | string;

export interface ReferenceCase {
  readonly id: string;
  readonly title: string;
  readonly kind: Kind;
  /** Whether the source's words were read when the row was made, or its value remembered. */
  readonly sourceText: 'read' | 'from memory';
  /** Work, edition or version, place in it, as one cites it to a reader; `none` for common practice. */
  readonly source: string;
  /** Where exactly it was found: repository and file, element, or the copy that was read. Not for readers of the page. */
  readonly locator?: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: Readonly<Record<string, PrintedValue | readonly PrintedValue[]>>;
  readonly tolerance: Margin | Readonly<Record<string, Margin>>;
  /** Why the tolerance is what it is. */
  readonly because: string;
  readonly note?: string;
}

/** What the core makes of a case: the keys of `expected`, numbers in base units. */
export type Answer = Readonly<Record<string, number | readonly number[]>>;

/** The inputs of one case in base units, as the functions of an `ours.ts` declare them. */
export type Ours = (inputs: never, id: string) => Answer;

/** An `ours` that answers each id by a function of its own. Throws for an id that has none. */
export function oursById(routes: Readonly<Record<string, (given: never) => Answer>>): Ours {
  return (given, id) => {
    const route = routes[id];
    if (!route) throw new Error(`ours.ts has no answer to ${id}`);
    return route(given);
  };
}

/** The cases of one `cases.json`, or an error that says which row lacks what. */
export function readCases(json: unknown, file = 'cases.json'): readonly ReferenceCase[] {
  if (!Array.isArray(json) || json.length === 0) throw new Error(`${file}: expected a list of at least one case`);
  for (const [index, row] of (json as Partial<ReferenceCase>[]).entries()) {
    const wrong = faultOf(row);
    if (wrong) throw new Error(`${file}, row ${index + 1} (${row.id ?? 'no id'}): ${wrong}`);
  }
  return json as ReferenceCase[];
}

function faultOf(row: Partial<ReferenceCase>): string | undefined {
  for (const field of ['id', 'title', 'source', 'because'] as const) {
    if (typeof row[field] !== 'string' || row[field].trim() === '')
      return `'${field}' must be a text that says something`;
  }
  if (!kinds.includes(row.kind as Kind)) return `'kind' is ${String(row.kind)}; accepted: ${kinds.join(', ')}`;
  if (row.sourceText !== 'read' && row.sourceText !== 'from memory')
    return "'sourceText' must be 'read' or 'from memory'";
  if (typeof row.inputs !== 'object') return "'inputs' must be an object, empty where there are none";
  if (Object.keys(row.expected ?? {}).length === 0) return "'expected' must hold at least one value";
  for (const [key, value] of Object.entries(row.expected ?? {})) {
    const values = Array.isArray(value) ? (value as unknown[]) : [value];
    if (values.length === 0) return `'expected.${key}' is an empty list`;
    if (!values.every(isPrintedQuantity)) return `'expected.${key}' must be numbers or texts like "5.08 cm"`;
    if (marginOf(row as ReferenceCase, key) === undefined) return `'tolerance' says nothing about '${key}'`;
  }
  return undefined;
}

/** The margin that a case allows for one of its expected values. */
export function marginOf({ tolerance }: ReferenceCase, key: string): Margin | undefined {
  const margin = isMargin(tolerance) ? tolerance : tolerance[key];
  return isMargin(margin) ? margin : undefined;
}

function isMargin(value: unknown): value is Margin {
  const size = typeof value === 'object' && value !== null ? (value as { relative?: unknown }).relative : value;
  return typeof size === 'number' && size >= 0 && size < Infinity;
}

/** A case's inputs with every `"3.0 m"` read into base units; what is no printed quantity stays as it is. */
export function inputsInBaseUnits(inputs: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const read = (value: unknown): unknown =>
    Array.isArray(value) ? value.map(read) : isPrintedQuantity(value) ? readPrinted(value).base : value;
  return Object.fromEntries(Object.entries(inputs).map(([key, value]) => [key, read(value)]));
}

/** One expected number beside ours, both in the unit that the source prints. */
export interface Comparison {
  /** The key of `expected`, with the place in its list where it holds a list: `imageDistance[2]`. */
  readonly label: string;
  readonly unit: Printed['unit'];
  readonly expected: number;
  readonly ours: number;
  /** How far they may lie apart. */
  readonly allowed: number;
}

/** Pairs every expected number of a case with ours. Throws where a key is missing or extra, or lists differ in length. */
export function compare(row: ReferenceCase, ours: Ours): readonly Comparison[] {
  const answer = ours(inputsInBaseUnits(row.inputs) as never, row.id);
  const wanted = Object.keys(row.expected).sort().join(', ');
  const got = Object.keys(answer).sort().join(', ');
  if (wanted !== got) throw new Error(`${row.id} expects {${wanted}} but ours gives {${got}}`);

  return Object.entries(row.expected).flatMap(([key, value]) => {
    const theirs = [value].flat() as PrintedValue[];
    const mine = [answer[key] as number | readonly number[]].flat();
    if (theirs.length !== mine.length)
      throw new Error(`${row.id}.${key}: ${theirs.length} expected, ${mine.length} ours`);
    return theirs.map((text, index): Comparison => {
      const { number: expected, unit, worth } = readPrinted(text);
      const margin = marginOf(row, key) as Margin;
      return {
        label: Array.isArray(value) ? `${key}[${index}]` : key,
        unit,
        expected,
        ours: (mine[index] as number) / worth,
        allowed: allowedAround(expected, margin),
      };
    });
  });
}

/** The margin as a number; none around infinity, where every finite number is infinitely far off. */
function allowedAround(expected: number, margin: Margin): number {
  if (!Number.isFinite(expected)) return 0;
  return typeof margin === 'number' ? margin : margin.relative * Math.abs(expected);
}
