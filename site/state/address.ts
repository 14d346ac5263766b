import { plainNumber, readPlainNumber } from '#core/quantity/plain-number.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import type { Notice } from './notice.ts';

export interface Range {
  readonly least: number;
  readonly most: number;
}

/** What a page's address may set: inputs by quantity, choices by name. */
export interface AddressPlan {
  readonly inputs: Readonly<Record<string, Range>>;
  readonly choices: Readonly<Record<string, readonly string[]>>;
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
    const range = Object.hasOwn(plan.inputs, name) ? plan.inputs[name] : undefined;
    const options = Object.hasOwn(plan.choices, name) ? plan.choices[name] : undefined;
    if (range) {
      const value = readPlainNumber(text);
      if (value !== undefined && value >= range.least && value <= range.most) inputs[name] = value;
      else notices.push({ field: name, text: inputNotice(name as QuantityName, text, range) });
    } else if (options) {
      if (options.includes(text)) choices[name] = text;
      else notices.push({ field: name, text: choiceNotice(name, text, options) });
    }
  }
  return { inputs, choices, notices };
}

function inputNotice(name: QuantityName, text: string, range: Range): string {
  const { name: words, base } = quantityOf(name);
  const unit = base === '' ? '' : ` in ${base}`;
  return `The link gives ${words} as “${shorten(text)}”. Accepted: a plain number${unit}, from ${plainNumber(range.least)} to ${plainNumber(range.most)}. It was left as it was.`;
}

function choiceNotice(name: string, text: string, options: readonly string[]): string {
  return `The link asks for ${name} “${shorten(text)}”, which is not here. Choose from: ${options.join(', ')}.`;
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

/** Sets or (with undefined) removes one parameter of *search*. */
export function withParameter(search: string, name: string, value: string | undefined): string {
  const parameters = new URLSearchParams(search);
  if (value === undefined) parameters.delete(name);
  else parameters.set(name, value);
  return withQuestionMark(parameters);
}

function withQuestionMark(parameters: URLSearchParams): string {
  const text = parameters.toString();
  return text === '' ? '' : `?${text}`;
}
