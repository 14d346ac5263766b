import { addedToLens } from '#core/diagnosis/added-to-lens.ts';
import { diagnose, passes, workedOut, type Diagnosis, type Grounds } from '#core/diagnosis/diagnose.ts';
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

/** Reads a text and puts the reader's corrections in place. *beside* is what else is spoken of. */
export function readWritten({ text, meant }: Written, beside: readonly QuantityName[] = []): ReadText {
  const { numbers, ...rest } = readStatement(text, beside);
  return { ...rest, numbers: numbers.map((number, index) => corrected(number, meant[index])) };
}

/** What somebody has, and what he found, which is about that. */
export function readBoth(have: Written, found: Written): { readonly have: ReadText; readonly found: ReadText } {
  const had = readWritten(have);
  return {
    have: had,
    found: readWritten(
      found,
      had.numbers.map(({ quantity }) => quantity),
    ),
  };
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
  const had = have.numbers.flatMap(({ quantity, isLeftOut }) => (isLeftOut ? [] : [quantity]));
  const implied = had.flatMap((id) => impliedBy[id] ?? []);
  const setUps = [...new Set([...have.setUps, ...found.setUps, ...implied])];
  // Of what somebody spoke of in words that could not be used nothing usual is taken.
  const refused = have.unread.flatMap(({ quantity }) => quantity ?? []);
  const grounds = { ...all, assumptions: all.assumptions.filter(({ quantity }) => !refused.includes(quantity)) };
  const sources: readonly Source[] = sourcesIn(have).map((source) => ({ ...source, setUps }));
  const first = sources[0]!;
  const before: Partial<Record<QuantityName, number>> = {};
  const answers = found.numbers.filter(({ isLeftOut }) => !isLeftOut);
  const checked = answers.map((answer) => {
    const told = sources.map((source) => checkedBy(source, answer, before, grounds));
    before[told[0]!.asks] = answer.value;
    return decided(told, sources);
  });
  const asked = found.asked.map((asks) => [asks, ...(found.alsoAsked[asks] ?? [])]);
  const open = [...have.asked.map((asks) => [asks, ...(have.alsoAsked[asks] ?? [])]), ...asked]
    .map((ids) => ids.filter((id) => !(id in first.given) && !(id in before)))
    .map((ids) => ids.map((asks) => answered(asks, first, grounds)))
    // Words may ask for several quantities: the likeliest that can be told is meant.
    .flatMap((told) => told.find(({ verdict }) => verdict !== 'cannot') ?? told[0] ?? []);
  return [...checked, ...open.filter(({ asks }, at) => open.findIndex((one) => one.asks === asks) === at)];
}

/** Set-ups that go with a number, whatever words are used for it. */
const impliedBy: Readonly<Partial<Record<QuantityName, string>>> = {
  'close-up-power': 'close-up lens',
  'objective-magnification': 'objective',
};

/** What somebody has, in one of the ways in which it may be meant. */
interface Source {
  readonly given: Readonly<Partial<Record<QuantityName, number>>>;
  readonly setUps: readonly string[];
  /** What was taken for a number that is given, by its quantity: clauses. */
  readonly taken: Readonly<Partial<Record<QuantityName, string>>>;
  /** A sentence for the way in which it is meant, where there are two. */
  readonly words?: string;
}

/** 1:1 beside a converter or a ring, with nothing that says of what: the whole picture's, or what the lens gives by itself. */
function sourcesIn(have: ReadText): readonly Omit<Source, 'setUps'>[] {
  const given = givenIn(have);
  const used = have.numbers.filter(({ isLeftOut }) => !isLeftOut);
  const taken = Object.fromEntries(
    used.flatMap(({ quantity, taken }) => (taken === undefined ? [] : [[quantity, taken]])),
  );
  const size = used.find(({ quantity, isSaid }) => quantity === 'magnification' && !isSaid);
  const { magnification, ...rest } = given;
  if (!size || 'focus-magnification' in given || !addedToLens.some((id) => id in given)) return [{ given, taken }];
  return [
    { given, taken, words: `“${size.number}” is taken for all of it together.` },
    {
      given: { ...rest, 'focus-magnification': magnification! },
      taken,
      words: `“${size.number}” is taken for what the lens gives by itself.`,
    },
  ];
}

/** Of what is said by the one way to mean it and by the other: what is right by one; where neither is, nobody can tell. */
function decided(told: readonly CheckedAnswer[], sources: readonly Source[]): CheckedAnswer {
  const [first] = told as readonly [CheckedAnswer];
  if (told.length === 1 || told.every(({ verdict }) => verdict === 'cannot')) return first;
  const at = told.findIndex(({ verdict }) => verdict === 'right');
  if (at >= 0) return { ...told[at]!, words: `${told[at]!.words} ${sources[at]!.words}` };
  if (isAlike(told)) return first;
  const words =
    'The magnification may be that of all together, or what the lens gives by itself, and by neither this comes out. Write “m” before it for all together, or say below that it is the lens’s own.';
  const { asks, written } = first;
  return { asks, written, verdict: 'cannot', title: 'Cannot be told', words };
}

/** True where it makes no difference. */
const isAlike = (told: readonly CheckedAnswer[]) =>
  new Set(told.map(({ working, words }) => `${working?.value} ${words}`)).size === 1;

function checkedBy(
  source: Source,
  answer: ReadNumber,
  before: Readonly<Partial<Record<QuantityName, number>>>,
  grounds: Grounds,
): CheckedAnswer {
  const { given, setUps } = source;
  const known = given[answer.quantity];
  if (known !== undefined) return answer.isSaid ? besideGiven(answer, known, source) : unsaid(answer);
  const question = { given, setUps, foundBefore: { ...before } };
  const diagnosed = (number: ReadNumber) =>
    [number, diagnose({ asks: number.quantity, answer: number, ...question }, grounds)] as const;
  const first = diagnosed(answer);
  // Words may mean several quantities: frames of a stack, or frames for one in focus. The likeliest that can be told is meant.
  const isOpen = first[1].verdict === 'cannot' && !first[1].mayBeRight;
  const others = isOpen ? answer.alsoNamed.map((id) => diagnosed(corrected(answer, id))) : [];
  const [meant, diagnosis] = others.find(([{ isLeftOut }, { verdict }]) => !isLeftOut && verdict !== 'cannot') ?? first;
  return told(meant, diagnosis, source);
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
function besideGiven(
  { quantity: asks, written, value, halfFigure }: ReadNumber,
  known: number,
  { taken }: Source,
): CheckedAnswer {
  const isSame = Math.abs(value - known) <= Math.max(halfFigure * (1 + 1e-9), passes * Math.abs(known));
  const printed = printQuantity(asks, known);
  const what = taken[asks];
  if (what !== undefined) return ifTaken(asks, written, known, what, isSame);
  return isSame
    ? { asks, written, verdict: 'right', title: 'Right', words: `What you have says so already: ${printed}.` }
    : { asks, written, verdict: 'off', title: 'Not right', words: `What you have says ${printed}.` };
}

/** What leans on a usual size of something that was not given: it may be right, and nobody can say that it is wrong. */
function ifTaken(asks: QuantityName, written: string, known: number, what: string, isSame: boolean): CheckedAnswer {
  const printed = printQuantity(asks, known);
  return isSame
    ? { asks, written, verdict: 'right', title: 'Right', words: `If ${what}: nothing was said of it.` }
    : {
        asks,
        written,
        verdict: 'cannot',
        title: 'Cannot be told',
        words: `Only if ${what} it is ${printed}, and nothing was said of that. Write the sensor’s width and height.`,
      };
}

function told(
  { quantity: asks, written, halfFigure, value }: StatedNumber,
  diagnosis: Diagnosis,
  source: Source,
): CheckedAnswer {
  const common = { asks, written, verdict: diagnosis.verdict };
  if (diagnosis.verdict === 'cannot') return { ...common, title: 'Cannot be told', words: diagnosis.because };
  const { working, off } = diagnosis;
  const taken = takenBy(working, source);
  if (taken[0] !== undefined && diagnosis.verdict !== 'right')
    return ifTaken(asks, written, working.value, taken[0], false);
  const withWorking = { ...common, working: shown(working, taken) };
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
    const off = `${farOff(value, working.value)} ${way}, and no slip known here gives it.`;
    const words = working.assumed.length > 0 ? `With what is taken here it is ${off}` : `It is ${off}`;
    return { ...withWorking, title: 'Not right', words };
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
function answered(asks: QuantityName, source: Source, grounds: Grounds): CheckedAnswer {
  const { given, setUps, words = '' } = source;
  const found = workedOut({ asks, given, setUps }, grounds);
  const common = { asks, written: '' };
  if ('because' in found) return { ...common, verdict: 'cannot', title: 'Cannot be told', words: found.because };
  const { working } = found;
  const title = printQuantity(asks, working.value);
  const taken = [...takenBy(working, source), ...(words === '' ? [] : [words.replace(/\.$/, '')])];
  return { ...common, verdict: 'worked-out', title, words: '', working: shown(working, taken) };
}

/** Clauses for what was taken for the numbers with which a way begins. */
const takenBy = ({ uses }: Route, { taken }: Source) => uses.flatMap((id) => taken[id] ?? []);

function shown({ value, steps, assumed, known }: Route, taken: readonly string[]): ShownWorking {
  return {
    value,
    taken: [...new Set([...assumed.map(({ words }) => words), ...taken])],
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
