import { OutOfRange } from './errors.ts';
import type { Range } from './expected.ts';
import { camelCase } from './formula.ts';
import { crossingsOf } from './solve-crossings.ts';
import { orUndefined, stretchesOf, type Answer, type Stretch } from './solve-places.ts';
import { aroundJumps, branchOf, joined, reachOf, type Branch } from './solve-reach.ts';
import { NoRoot, NotGiven, NotInFormula, SeveralRoots, type Reach } from './solve-refusals.ts';
import { quantityOf, type QuantityName } from './vocabulary.ts';

/** Of a formula, what it takes to solve it. */
export interface Solvable {
  readonly gives: QuantityName;
  readonly from: readonly QuantityName[];
  readonly evaluate: (given: never) => number;
  readonly turns?: Readonly<Record<string, ((given: never, range: Range) => readonly number[]) | undefined>>;
}

type LetterOf<F extends Solvable> = F['from'][number] | F['gives'];

export interface Question<Letter extends QuantityName = QuantityName> {
  /** The letter wanted: of the right-hand side, or the one on the left. */
  readonly ask: Letter;
  /** Every other letter's value, base units, by id. */
  readonly given: { readonly [Id in Letter]?: number };
  /** Where to look; the vocabulary's range of the letter unless said otherwise. */
  readonly range?: Range;
}

export interface Root {
  readonly value: number;
  readonly branch: Branch;
}

/** A whole stretch of values that all do: of what a count came from, or of what no longer matters. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

export interface Solution {
  /** Every single value of the letter in the range that gives the left side, from small to large. */
  readonly roots: readonly Root[];
  /** Every stretch of such values, from small to large. */
  readonly spans: readonly Span[];
  /** What the left side can be at all with the other letters as they are, from small to large. */
  readonly reach: readonly Reach[];
}

/**
 * A formula solved for any of its letters: all the values in a range that, put back, give the left side.
 *
 * The letter's range is looked through for the stretches in which the formula answers and for where its left side turns; between
 * those it is halved down to the last digit. No formula needs a second formula for its way back. See [README](README.md#solving).
 *
 * @param formula any of the core's
 * @param question.ask the letter wanted
 * @param question.given all the other letters, base units
 * @param question.range where to look for it, base unit
 * @returns single values with the branch each is on, stretches of values, and what the left side can be: at least one value or
 *   stretch. A double root, where the left side just turns, is one value. A count may come out between whole numbers where the
 *   formula itself takes such: then no whole number fits exactly.
 * @throws NoRoot, an OutOfRange of the left side, where no value in the range gives it
 * @throws NotInFormula for a letter that the formula has not; NotGiven where a letter's value is missing
 * @throws OutOfRange for a left side that is no number, a range that is none, or other letters for which the formula never answers
 *
 * @example solveFor(focusDistanceFormula, { ask: 'magnification', given: { 'focus-distance': 225, 'focal-length': 50, 'principal-separation': 0 } }).roots // 0.5 and 2
 */
export function solveFor<F extends Solvable>(formula: F, question: Question<LetterOf<F>>): Solution {
  const { ask, given } = question as Question;
  const { gives, from } = formula;
  for (const id of [ask, ...Object.keys(given)] as QuantityName[]) {
    if (id !== gives && !from.includes(id)) throw new NotInFormula(`${id} is no letter of the formula for ${gives}`);
  }
  for (const id of [gives, ...from]) {
    if (id !== ask && given[id] === undefined) throw new NotGiven(`${id} is not given; asked for is ${ask}`);
  }
  if (ask === gives) return computed(formula.evaluate(named(given) as never));
  const wanted = given[gives]!;
  if (Number.isNaN(wanted)) throw new OutOfRange(gives, wanted, 'a number');

  const { at, stretches } = looked(formula, question as Question);
  const found = stretches.map((stretch) => ({ stretch, ...crossingsOf(at, stretch, wanted) }));
  const jumps = found.flatMap((one) => one.jumps);
  const reach = joined(stretches.map(reachOf));
  const runs = found.flatMap(({ stretch, runs }) => runs.map((run) => ({ ...run, stretch })));
  if (runs.length === 0) throw new NoRoot(gives, wanted, aroundJumps(reach, jumps));
  return {
    roots: runs
      .filter((run) => run.from === run.to)
      .map(({ from: value, stretch }) => ({ value, branch: branchOf(stretch, value) })),
    spans: runs.filter((run) => run.from < run.to).map((run) => ({ from: run.from, to: run.to })),
    reach,
  };
}

/**
 * The one value of a letter that gives the left side, as {@link solveFor} finds it.
 *
 * @throws what {@link solveFor} throws; SeveralRoots, an OutOfRange of the left side, where more than one value does: a narrower
 *   `range` picks the branch that is meant
 *
 * @example onlyRoot({ gives: 'magnification', from: ['extension', 'focal-length'], evaluate: (given) => given.extension / given.focalLength }, { ask: 'extension', given: { magnification: 1, 'focal-length': 50 } }) // 50
 */
export function onlyRoot<F extends Solvable>(formula: F, question: Question<LetterOf<F>>): number {
  const { roots, spans } = solveFor(formula, question);
  if (roots.length === 1 && spans.length === 0) return roots[0]!.value;
  const values = [...roots.map(({ value }) => value), ...spans.flatMap(({ from, to }) => [from, to])];
  const { gives } = formula;
  const wanted = (question as Question).given[gives]!;
  throw new SeveralRoots(
    gives,
    wanted,
    question.ask,
    values.sort((one, other) => one - other),
  );
}

/** The value of a solution nearest to where the letter is now: what a hand that drags the left side means. */
export function nearestRoot({ roots, spans }: Solution, now: number): number {
  const values = [
    ...roots.map(({ value }) => value),
    ...spans.map(({ from, to }) => Math.min(Math.max(now, from), to)),
  ];
  return values.reduce((best, value) => (Math.abs(value - now) < Math.abs(best - now) ? value : best));
}

/** What the left side can be as a letter runs through its range, from small to large. Throws as {@link solveFor}, but for NoRoot. */
export function reachOfFormula<F extends Solvable>(formula: F, question: Question<LetterOf<F>>): readonly Reach[] {
  return joined(looked(formula, question as Question).stretches.map(reachOf));
}

function named(given: Question['given']): Record<string, number | undefined> {
  return Object.fromEntries(Object.entries(given).map(([id, value]) => [camelCase(id), value]));
}

function looked(formula: Solvable, question: Question): { at: Answer; stretches: readonly Stretch[] } {
  const { ask, given, range = quantityOf(ask) } = question;
  if (!(range.least < range.most && range.least > -Infinity && range.most < Infinity)) {
    throw new OutOfRange(ask, range.least < range.most ? range.most : range.least, 'a range from less to more, finite');
  }
  const known = named(given);
  // One object for all evaluations, some hundreds: making one for each would take most of the time.
  const values = { ...known };
  const letter = camelCase(ask);
  const answer = (x: number) => {
    values[letter] = x;
    return formula.evaluate(values as never);
  };
  const at = orUndefined(answer);
  const stretches = stretchesOf(
    at,
    range,
    quantityOf(ask).scale === 'log',
    formula.turns?.[ask]?.(known as never, range),
  );
  // Nowhere an answer: the formula's own refusal says why.
  if (stretches.length === 0) answer(range.least > 0 ? Math.sqrt(range.least * range.most) : range.most);
  return { at, stretches };
}

function computed(value: number): Solution {
  const branch: Branch = { sense: 'level', from: value, to: value };
  return { roots: [{ value, branch }], spans: [], reach: [{ least: value, most: value }] };
}
