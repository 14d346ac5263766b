import { plainNumber, readPlainNumber } from '#core/quantity/plain-number.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import type { Notice } from './notice.ts';

export interface Range {
  readonly least: number;
  readonly most: number;
}

interface Labelled {
  readonly label: string;
}

/** What a page's address may set: inputs by quantity, choices by name and their options by slug. */
export interface AddressPlan {
  /** By quantity; what is none has a label of its own. */
  readonly inputs: Readonly<Record<string, Range & Partial<Labelled>>>;
  readonly choices: Readonly<
    Record<
      string,
      Labelled & {
        readonly options: Readonly<Record<string, Labelled>>;
        /** What may stand there beside the options. */
        readonly spelled?: (text: string) => string | undefined;
      }
    >
  >;
}

export interface AddressReading {
  readonly inputs: Readonly<Record<string, number>>;
  readonly choices: Readonly<Record<string, string>>;
  readonly notices: readonly Notice[];
}

/**
 * Reads `?focal-length=50&sensor=body-36x24`. Numbers are in base units.
 *
 * What is unreadable or out of range is left out and named in a notice; parameters that are not the page's own are ignored.
 */
export function readAddress(search: string, plan: AddressPlan): AddressReading {
  const inputs: Record<string, number> = {};
  const choices: Record<string, string> = {};
  const notices: Notice[] = [];
  for (const [name, text] of new URLSearchParams(search)) {
    const say = (words: string, accepted: string) =>
      notices.push({
        field: name,
        text: `The link sets ${words} to “${shorten(text)}”, which this page cannot use. ${accepted}. Its usual value is shown.`,
      });
    if (Object.hasOwn(plan.inputs, name)) {
      const { least, most, label } = plan.inputs[name]!;
      const value = readPlainNumber(text);
      if (value !== undefined && value >= least && value <= most) inputs[name] = value;
      else {
        const { name: words, base } =
          label === undefined ? quantityOf(name as QuantityName) : { name: label, base: '' };
        const ends = `from ${plainNumber(least)} to ${plainNumber(most)}`;
        say(words, `It takes a plain number${base && ` in ${base}`} ${ends}`);
      }
    } else if (Object.hasOwn(plan.choices, name)) {
      const { label, options, spelled } = plan.choices[name]!;
      if (Object.hasOwn(options, text) || spelled?.(text) !== undefined) choices[name] = text;
      else
        say(
          `“${label}”`,
          `The choices are: ${Object.values(options)
            .map((option) => option.label)
            .join(', ')}`,
        );
    }
  }
  return { inputs, choices, notices };
}

/** Foreign text is quoted back in part: enough to recognise, too little to flood the page. */
function shorten(text: string): string {
  return text.length > 24 ? `${text.slice(0, 24)}…` : text;
}

/** The search string that sets *values* on top of *search*, keeping parameters it does not know; '' when nothing is set. */
export function writeAddress(
  search: string,
  values: Readonly<Record<string, number>>,
  starts: Readonly<Record<string, number>>,
): string {
  const parameters = new URLSearchParams(search);
  for (const [name, value] of Object.entries(values)) {
    if (value === starts[name]) parameters.delete(name);
    else parameters.set(name, plainNumber(value));
  }
  return withQuestionMark(parameters);
}

/** Sets or (with no value) removes one parameter of *search*. */
export function withParameter(search: string, name: string, value: string | null | undefined): string {
  const parameters = new URLSearchParams(search);
  if (value === undefined || value === null) parameters.delete(name);
  else parameters.set(name, value);
  return withQuestionMark(parameters);
}

function withQuestionMark(parameters: URLSearchParams): string {
  const text = parameters.toString();
  return text === '' ? '' : `?${text}`;
}
