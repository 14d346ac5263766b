import type { Range } from '#core/quantity/expected.ts';
import { plainNumber } from '#core/quantity/plain-number.ts';
import type { LineFormula } from '#core/quantity/printed-line.ts';
import { readQuantity } from '#core/quantity/read.ts';
import type { Solvable } from '#core/quantity/solve.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import { letterOf } from '#site/controls/letter/letter-of.ts';
import { readAddress } from '#site/state/address.ts';
import { ownCircle } from '#site/state/kept-circle.ts';
import { formulaLine, type FormulaLine } from '#site/state/formula-line.ts';
import { asTyped, blankWords, inField, sheetAnswer, type Found } from './answer.ts';
import { startOf } from './starts.ts';

/** What filling in takes of a formula, and the name of its file. */
export type SheetSolvable = Solvable & LineFormula & { readonly id: string };

/** What stands in a field, the number that it stands for, if any, and what is to be said of it. */
export interface Field {
  readonly text: string;
  readonly value?: number | undefined;
  readonly notice?: { readonly text: string; readonly isRefusal: boolean };
}

type Fields = Readonly<Record<string, Field>>;

/** A formula of the sheet as the reader fills it in: one letter is asked for, what is typed for the others stays as it was typed. */
export class Filling {
  readonly id: string;
  /** The letter on the left first, then those on the right. */
  readonly letters: readonly QuantityName[];
  readonly #formula: SheetSolvable;
  ask: QuantityName = $state()!;
  fields: Fields = $state.raw({});
  /** What the address asked for and cannot be had. */
  notices: readonly string[] = $state.raw([]);
  #picked = $state(0);
  readonly #answer = $derived.by(() => sheetAnswer(this.#formula, this.ask, this.#given));

  /** *search* as {@link search} writes it; '' begins with the sheet's own numbers. */
  constructor(formula: SheetSolvable, search: string) {
    this.id = formula.id;
    this.#formula = formula;
    this.letters = [formula.gives, ...formula.from];
    this.startAnew();
    if (search !== '') this.#read(search);
  }

  /** All the answers, from small to large. */
  get found(): readonly Found[] {
    return this.#answer.kind === 'found' ? this.#answer.found : [];
  }

  /** What is said beside the answers, or in their stead. */
  get words(): string {
    return this.#answer.kind === 'found' ? this.#answer.more : this.#answer.why;
  }

  /** Which of the answers stands in the equation. */
  get picked(): number {
    return Math.min(this.#picked, this.found.length - 1);
  }

  /** The equation with the numbers put in. */
  get line(): FormulaLine {
    const one = this.found[this.picked];
    if (!one) return { words: 'No numbers here until there is an answer.' };
    return formulaLine(this.#formula, { ...this.#given, [this.ask]: middleOf(one) });
  }

  /** What the page's address says of it. */
  get search(): string {
    const parameters = new URLSearchParams({ formula: this.id, ask: this.ask });
    for (const [name, value] of Object.entries(this.#given)) {
      if (value !== undefined) parameters.set(name, plainNumber(value));
    }
    return `?${parameters.toString()}`;
  }

  get #given(): Readonly<Record<string, number | undefined>> {
    const others = this.letters.filter((name) => name !== this.ask);
    return Object.fromEntries(others.map((name) => [name, this.fields[name]!.value]));
  }

  /** Takes what is typed, at once where it can be read; what cannot is spoken of when the reader is done. */
  type(name: QuantityName, text: string): void {
    const reading = readQuantity(name, text);
    const value = reading.kind === 'value' ? reading.value : undefined;
    const asks = reading.kind === 'value' ? reading.asks : undefined;
    this.#put(name, { text, value, ...(asks && { notice: { text: asks, isRefusal: false } }) });
    this.#picked = 0;
  }

  /** The reader is done with a field: says what is wrong with it, and leaves it as it is. */
  settle(name: QuantityName): void {
    const { text } = this.fields[name]!;
    const reading = readQuantity(name, text);
    if (reading.kind === 'value') return;
    const why = reading.kind === 'blank' ? blankWords(name) : reading.message;
    this.#put(name, { text, notice: { text: why, isRefusal: true } });
  }

  /** Asks for another letter; the one asked for so far becomes a field with the answer in it. */
  askFor(name: QuantityName): void {
    const before = this.ask;
    const one = this.found[this.picked];
    if (one && Number.isFinite(one.least)) {
      this.#put(before, asTyped(before, middleOf(one)));
      this.settle(before);
    }
    this.ask = name;
    this.#picked = 0;
  }

  pick(index: number): void {
    this.#picked = index;
  }

  /** Back to the numbers that the sheet begins with, the letter on the left asked for. */
  startAnew(): void {
    const { gives, from } = this.#formula;
    const starts = Object.fromEntries(from.map((name) => [name, inField(name, this.#startOf(name))]));
    this.fields = { ...starts, [gives]: { text: '' } };
    this.ask = gives;
    const [first] = this.found;
    if (first) this.#put(gives, asTyped(gives, first.least));
    this.notices = [];
    this.#picked = 0;
  }

  /** The circle of confusion that the reader has set goes with them. */
  #startOf(name: QuantityName): number {
    const own = name === 'circle-of-confusion' ? ownCircle.read().value : null;
    return own ?? startOf(this.id, name);
  }

  #put(name: QuantityName, field: Field): void {
    this.fields = { ...this.fields, [name]: field };
  }

  #read(search: string): void {
    const ranges = this.letters.map((name): [string, Range] => [name, quantityOf(name)]);
    const options = Object.fromEntries(this.letters.map((name) => [name, { label: letterOf(name).name }]));
    const { inputs, choices, notices } = readAddress(search, {
      inputs: Object.fromEntries(ranges),
      choices: { ask: { label: 'I want to know', options } },
    });
    for (const [name, value] of Object.entries(inputs))
      this.#put(name as QuantityName, inField(name as QuantityName, value));
    if (choices['ask']) this.ask = choices['ask'] as QuantityName;
    this.notices = notices.map(({ text }) => text);
  }
}

/** Where there are many answers side by side, the one in their middle. */
function middleOf({ least, most }: Range): number {
  return least === most ? least : (least + most) / 2;
}
