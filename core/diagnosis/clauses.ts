import { namedBy } from './meanings.ts';
import { asPlainNumber, type WrittenNumber } from './written-numbers.ts';

/** Ends of what belongs to a number, a colon right after it among them; “focused at” and the like go on. */
export const separators =
  /^\s*:|[,;?→]|[-=]>|(?=\b(?:what|which|how)\b)|\b(?:and|with|plus|then|using)\b|(?<!\b(?:focus|focused|focussed|flash|light|lamp|moving|turned|shift|image|bellows) )\b(?:on|onto|at)\b/giu;

/** A lens is turned round. */
export const turnedWords = /revers|turned|backwards/i;

/** A number with the words that belong to it. */
export interface Clause {
  readonly number: WrittenNumber;
  readonly before: string;
  readonly after: string;
  /** True of 50 mm in “36 mm ring on 50 mm”, “with 50 mm”: it is what the thing before stands on, not one more of it. */
  readonly isCarrier: boolean;
  /** True of 22.3 mm in “6960 pixels on 22.3 mm”: pixels stand on a sensor. */
  readonly isUnderPixels: boolean;
  /** True of 200 mm in “designed for 200 mm”: so long a tube lens an objective is made for. */
  readonly isDesign: boolean;
  /** True of f/1.8 in “50 mm f/1.8 at f/8”: it stands on the lens, and another is set. */
  readonly isPrinted: boolean;
  /** True of f/16 in “at f/8 and at f/16”. */
  readonly isSet: boolean;
  /** True of 50 mm in “50 mm f/2”. */
  readonly hasOpening: boolean;
  /** Of an f-number right behind a focal length: that length. */
  readonly beside?: WrittenNumber;
}

/** Each number with its words: those up to the next separator, and where none stands between two numbers, those that name one of them. */
export function clausesOf(text: string, numbers: readonly WrittenNumber[]): readonly Clause[] {
  const ends = numbers.map(({ end }) => end);
  const leads = numbers.map(({ start }, index) => text.slice(ends[index - 1] ?? 0, start));
  let before = shares(leads[0] ?? '').last;
  const clauses = numbers.map((number, index) => {
    const next = numbers.slice(index + 1).find(({ start }) => start >= number.end);
    const gap = text.slice(number.end, next?.start ?? text.length);
    const { first, last, isParted } = shares(gap);
    const own = before;
    const after = isParted || !next ? first : ownShare(number.text, own, gap);
    // The second of a pair has the words of the first.
    if (ends[index + 1] !== number.end) before = isParted ? last : gap.slice(after.length);
    const isCarrier = /\b(?:on(?:to)?|with)(?: an?| the| my)?\s*$/i.test(leads[index]!);
    const isUnderPixels = pixelUnits.test(numbers[index - 1]?.unit ?? '') && across.test(leads[index]!);
    return { number, before: own, after, isCarrier, isUnderPixels, isDesign: design.test(leads[index]!) };
  });
  const isBeside = (index: number) =>
    clauses[index]?.number.form === 'f-number' &&
    clauses[index - 1]?.number.unit === 'mm' &&
    /^(?: lens)?\s*$/i.test(leads[index]!);
  return clauses.map((clause, index) => ({
    ...clause,
    // “50 mm f/1.8 reversed”: the lens is, whatever stands between.
    after:
      isBeside(index + 1) && turnedWords.test(clauses[index + 1]!.after) ? clauses[index + 1]!.after : clause.after,
    isSet: set.test(leads[index]!),
    hasOpening: isBeside(index + 1),
    isPrinted: isPrinted(clauses, leads, index, isBeside(index)),
    ...(isBeside(index) && { beside: clauses[index - 1]!.number }),
  }));
}

/** Pixels that are counted. */
export const pixelUnits = /^(?:mp|mpx|megapixels?|px|pixels?)$/;

/** What stands between pixels that are counted and the width on which they stand. */
const across = /^\s*(?:(?:across|along|on|over|in|of|wide|an?|the|sensor)\b\s*)+$/i;

/** What an objective is made for comes next. */
export const designedFor = String.raw`\b(?:designed|made|meant|corrected|computed|calculated|built) for`;
const design = new RegExp(String.raw`${designedFor}(?: use)?(?: with| on)?(?: an?| the)?\s*$`, 'i');

const set = /(?:\b(?:at|to)|@)\s*$/i;

/** Whether an f-number is the widest of a lens: it stands with the lens, or what is set follows with “at”, and is no wider. */
function isPrinted(
  clauses: readonly Pick<Clause, 'number' | 'before' | 'after'>[],
  leads: readonly string[],
  index: number,
  isBeside: boolean,
): boolean {
  const { number, after } = clauses[index]!;
  if (number.form !== 'f-number' || set.test(leads[index]!)) return false;
  const next = clauses.findIndex((clause, at) => at > index && clause.number.form === 'f-number');
  const [other, lead] = [clauses[next], leads[next]];
  if (!other || lead === undefined || namedBy(other.number.text, other.before, other.after).length > 0) return false;
  const value = ({ text }: WrittenNumber) => asPlainNumber({ text: text.slice(2) });
  if (value(other.number) < value(number)) return false;
  const isWithLens = isBeside || /^ ?(?:\p{L}+ )?(?:lens|macro|prime|tele)\b/iu.test(after);
  return set.test(lead) || (isWithLens && /(?:[,;]|\b(?:and|with|using|lens|macro|prime|tele))\s*$/i.test(lead));
}

/** Of words between two numbers that nothing separates, what names the first: the fewest from the start, and none where it has its name already. */
function ownShare(number: string, before: string, gap: string): string {
  if (namedBy(number, before, '').length > 0) return '';
  const ends = [...gap.matchAll(/\S+/g)].map(({ 0: word, index }) => index + word.length);
  const end = ends.find((one) => namedBy(number, '', gap.slice(0, one)).length > 0);
  return end === undefined ? '' : gap.slice(0, end);
}

/** Of the words between two numbers, what the first separator and the last leave at the ends. */
function shares(gap: string): { first: string; last: string; isParted: boolean } {
  const marks = [...gap.matchAll(separators)];
  const [from, to] = [marks[0], marks.at(-1)];
  if (!from || !to) return { first: gap, last: gap, isParted: false };
  return { first: gap.slice(0, from.index), last: gap.slice(to.index + to[0].length), isParted: true };
}
