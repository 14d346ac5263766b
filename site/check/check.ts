import { diagnose, passes, workedOut, type Diagnosis, type Grounds, type Question } from '#core/diagnosis/diagnose.ts';
import type { Route } from '#core/diagnosis/route.ts';
import { readStatement, type StatedNumber, type Statement } from '#core/diagnosis/statement.ts';
import { nameInFull } from '#core/quantity/part.ts';
import { percent, printQuantity } from '#core/quantity/print.ts';
import { readQuantity } from '#core/quantity/read.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { formulaLine, type FormulaLine } from '#site/state/formula-line.ts';

/** What a reader makes of a number that was read otherwise: the quantity he means, or that it is to be left out. */
export type Meant = QuantityName | 'left-out';

/** A text as a reader wrote it, and his corrections by the number's place in it. */
export interface Written {
  readonly text: string;
  readonly meant: Readonly<Record<number, Meant>>;
}

/** A number that was read, as the page shows it. */
export interface ReadNumber extends StatedNumber {
  readonly isLeftOut: boolean;
  /** Set where the reader means another quantity, and the number does not fit it. */
  readonly refusal?: string;
}

/** A text with what was read from it. */
export interface ReadText extends Omit<Statement, 'numbers'> {
  readonly numbers: readonly ReadNumber[];
}

/** One answer with what is to be said about it. */
export interface CheckedAnswer {
  readonly asks: QuantityName;
  /** As it was written; '' where it was only asked for. */
  readonly written: string;
  readonly verdict: Diagnosis['verdict'] | 'worked-out';
  /** The verdict in a few words: `Right`. */
  readonly title: string;
  /** The rest of it, whole sentences. */
  readonly words: string;
  /** The lesson whose problems know the slip. */
  readonly slipLesson?: string;
  readonly working?: ShownWorking;
}

/** One step of a working, as the page shows it. */
export interface ShownStep {
  /** The formula, by the name of its file. */
  readonly formula: string;
  readonly gives: QuantityName;
  /** Base unit. */
  readonly value: number;
  /** True where the formula is solved for a letter of its right-hand side. */
  readonly isBackwards: boolean;
  readonly says: string;
  readonly line: FormulaLine;
}

/** The way to the right answer: steps, and what was taken where nothing was said. */
export interface ShownWorking {
  readonly value: number;
  readonly steps: readonly ShownStep[];
  readonly taken: readonly string[];
}

/** Reads a text and puts the reader's corrections in place. */
export function readWritten({ text, meant }: Written): ReadText {
  const { numbers, ...rest } = readStatement(text);
  return { ...rest, numbers: numbers.map((number, index) => corrected(number, meant[index])) };
}

function corrected(number: StatedNumber, meant: Meant | undefined): ReadNumber {
  if (meant === undefined) return { ...number, isLeftOut: false };
  if (meant === 'left-out') return { ...number, isLeftOut: true };
  const others = [number.quantity, ...number.others.filter((id) => id !== meant)];
  const reading = readQuantity(meant, number.number);
  if (reading.kind !== 'value') {
    const refusal = reading.kind === 'blank' ? 'There is no number.' : reading.message;
    return { ...number, quantity: meant, others, isSaid: true, isLeftOut: true, refusal };
  }
  const halfFigure = (number.halfFigure / Math.abs(number.value || 1)) * Math.abs(reading.value);
  return { ...number, quantity: meant, value: reading.value, halfFigure, others, isSaid: true, isLeftOut: false };
}

/** Base units by quantity, of all that is not left out; of two that are corrected to the same the later counts. */
export function givenIn({ numbers }: ReadText): Readonly<Partial<Record<QuantityName, number>>> {
  return Object.fromEntries(
    numbers.filter(({ isLeftOut }) => !isLeftOut).map(({ quantity, value }) => [quantity, value]),
  );
}

/** What is to be said about every number found, and about everything that was only asked for, in the order in which it was written. */
export function checkedAnswers(have: ReadText, found: ReadText, all: Grounds): readonly CheckedAnswer[] {
  const given = givenIn(have);
  const setUps = [...new Set([...have.setUps, ...found.setUps])];
  // Of what somebody spoke of in words that could not be used nothing usual is taken.
  const refused = have.unread.flatMap(({ quantity }) => quantity ?? []);
  const grounds = { ...all, assumptions: all.assumptions.filter(({ quantity }) => !refused.includes(quantity)) };
  const before: Partial<Record<QuantityName, number>> = {};
  const answers = found.numbers.filter(({ isLeftOut }) => !isLeftOut);
  const checked = answers.map((answer) => {
    const known = given[answer.quantity];
    if (known !== undefined) return answer.isSaid ? besideGiven(answer, known) : unsaid(answer);
    const question = { given, setUps, foundBefore: { ...before } };
    const diagnosed = (number: ReadNumber) =>
      [number, diagnose({ asks: number.quantity, answer: number, ...question }, grounds)] as const;
    const first = diagnosed(answer);
    // Words may mean several quantities: frames of a stack, or frames for one in focus. The likeliest that can be told is meant.
    const others = first[1].verdict === 'cannot' ? answer.alsoNamed.map((id) => diagnosed(corrected(answer, id))) : [];
    const [meant, diagnosis] =
      others.find(([{ isLeftOut }, { verdict }]) => !isLeftOut && verdict !== 'cannot') ?? first;
    before[meant.quantity] = meant.value;
    return told(meant, diagnosis);
  });
  const asked = [...new Set([...have.asked, ...found.asked])].filter((id) => !(id in given) && !(id in before));
  return [...checked, ...asked.map((asks) => answered({ asks, given, setUps }, grounds))];
}

/** Nothing but its unit says what it is, and of that there is one already. */
const unsaid = ({ quantity: asks, written }: ReadNumber): CheckedAnswer => ({
  asks,
  written,
  verdict: 'cannot',
  title: 'Cannot be told',
  words: `Of what is “${written}”? Write its name or its letter with it.`,
});

/** What was found is among what one has, or follows from it at once, as the pixel pitch does from megapixels. */
function besideGiven({ quantity: asks, written, value, halfFigure }: ReadNumber, known: number): CheckedAnswer {
  const isSame = Math.abs(value - known) <= Math.max(halfFigure * (1 + 1e-9), passes * Math.abs(known));
  const printed = printQuantity(asks, known);
  return isSame
    ? { asks, written, verdict: 'right', title: 'Right', words: `What you have says so already: ${printed}.` }
    : { asks, written, verdict: 'off', title: 'Not right', words: `What you have says ${printed}.` };
}

function told({ quantity: asks, written, halfFigure, value }: StatedNumber, diagnosis: Diagnosis): CheckedAnswer {
  const common = { asks, written, verdict: diagnosis.verdict };
  if (diagnosis.verdict === 'cannot') return { ...common, title: 'Cannot be told', words: diagnosis.because };
  const { working, off } = diagnosis;
  const withWorking = { ...common, working: shown(working) };
  if (diagnosis.verdict === 'slip') {
    const lesson = /^([a-z-]+)\//.exec(diagnosis.slip.id)?.[1];
    return {
      ...withWorking,
      title: 'A known slip',
      words: diagnosis.because,
      ...(lesson !== undefined && { slipLesson: lesson }),
    };
  }
  if (diagnosis.verdict === 'off') {
    const way = value > working.value ? 'too large' : 'too small';
    return {
      ...withWorking,
      title: 'Not right',
      words: `It is ${farOff(value, working.value)} ${way}, and no slip known here gives it.`,
    };
  }
  if (diagnosis.from !== undefined) {
    const from = nameInFull(diagnosis.from);
    return {
      ...withWorking,
      title: 'Rightly worked on',
      words: `It follows from the ${from} that you found. That one is not right, so this is not either.`,
    };
  }
  if (diagnosis.otherWay) {
    const words = `Another way of working it out gives it. The one below gives ${printQuantity(asks, working.value)}.`;
    return { ...withWorking, title: 'Right by another way', words };
  }
  const isExact = Math.abs(value - working.value) <= halfFigure * (1 + 1e-9) || off < 5e-4;
  const words = isExact
    ? 'As exactly as you wrote it.'
    : `To within ${percent(off)}; exactly it is ${printQuantity(asks, working.value)}.`;
  return { ...withWorking, title: 'Right', words };
}

/** The answer to a question without a number found. */
function answered(question: Question, grounds: Grounds): CheckedAnswer {
  const found = workedOut(question, grounds);
  const common = { asks: question.asks, written: '' };
  if ('because' in found) return { ...common, verdict: 'cannot', title: 'Cannot be told', words: found.because };
  const { working } = found;
  const title = printQuantity(question.asks, working.value);
  return { ...common, verdict: 'worked-out', title, words: '', working: shown(working) };
}

function shown({ value, steps, assumed, known }: Route): ShownWorking {
  return {
    value,
    taken: assumed.map(({ words }) => words),
    steps: steps.map(({ by: { id, formula }, gives, value: result }) => ({
      formula: id,
      gives,
      value: result,
      isBackwards: gives !== formula.gives,
      says: formula.says,
      line: formulaLine(formula, known),
    })),
  };
}

/** By how much, as a person says it: 12 %, 3.4 times. */
function farOff(value: number, right: number): string {
  const ratio = value / right;
  if (ratio >= 2) return `${Number(ratio.toPrecision(2))} times`;
  if (ratio > 0 && ratio <= 0.5) return `${Number((1 / ratio).toPrecision(2))} times`;
  return percent(Math.abs(ratio - 1));
}
