import { OutOfRange } from './errors.ts';
import { printQuantity } from './print.ts';
import { quantityOf, type QuantityName } from './vocabulary.ts';

/** Values of a left side, ends included, that it takes as the letter asked for runs through its range. */
export interface Reach {
  readonly least: number;
  readonly most: number;
}

/** No value of the letter gives what is wanted; says between which values the left side can be. */
export class NoRoot extends OutOfRange {
  /** From small to large, not touching. */
  readonly reach: readonly Reach[];
  /** A sentence for a reader: `working distance cannot be 3 mm: with these numbers it is from 12 mm up`. */
  readonly words: string;

  constructor(quantity: QuantityName, value: number, reach: readonly Reach[]) {
    const { wanted, allowed } = reachWords(quantity, value, reach);
    super(quantity, value, `with these numbers ${allowed}`);
    this.reach = reach;
    this.words = `${quantityOf(quantity).name} cannot be ${wanted}: with these numbers it is ${allowed}`;
  }
}

/** Several values of the letter give what is wanted, and one was asked for. */
export class SeveralRoots extends OutOfRange {
  /** The values in order; of a whole stretch of them, its two ends. */
  readonly values: readonly number[];

  constructor(quantity: QuantityName, wanted: number, letter: QuantityName, values: readonly number[]) {
    const listed = values.map((value) => printQuantity(letter, value)).join(' and ');
    super(quantity, wanted, `what one ${quantityOf(letter).name} alone gives; here ${listed} do`);
    this.values = values;
  }
}

/** The letter is none of the formula's. */
export class NotInFormula extends RangeError {
  override readonly name = 'NotInFormula';
}

/** A letter of the formula was neither asked for nor given. */
export class NotGiven extends RangeError {
  override readonly name = 'NotGiven';
}

/** What is wanted and what can be had, in as many digits as it takes to tell the two apart. */
function reachWords(name: QuantityName, value: number, reach: readonly Reach[]): { wanted: string; allowed: string } {
  for (let figures = 3; ; figures++) {
    const print = (number: number) => printQuantity(name, number, { exact: true, figures });
    const wanted = print(value);
    const ends = reach.flatMap(({ least, most }) => [print(least), print(most)]);
    if (figures === 15 || !ends.includes(wanted)) {
      return { wanted, allowed: reach.map((part) => partWords(name, part, print)).join(', or ') };
    }
  }
}

function partWords(name: QuantityName, { least, most }: Reach, print: (value: number) => string): string {
  const row = quantityOf(name);
  if (least === most) return print(least);
  if (most >= row.most) return least <= row.least ? 'anything else' : `from ${print(least)} up`;
  return least <= row.least && least <= 0 ? `at most ${print(most)}` : `from ${print(least)} to ${print(most)}`;
}
