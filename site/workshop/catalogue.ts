/** One step of a lesson as an evening needs it. */
export interface ListedStep {
  readonly id: string;
  readonly question: string;
  readonly options: readonly string[];
  readonly holds: number;
  /** Caption with `{quantity}` marks, for a figure that is moved; and filled, as the step sets it. */
  readonly caption: string;
  readonly answer: string;
  /** Queries that set the figure: at its question, at its answer. */
  readonly asked: string;
  readonly answered: string;
  readonly withheld: readonly string[];
}

/** A question that rooms ask, and what is said then. */
export interface RoomQuestion {
  readonly asks: string;
  readonly says: string;
}

/** One lesson as an evening needs it. */
export interface ListedLesson {
  readonly slug: string;
  /** In the course, counted from 1. */
  readonly place: number;
  readonly question: string;
  readonly summary: string;
  /** The lesson's own address within the site. */
  readonly path: string;
  /** Minutes for one step, from what the whole lesson takes. */
  readonly minutesOfStep: number;
  readonly steps: readonly ListedStep[];
  /** Its steps by id as they stood when plans counted places, where they stand otherwise now. */
  readonly first?: readonly string[];
  /** What its figure is given while the site is built, as data. */
  readonly given?: object;
  /** Its main formulas, by the names of their files. */
  readonly formulas: readonly string[];
  readonly bring: readonly string[];
  /** What is to be said aloud of risks; empty where the lesson has none. */
  readonly caution: string;
  /** What the lesson tells its instructor first, and what rooms ask. */
  readonly opening: string;
  readonly roomAsks: readonly RoomQuestion[];
}

/** All written lessons by slug, in the order of the course. */
export type Catalogue = Readonly<Record<string, ListedLesson>>;

/** The step of a lesson by its id. Both are there: what comes from outside is held to the catalogue as it is read. */
export function stepIn(
  catalogue: Catalogue,
  { lesson, step }: { readonly lesson: string; readonly step: string },
): ListedStep {
  return catalogue[lesson]!.steps.find(({ id }) => id === step)!;
}
