import { OutOfRange } from '#core/quantity/errors.ts';
import { expectedWords, type Range } from '#core/quantity/expected.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { readQuantity } from '#core/quantity/read.ts';
import { solveFor, type Solvable } from '#core/quantity/solve.ts';
import { NoRoot } from '#core/quantity/solve-refusals.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import { refusalInWords } from '#site/state/answer.ts';

/** Values that answer: one, or a whole stretch of them, ends included. */
export interface Found extends Range {
  /** As it is printed, with its unit; of a stretch, its two ends. */
  readonly text: string;
}

/** What a formula says of the letter asked for: every answer there is, from small to large, or in a sentence why there is none. */
export type SheetAnswer =
  | { readonly kind: 'found'; readonly found: readonly Found[]; readonly more: string }
  | { readonly kind: 'none'; readonly why: string };

type Values = Readonly<Record<string, number | undefined>>;

/** Solves *formula* for the letter *ask*, the others as *given*, base units. */
export function sheetAnswer(formula: Solvable, ask: QuantityName, given: Values): SheetAnswer {
  const isComputed = ask === formula.gives;
  const letters = [formula.gives, ...formula.from].filter((name) => name !== ask);
  const missing = letters.filter((name) => given[name] === undefined);
  if (missing.length > 0) return { kind: 'none', why: missingWords(missing) };
  try {
    const others = Object.fromEntries(letters.map((name) => [name, given[name]]));
    const { roots, spans } = solveFor(formula, { ask, given: others as Record<string, number> });
    const found = [
      ...roots.map(({ value }) => ({ least: value, most: value, text: printedExactly(ask, value) })),
      ...spans.map(({ from, to }) => ({ least: from, most: to, text: spanText(ask, { least: from, most: to }) })),
    ].sort((one, other) => one.least - other.least);
    const more = isComputed ? '' : moreWords(formula, ask, found, given as Readonly<Record<string, number>>);
    return { kind: 'found', found, more };
  } catch (error) {
    if (error instanceof NoRoot) return { kind: 'none', why: `${atStart(error.words)}. ${lookedWords(ask)}` };
    if (error instanceof OutOfRange) return { kind: 'none', why: refusalInWords(error) };
    throw error;
  }
}

/** Whether a whole number alone makes sense of it; ISO is printed whole and is anything. */
const isCounted = (name: QuantityName) => quantityOf(name).writing === 'whole' && quantityOf(name).name !== 'ISO';

/** A count that comes out between two whole numbers is printed as it is. */
function printedExactly(name: QuantityName, value: number): string {
  if (isCounted(name) && Number.isFinite(value) && !Number.isInteger(value)) {
    return printQuantity(name, value, { figures: 5 });
  }
  const exact = printQuantity(name, value, { exact: true });
  const marked = printQuantity(name, value);
  return marked === exact ? exact : `${exact} (marked ${marked})`;
}

/** A stretch of values, its ends printed so that both belong to it. */
function spanText(name: QuantityName, span: Range): string {
  return `from ${endText(name, span.least, span)} to ${endText(name, span.most, span)}`;
}

function endText(name: QuantityName, end: number, { least, most }: Range): string {
  for (let figures = 3; figures < 9; figures++) {
    const text = printQuantity(name, end, { exact: true, figures });
    const read = readQuantity(name, text);
    if (read.kind === 'value' && read.value >= least && read.value <= most) return text;
  }
  return printQuantity(name, end, { exact: true, figures: 9 });
}

/** What is to be said besides: several answers, a count that is none, and where the sheet has looked. */
function moreWords(
  formula: Solvable,
  ask: QuantityName,
  found: readonly Found[],
  given: Readonly<Record<string, number>>,
): string {
  const { least, most } = quantityOf(ask);
  const said: string[] = [];
  const [first] = found;
  if (found.length === 1 && first!.least <= least && first!.most >= most) {
    said.push('It makes no difference to the answer given.');
  } else if (found.some((one) => one.least < one.most)) {
    said.push(`Any ${quantityOf(ask).name} in between does as well; the middle one is put in below.`);
  }
  if (found.length > 1) said.push(`${atStart(countWords[found.length] ?? `${found.length}`)} answers fit.`);
  for (const { least: value } of found) {
    if (isCounted(ask) && !Number.isInteger(value)) said.push(neighbourWords(formula, ask, value, given));
  }
  return [...said, lookedWords(ask)].join(' ');
}

const countWords: Readonly<Record<number, string>> = { 2: 'two', 3: 'three', 4: 'four', 5: 'five', 6: 'six' };

/** What the whole numbers on both sides of *value* give. */
function neighbourWords(formula: Solvable, ask: QuantityName, value: number, given: Readonly<Record<string, number>>) {
  const gives = (count: number) => {
    const { [formula.gives]: _, ...others } = given;
    const answer = sheetAnswer(formula, formula.gives, { ...others, [ask]: count });
    return answer.kind === 'found' ? `${count} gives ${answer.found[0]!.text}` : undefined;
  };
  const both = [Math.floor(value), Math.ceil(value)].map(gives).filter((words) => words !== undefined);
  return `No whole number fits exactly: ${both.join(', ')}.`;
}

function lookedWords(ask: QuantityName): string {
  const { name, least, most } = quantityOf(ask);
  return `Looked for: ${name} from ${printQuantity(ask, least)} to ${printQuantity(ask, most)}.`;
}

function missingWords(missing: readonly QuantityName[]): string {
  const names = missing.map((name) => `the ${quantityOf(name).name}`);
  const last = names.pop()!;
  return `Fill in ${names.length === 0 ? last : `${names.join(', ')} and ${last}`}, and the answer follows.`;
}

/** What is to be said of a field that was left empty. */
export function blankWords(name: QuantityName): string {
  return `Nothing is typed here. It takes ${expectedWords(name)}.`;
}

/** What a field holds: text, and the number that it stands for where it is accepted. */
export interface Typed {
  readonly text: string;
  readonly value?: number;
}

/** An answer as a field takes it: rounded to four figures, and that is the number from there on. */
export function asTyped(name: QuantityName, value: number): Typed {
  const figures = quantityOf(name).writing === 'whole' ? 3 : 4;
  const text = printQuantity(name, value, { exact: true, figures });
  const read = readQuantity(name, text);
  return read.kind === 'value' ? { text, value: read.value } : { text };
}

/** A number as a field shows it: in as few figures as say all of it, nine at most. */
export function inField(name: QuantityName, value: number): Typed {
  for (let figures = 3; figures < 9; figures++) {
    const text = printQuantity(name, value, { exact: true, figures });
    const read = readQuantity(name, text);
    if (read.kind === 'value' && Math.abs(read.value - value) <= 1e-12 * Math.abs(value)) return { text, value };
  }
  return { text: printQuantity(name, value, { exact: true, figures: 9 }), value };
}

function atStart(words: string): string {
  return words.startsWith('f-') ? `The ${words}` : words.charAt(0).toUpperCase() + words.slice(1);
}
