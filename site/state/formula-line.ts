import { mostFigures, printedLine, type LineFormula, type NoLine } from '#core/quantity/printed-line.ts';
import type { PrintedNumber } from '#core/quantity/print.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import { printAnswer, refusalInWords, valueOf, type Answer } from './answer.ts';

/** A formula's line as a page shows it: the text of each of its numbers, by name; or, where it has none, why. */
export type FormulaLine = { readonly texts: Readonly<Record<string, string>> } | { readonly words: string };

/** The line of *formula* with what a bench knows: its own result from its own numbers, whatever else the bench has under that name. */
export function formulaLine(formula: LineFormula, answers: Readonly<Record<string, Answer | undefined>>): FormulaLine {
  const values = Object.fromEntries(
    formula.from.map((name) => [name, answers[name] === undefined ? undefined : valueOf(answers[name])]),
  );
  const line = printedLine(formula, values);
  return line.kind === 'numbers'
    ? { texts: textsOf(line.numbers, formula.gives) }
    : { words: inWords(line, formula, answers) };
}

/** A negative number that is put in stands in parentheses: it may follow a minus. Stops that are put in are exponents: numbers alone. */
function textsOf(
  numbers: Readonly<Record<string, PrintedNumber>>,
  gives: QuantityName,
): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(numbers).map(([name, { number, unit }]) => {
      const isGiven = name !== gives;
      const text = unit === '' || (isGiven && unit.startsWith('stop')) ? number : `${number}\u2009${unit}`;
      return [name, isGiven && number.startsWith('−') ? `(${text})` : text];
    }),
  );
}

/** Why there are no numbers, for a reader: an equation would be false, or look it. */
function inWords(line: NoLine, { gives }: LineFormula, answers: Readonly<Record<string, Answer | undefined>>): string {
  if (line.kind === 'lacking') {
    return `No numbers here. ${asSaid(line.of, answers)}`;
  }
  // The lesson's own words for its edges say more than the core's.
  if (line.kind !== 'unprintable' && typeof answers[gives] === 'object')
    return `No numbers here. ${asSaid(gives, answers)}`;
  if (line.kind === 'refused') return `No numbers here. ${refusalInWords(line.refused)}`;
  if (line.kind === 'beyond') return `No numbers here: the formula does not reach so far. ${asSaid(gives, answers)}`;
  if (line.kind === 'infinite') return `No numbers here: the ${quantityOf(gives).name} is infinite.`;
  return `No numbers here: the ${quantityOf(gives).name} hangs on more than ${mostFigures} figures of each.`;
}

function asSaid(of: QuantityName, answers: Readonly<Record<string, Answer | undefined>>): string {
  const { name } = quantityOf(of);
  const answer = answers[of];
  return `${name[0]!.toUpperCase()}${name.slice(1)}: ${answer === undefined ? 'none' : printAnswer(of, answer)}.`;
}
