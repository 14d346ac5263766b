import * as v from 'valibot';
import { mostItems, mostMinutes, repeatedOption, type Item, type Plan } from './plan.ts';

const longestTitle = 120;
const longestText = 300;
/** No more than a row of number keys counts, and a wall shows. */
export const mostOptions = 6;

/** Printed on one line: no characters that break it or turn it round. */
const line = (longest: number) =>
  v.pipe(v.string(), v.minLength(1), v.maxLength(longest), v.regex(/^[^\p{Cc}\p{Cf}\u2028\u2029]*$/u));
const count = (least: number, most: number) => v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));

const common = {
  id: v.pipe(v.string(), v.regex(/^[a-z0-9-]{1,40}$/)),
  minutes: count(0, mostMinutes),
  note: v.optional(line(longestText)),
};

const itemSchema = v.variant('kind', [
  v.strictObject({ ...common, kind: v.literal('step'), lesson: v.string(), step: v.string() }),
  v.strictObject({
    ...common,
    kind: v.literal('question'),
    question: line(longestText),
    options: v.pipe(v.array(line(60)), v.maxLength(mostOptions)),
    holds: v.optional(count(0, mostOptions - 1)),
    caption: v.optional(line(longestText)),
  }),
  v.strictObject({ ...common, kind: v.literal('pause'), title: line(longestTitle) }),
]);

const takes: Readonly<Record<string, string>> = {
  minutes: `its minutes are a whole number from 0 to ${mostMinutes}.`,
  note: `its note takes up to ${longestText} letters on one line.`,
  question: `its question takes 1 to ${longestText} letters on one line.`,
  options: `it has up to ${mostOptions} options of 1 to 60 letters.`,
  holds: 'the option that is so is none of its own.',
  caption: `its answer takes up to ${longestText} letters on one line.`,
  title: `its title takes 1 to ${longestTitle} letters on one line.`,
  kind: 'its kind is none of step, question and pause.',
  step: 'its step is not named.',
  lesson: 'its lesson is not named.',
  id: 'its id takes small letters, digits and hyphens.',
};

/** What became of something that may be a plan. */
export type PlanReading =
  { readonly kind: 'plan'; readonly plan: Plan } | { readonly kind: 'refused'; readonly message: string };

/** The steps of a lesson that there are, by id; and those that stood in their places when plans still counted them, where they stand otherwise now. */
export interface StepsOfLesson {
  readonly ids: readonly string[];
  readonly first?: readonly string[] | undefined;
}

/** The steps of every lesson, by slug. */
export type Steps = Readonly<Record<string, StepsOfLesson>>;

const refused = (message: string): PlanReading => ({ kind: 'refused', message });

/**
 * Reads what JSON holds as a plan for lessons with these *steps*.
 *
 * What is no plan is refused as a whole, in a sentence with the item, the field and what is accepted; nothing is mended in silence.
 */
export function readPlan(data: unknown, steps: Steps): PlanReading {
  if (!isRecord(data) || data['workshop'] !== 'ring-and-ruler') return refused('This is no plan of Ring and Ruler.');
  const { version, title, items, ...stray } = data;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refused('This plan does not say which version it is of.');
  }
  if (version > 2) {
    return refused(
      'This plan was saved by a later edition of the workbook. Load this page again while there is a network, then open it once more.',
    );
  }
  const foreign = Object.keys(stray).find((key) => key !== 'workshop');
  if (foreign !== undefined) return refused(`This plan says “${shortened(foreign)}”, which no plan has.`);
  if (!v.is(line(longestTitle), title))
    return refused(`This plan’s title takes 1 to ${longestTitle} letters on one line.`);
  if (!Array.isArray(items)) return refused('This plan holds no list of items.');
  if (items.length > mostItems) return refused(`This plan has ${items.length} items. A plan has ${mostItems} at most.`);
  const ids = new Set<string>();
  const read = version === 1 ? items.map((item) => withStepNamed(item, steps)) : items;
  for (const [index, item] of read.entries()) {
    const fault = itemFault(item, steps);
    if (fault !== undefined) return refused(`Item ${index + 1}: ${fault}`);
    const { id } = item as Item;
    if (ids.has(id)) return refused(`Item ${index + 1}: its id “${id}” is another item’s already.`);
    ids.add(id);
  }
  return { kind: 'plan', plan: { workshop: 'ring-and-ruler', version: 2, title, items: read as Item[] } };
}

/** An item of the first version, which named a step by its place, with that step's id; as it is where it names none that there was. */
function withStepNamed(item: unknown, steps: Steps): unknown {
  if (!isRecord(item) || item['kind'] !== 'step' || typeof item['step'] !== 'number') return item;
  const { lesson, step } = item;
  const known = typeof lesson === 'string' && Object.hasOwn(steps, lesson) ? steps[lesson] : undefined;
  return { ...item, step: (known?.first ?? known?.ids)?.[step - 1] ?? String(step) };
}

/** What is wrong with an item, in a sentence; undefined where nothing is. */
function itemFault(item: unknown, steps: Steps): string | undefined {
  if (!isRecord(item)) return 'it is not written as an item.';
  const { issues } = v.safeParse(itemSchema, item, { abortEarly: true });
  if (issues) {
    const key = String(issues[0].path?.[0]?.key ?? '');
    return takes[key] ?? `it says “${shortened(key)}”, which such an item has not.`;
  }
  const read = item as unknown as Item;
  const repeated = read.kind === 'question' ? repeatedOption(read.options) : undefined;
  if (repeated !== undefined)
    return `its option “${shortened(repeated)}” stands there twice: hands need different ones.`;
  if (read.kind === 'question' && read.holds !== undefined && read.holds >= read.options.length) return takes['holds'];
  if (read.kind !== 'step') return undefined;
  const known = Object.hasOwn(steps, read.lesson) ? steps[read.lesson] : undefined;
  if (known === undefined) return `there is no lesson “${shortened(read.lesson)}” in this edition.`;
  return known.ids.includes(read.step)
    ? undefined
    : `“${read.lesson}” has no step “${shortened(read.step)}” in this edition. Add the step that you mean instead of it.`;
}

const isRecord = (data: unknown): data is Readonly<Record<string, unknown>> =>
  typeof data === 'object' && data !== null && !Array.isArray(data);

const shortened = (text: string) => (text.length > 24 ? `${text.slice(0, 24)}…` : text);
