import * as v from 'valibot';
import { stepIn, type Catalogue } from './catalogue.ts';
import { keyOf, mostItems, type Item, type Plan } from './plan.ts';

/** Where an evening stands: at an item, counted from 0, and whether its answer is shown. Behind the last item it closes. */
export interface Place {
  readonly index: number;
  readonly answered: boolean;
}

/** Hands counted, option by option. */
export type Hands = readonly number[];

/** One hand for an option of the question of this key. */
interface Counted {
  readonly key: string;
  readonly option: number;
}

/** All that the windows of one evening share, and that a computer keeps over the closing of its lid. */
export interface Evening {
  readonly version: 1;
  /** The item that is shown; empty at the closing. Its place is remembered for where it has gone from the plan. */
  readonly item: string;
  readonly index: number;
  readonly answered: boolean;
  readonly blank: boolean;
  /** The code for phones stands over the figure. */
  readonly phones: boolean;
  /** By the key of the question. */
  readonly hands: Readonly<Record<string, Hands>>;
  /** The hands that can be taken back, the last one last. */
  readonly counted?: readonly Counted[];
  /** When it began, ms since 1970; nothing before. */
  readonly began: number | null;
}

export const noEvening: Evening = {
  version: 1,
  item: '',
  index: 0,
  answered: false,
  blank: false,
  phones: false,
  hands: {},
  began: null,
};

/** No more than a hall holds. */
const mostHands = 999;
const mostCounted = 200;

const schema = v.strictObject({
  version: v.literal(1),
  item: v.pipe(v.string(), v.maxLength(40)),
  index: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(2 * mostItems)),
  answered: v.boolean(),
  blank: v.boolean(),
  phones: v.boolean(),
  hands: v.record(v.string(), v.array(v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(mostHands)))),
  counted: v.optional(
    v.pipe(
      v.array(v.strictObject({ key: v.string(), option: v.pipe(v.number(), v.integer(), v.minValue(0)) })),
      v.maxLength(mostCounted),
    ),
  ),
  began: v.nullable(v.pipe(v.number(), v.finite(), v.minValue(0))),
});

export const isEvening = (value: unknown): value is Evening => v.is(schema, value);

/** Whether an item has an answer of its own behind its question. */
export function hasAnswer(item: Item): boolean {
  return item.kind === 'step' || (item.kind === 'question' && (item.holds !== undefined || item.caption !== undefined));
}

/** Every place of an evening in its order: question, answer, next question, a pause once, the *pages* of the closing. */
export function placesOf({ items }: Plan, pages = 1): readonly Place[] {
  return [
    ...items.flatMap((item, index) => [
      { index, answered: false },
      ...(hasAnswer(item) ? [{ index, answered: true }] : []),
    ]),
    ...Array.from({ length: pages }, (_, page) => ({ index: items.length + page, answered: false })),
  ];
}

/** Where one goes from *place*, *by* presses on or back; it ends at the first question and the last page. */
export function placeAfter(plan: Plan, place: Place, by: number, pages = 1): Place {
  const places = placesOf(plan, pages);
  const at = places.findIndex(({ index, answered }) => index === place.index && answered === place.answered);
  return places[Math.min(places.length - 1, Math.max(0, Math.max(0, at) + by))]!;
}

/** Where an evening stands in *plan*: at its item wherever that has been moved to, else as near to it as there is one. */
export function placeIn(plan: Plan, { item, index, answered }: Evening, pages = 1): Place {
  const found = plan.items.findIndex(({ id }) => id === item);
  if (found >= 0) return { index: found, answered: answered && hasAnswer(plan.items[found]!) };
  return { index: Math.min(index, plan.items.length + pages - 1), answered: false };
}

/** The evening at another place; what covered the figure is gone. */
export function at(evening: Evening, plan: Plan, { index, answered }: Place): Evening {
  return { ...evening, item: plan.items[index]?.id ?? '', index, answered, blank: false, phones: false };
}

/** The query by which an address names a place, as `run`'s value; and the place that it names. */
export const placeText = ({ index, answered }: Place): string => `${index + 1}${answered ? 'a' : ''}`;

export function readPlace(text: string, plan: Plan, pages = 1): Place | undefined {
  const [, number, a] = /^(\d{1,3})(a?)$/.exec(text) ?? [];
  const index = Number(number) - 1;
  if (number === undefined || index < 0 || index >= plan.items.length + pages) return undefined;
  return { index, answered: a === 'a' && index < plan.items.length && hasAnswer(plan.items[index]!) };
}

/** What a room is asked: the question, what hands are shown for, and what is so. */
export interface Asked {
  readonly key: string;
  readonly question: string;
  readonly options: readonly string[];
  readonly holds: number | undefined;
}

/** What *item* asks a room; undefined for a pause. */
export function askedBy(item: Item | undefined, catalogue: Catalogue): Asked | undefined {
  if (!item || item.kind === 'pause') return undefined;
  const { question, options, holds } = item.kind === 'step' ? stepIn(catalogue, item) : item;
  return { key: keyOf(item), question, options, holds };
}

/** The hands for a question, none where they were counted for other options. */
export function handsFor({ hands }: Evening, { key, options }: Asked): Hands {
  const counted = Object.hasOwn(hands, key) ? hands[key]! : [];
  return counted.length === options.length ? counted : options.map(() => 0);
}

/** The evening with so many hands more, or fewer, for an option. */
export function withHands(evening: Evening, asked: Asked, option: number, more: number): Evening {
  const counted = handsFor(evening, asked).map((count, place) =>
    place === option ? Math.min(mostHands, Math.max(0, count + more)) : count,
  );
  return { ...evening, hands: { ...evening.hands, [asked.key]: counted } };
}

/** The evening with one hand more for an option: the next to be taken back. */
export function withHand(evening: Evening, asked: Asked, option: number): Evening {
  const counted = [...(evening.counted ?? []), { key: asked.key, option }].slice(-mostCounted);
  return { ...withHands(evening, asked, option, 1), counted };
}

/** The evening without the hand that was counted last, where that was for this question. */
export function withoutLastHand(evening: Evening, asked: Asked): Evening {
  const last = evening.counted?.at(-1);
  if (last?.key !== asked.key) return evening;
  return { ...withHands(evening, asked, last.option, -1), counted: evening.counted!.slice(0, -1) };
}

/** A question that hands were counted for, in the order of the plan: what the room believed. */
export interface Believed {
  readonly asked: Asked;
  readonly hands: Hands;
  readonly all: number;
}

export function believed(plan: Plan, evening: Evening, catalogue: Catalogue): readonly Believed[] {
  const seen = new Set<string>();
  return plan.items.flatMap((item) => {
    const asked = askedBy(item, catalogue);
    if (!asked || seen.has(asked.key)) return [];
    seen.add(asked.key);
    const hands = handsFor(evening, asked);
    const all = hands.reduce((sum, count) => sum + count, 0);
    return all > 0 ? [{ asked, hands, all }] : [];
  });
}

/** So many questions a wall shows at once, legible from the back. */
export const onOnePage = 4;

/** The pages of the closing: at least one. */
export const pagesFor = (all: readonly Believed[]): number => Math.max(1, Math.ceil(all.length / onOnePage));
