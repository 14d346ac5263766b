/** What an evening consists of: steps of lessons, questions of the instructor's own, pauses. Minutes are whole. */
interface Common {
  readonly id: string;
  readonly minutes: number;
  /** For the instructor alone. */
  readonly note?: string;
}

/** A step of a lesson's demonstration, by its id. */
export interface StepItem extends Common {
  readonly kind: 'step';
  readonly lesson: string;
  readonly step: string;
}

/** A question of the instructor's own: hands are shown for its options, if it has any; its answer, if there is one. */
export interface QuestionItem extends Common {
  readonly kind: 'question';
  readonly question: string;
  readonly options: readonly string[];
  /** Which of them is so, counted from 0. */
  readonly holds?: number;
  /** What is said for the answer. */
  readonly caption?: string;
}

/** Something that is done without a question: a break, a hand on the gear. */
export interface PauseItem extends Common {
  readonly kind: 'pause';
  readonly title: string;
}

export type Item = StepItem | QuestionItem | PauseItem;
export type ItemKind = Item['kind'];
/** One that has no place in a plan yet. */
export type NewItem = Omit<StepItem, 'id'> | Omit<QuestionItem, 'id'> | Omit<PauseItem, 'id'>;

export interface Plan {
  readonly workshop: 'ring-and-ruler';
  readonly version: 2;
  readonly title: string;
  readonly items: readonly Item[];
}

export const emptyPlan: Plan = { workshop: 'ring-and-ruler', version: 2, title: 'An evening', items: [] };

/** More than any evening has. */
export const mostItems = 200;
/** Of one item, and of none: a moment. */
export const mostMinutes = 240;

/** A plan of these items, in this order. */
export const planOf = (title: string, items: readonly NewItem[]): Plan =>
  items.reduce(withItem, { ...emptyPlan, title });

/** The plan with *item* at its end, under an id of its own. */
export function withItem(plan: Plan, item: NewItem): Plan {
  return { ...plan, items: [...plan.items, { ...item, id: freeId(plan, item.kind) } as Item] };
}

/** The plan with *item* in the place of the one of the same id; as it was where another tab has removed that. */
export function withChanged(plan: Plan, item: Item): Plan {
  return { ...plan, items: plan.items.map((one) => (one.id === item.id ? item : one)) };
}

/** The plan without the item of this id. */
export function without(plan: Plan, id: string): Plan {
  return { ...plan, items: plan.items.filter((item) => item.id !== id) };
}

/** The plan with the item of this id at *place*, counted from 0; as near to it as there is a place. */
export function moved(plan: Plan, id: string, place: number): Plan {
  const item = plan.items.find((one) => one.id === id);
  if (!item) return plan;
  const rest = without(plan, id).items;
  return { ...plan, items: rest.toSpliced(Math.min(rest.length, Math.max(0, place)), 0, item) };
}

/** Minutes of all items together. */
export const minutesOf = (items: readonly Item[]): number => items.reduce((sum, { minutes }) => sum + minutes, 0);

/** Minutes from the beginning until each item begins. */
export function beginnings(items: readonly Item[]): readonly number[] {
  return items.map((_, index) => minutesOf(items.slice(0, index)));
}

/** The lessons of which there is a step, each once, in the order in which they come. */
export function lessonsIn(plan: Plan): readonly string[] {
  return [...new Set(plan.items.flatMap((item) => (item.kind === 'step' ? [item.lesson] : [])))];
}

/** What an item is for whoever counts hands: the same question has the same key in every plan. */
export const keyOf = (item: Item): string => {
  if (item.kind === 'step') return `${item.lesson}/${item.step}`;
  return item.kind === 'question' ? `own: ${item.question}` : item.id;
};

/** The first option that reads like one before it; undefined where all differ. */
export function repeatedOption(options: readonly string[]): string | undefined {
  const read = options.map((option) => option.replace(/\s+/g, ' ').trim());
  return options.find((_, index) => read.indexOf(read[index]!) < index);
}

/** The first id of this kind that no item has. */
function freeId({ items }: Plan, kind: ItemKind): string {
  const taken = new Set(items.map(({ id }) => id));
  let number = 1;
  while (taken.has(`${kind}-${number}`)) number++;
  return `${kind}-${number}`;
}
