import { verdictOn, markAttempt } from '#core/practice/answer.ts';
import type { ProblemFamily } from '#core/practice/family.ts';
import { drawProblem, type NumberProblem, type Problem } from '#core/practice/problem.ts';
import { marginAt } from '#core/practice/tolerance.ts';
import { workingNumbers } from '#core/practice/working.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { readQuantity } from '#core/quantity/read.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import { spellings } from './spellings.ts';

const problems = 200;
/** What a wrong answer tells is worth little where it can only tell one or two things. */
const leastMistakes = 3;
/** Fewer different sets of numbers than this, and a learner soon meets the same problem again. */
const leastVariety = 8;

/** Everything wrong with a family of problems, each fault once with the number of the first problem that shows it. */
export function familyFaults(family: ProblemFamily): readonly string[] {
  const faults = new Map<string, number>();
  const drawn = new Set<string>();
  const met = new Set<string>();
  for (let seed = 1; seed <= problems; seed++) {
    const found = faultsOfOne(family, seed, { drawn, met });
    for (const fault of found) if (!faults.has(fault)) faults.set(fault, seed);
  }
  const unmet = family.mistakes.filter(({ id }) => !met.has(id)).map(({ id }) => id);
  const all = [...faultsOfAll(family), ...[...faults].map(([fault, seed]) => `${fault} (number ${seed})`)];
  if (drawn.size < leastVariety && faults.size === 0) all.push(`has only ${drawn.size} different problems`);
  if (faults.size === 0) all.push(...unmet.map((id) => `leads to ${id} in none of ${problems} problems`));
  return all;
}

function faultsOfAll({ id, hint, mistakes, working }: ProblemFamily): readonly string[] {
  return faultsAmong({
    [`“${id}” is no id: small letters, digits and hyphens`]: /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(id),
    'has no hint': hint.trim() !== '',
    [`recognises ${mistakes.length} mistakes, not at least three`]: mistakes.length >= leastMistakes,
    'has two mistakes of one name': new Set(mistakes.map((one) => one.id)).size === mistakes.length,
    'has a mistake without a reason': mistakes.every(({ because }) => because.trim() !== ''),
    'has no working': working.length > 0,
    'has an empty step': working.every(({ note, formula }) => formula !== undefined || (note ?? '').trim() !== ''),
  });
}

/** What has come up in the problems so far: sets of numbers, and mistakes that a wrong answer can show. */
interface Seen {
  readonly drawn: Set<string>;
  readonly met: Set<string>;
}

function faultsOfOne(family: ProblemFamily, seed: number, { drawn, met }: Seen): readonly string[] {
  try {
    const problem = drawProblem(family, seed);
    drawn.add(JSON.stringify(problem.given));
    for (const { id } of problem.mistakes) met.add(id);
    const misnamed = Object.entries(problem.given).filter(
      ([id, value]) => (typeof value === 'number') !== isQuantity(id),
    );
    if (misnamed.length > 0) return misnamed.map(([id]) => `gives ${id}: quantities are numbers, all else is words`);
    return [...faultsOfAny(problem), ...(problem.kind === 'number' ? faultsOfNumber(problem) : [])];
  } catch (error) {
    return [(error as Error).message];
  }
}

function faultsOfAny(problem: Problem): readonly string[] {
  const { family, given, question, hint, answer, mistakes } = problem;
  const steps = workingNumbers(family, given);
  const texts = [question, hint, ...mistakes.map(({ because }) => because), ...steps.map(({ note }) => note)];
  return faultsAmong({
    'says NaN, undefined or a bare {mark}': !texts.some((text) => /NaN|undefined|Infinity|[{}]/.test(text)),
    'does not accept its own answer': verdictOn({ kind: 'ready', problem, value: answer }).kind === 'right',
    'gives the answer away in its hint': !givesAway(problem, hint),
    ...Object.fromEntries(
      mistakes.map(({ id, because }) => [
        `gives the answer away where it speaks of ${id}`,
        !givesAway(problem, because),
      ]),
    ),
    ...Object.fromEntries(unexplained(problem).map((option) => [`has no words for whoever chooses ${option}`, false])),
    'marks a blank': markAttempt({ problem, text: '' }).kind === 'not-ready',
    ...Object.fromEntries(
      mistakes.map(({ id, value }) => {
        const verdict = verdictOn({ kind: 'ready', problem, value });
        return [`does not recognise ${id}`, verdict.kind === 'mistake' && verdict.mistake.id === id];
      }),
    ),
  });
}

/** Wrong options of a choice that no mistake leads to. */
function unexplained({ kind, family, answer, mistakes }: Problem): readonly string[] {
  if (kind !== 'choice') return [];
  const options = Object.keys(family.options);
  return options.filter((option) => option !== answer && mistakes.every(({ value }) => value !== option));
}

function faultsOfNumber(problem: NumberProblem): readonly string[] {
  const { family, given, answer } = problem;
  const margin = marginAt(answer, family.tolerance);
  const beyond = margin === 0 ? 1 : 1.001 * margin;
  const isRight = (value: number) => verdictOn({ kind: 'ready', problem, value }).kind === 'right';
  const byWorking = workingNumbers(family, given).at(-1)?.numbers[family.asks] ?? NaN;
  return faultsAmong({
    'does not accept the edge of its tolerance': isRight(answer - margin) && isRight(answer + margin),
    'accepts what lies beyond its tolerance': !isRight(answer - beyond) && !isRight(answer + beyond),
    // Both come from the core; two routes through it part by rounding only.
    'ends its working with another number': Math.abs(byWorking - answer) <= 1e-9 * Math.abs(answer),
    'does not accept its answer as it is printed': isRightTyped(problem, printQuantity(family.asks, answer)),
    ...Object.fromEntries(
      problem.mistakes.map(({ id, value }) => {
        const verdict = markAttempt({ problem, text: printQuantity(family.asks, value, { exact: true }) });
        return [`does not recognise ${id} as it is typed`, verdict.kind === 'mistake' && verdict.mistake.id === id];
      }),
    ),
    'cannot be solved with its numbers as printed': isRight(family.answer(asPrinted(given))),
    ...Object.fromEntries(
      spellings(family.asks, answer).map((text) => [
        `does not accept its answer written like ${text.replaceAll(/\d+/g, '0')}`,
        isRightTyped(problem, text),
      ]),
    ),
  });
}

/**
 * Whether *text* holds the answer as it is printed, or all words by which the right option differs from the others. What the question
 * itself says is no secret.
 */
function givesAway(problem: Problem, text: string): boolean {
  const { question, answer } = problem;
  if (problem.kind === 'number') {
    const printed = printQuantity(problem.family.asks, problem.answer);
    return holds(text, printed) && !holds(question, printed);
  }
  const { [answer]: right, ...others } = problem.family.options;
  const elsewhere = new Set([question, ...Object.values(others)].flatMap(wordsOf));
  const own = wordsOf(right!).filter((word) => !elsewhere.has(word));
  const said = new Set(wordsOf(text));
  return own.length > 0 && own.every((word) => said.has(word));
}

/** Whether *printed* stands in *text* by itself, not as a part of a longer number. */
function holds(text: string, printed: string): boolean {
  return text.split(printed).some((_, at, parts) => {
    if (at === 0) return false;
    return !/[\d.,:/×]$/.test(parts[at - 1]!) && !/^(?:[.,:/×]?\d|[×\p{L}])/u.test(parts[at]!);
  });
}

function wordsOf(text: string): readonly string[] {
  return text.toLowerCase().match(/\p{L}{3,}|⌀/gu) ?? [];
}

function isRightTyped(problem: Problem, text: string): boolean {
  return markAttempt({ problem, text }).kind === 'right';
}

/** What a reader takes from the question: each given as it is printed there. */
function asPrinted(given: Problem['given']): Problem['given'] {
  const read = Object.entries(given).map(([id, value]) => {
    if (typeof value === 'string') return [id, value];
    const reading = readQuantity(id as QuantityName, printQuantity(id as QuantityName, value));
    if (reading.kind !== 'value') throw new Error(`gives ${id} as ${value}, which nobody could type`);
    return [id, reading.value];
  });
  return Object.fromEntries(read) as Problem['given'];
}

function isQuantity(id: string): boolean {
  return (quantityOf(id as QuantityName) as unknown) !== undefined;
}

/** The names of what does not hold. */
function faultsAmong(checks: Readonly<Record<string, boolean>>): readonly string[] {
  return Object.keys(checks).filter((fault) => !checks[fault]);
}
