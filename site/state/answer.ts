import type { OutOfRange } from '#core/quantity/errors.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';

/** What a bench knows of a quantity: its value, or words where a number alone would mislead, with its value if it has one. */
export type Answer = number | { readonly words: string; readonly value?: number };

/** The answer as text with unit, or its words. */
export function printAnswer(name: QuantityName, answer: Answer): string {
  return typeof answer === 'number' ? printQuantity(name, answer) : answer.words;
}

/** One of *answers* as text. */
export function say<Name extends QuantityName>(answers: Readonly<Record<Name, Answer>>, name: Name): string {
  return printAnswer(name, answers[name]);
}

/** The answer's number in the base unit, where it has one. */
export function valueOf(answer: Answer): number | undefined {
  return typeof answer === 'number' ? answer : answer.value;
}

/** A quantity outside its range, as the core names it: plain data, which may come from a worker. */
export type Refused = Pick<OutOfRange, 'quantity' | 'value' | 'accepted'>;

/** What the core said of numbers that it refuses, with quantity and value as a reader knows them. */
export function refusalInWords({ quantity, value, accepted }: Refused): string {
  return `The ${quantityOf(quantity).name} would be ${printQuantity(quantity, value)}. Needed: ${accepted}.`;
}
