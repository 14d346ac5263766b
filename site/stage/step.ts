/** What a figure is set to: inputs in base units by id, choices by name. The rest is at the lesson's start. */
export type Setting = Readonly<Record<string, number | string>>;

/** One step of a lesson's demonstration: the projected view asks, then the figure moves and the view says what happened. */
export interface StageStep {
  /** What plans, links and papers know it by, for ever: small letters, digits, hyphens. No other step of its lesson has had it. */
  readonly id: string;
  /** One question for the room, answered by a show of hands. */
  readonly question: string;
  /** What hands may be shown for, in few words, in the order in which the question names it. */
  readonly options: readonly string[];
  /** Which of them is so, counted from 0. */
  readonly holds: number;
  /** One caption for the answer; `{magnification}` stands for that quantity as the figure has it now. */
  readonly caption: string;
  /** What the figure is set to for the answer. */
  readonly set?: Setting;
  /** What it is set to while the question is open, where that is not what the step before left. */
  readonly from?: Setting;
  /** The sheet to show where a lesson has several. */
  readonly sheet?: string;
  /** Quantities by id whose words and lines the figure leaves out while the question is open: they would answer it. */
  readonly withheld?: readonly string[];
  /** How a picture is arranged, one way for both or question and answer each its own: 'side-by-side', 'divided', 'difference' or 'enlarged' where it differs most. */
  readonly arranged?: string | { readonly asked: string; readonly answered: string };
}

/** Where a demonstration stands: at a step, counted from 1, and whether its answer is shown. */
export interface Place {
  readonly step: number;
  readonly answered: boolean;
}

/** What the figure is set to at *place* of *stage*: while a question is open, as the step before left it. */
export function settingAt(stage: readonly StageStep[], { step, answered }: Place): Setting {
  const here = stage[step - 1];
  return (answered ? here?.set : (here?.from ?? stage[step - 2]?.set)) ?? {};
}

/** The query that opens a lesson at *place* of *stage*, the figure set as it is there. */
export function stepAddress(stage: readonly StageStep[], place: Place): string {
  const { id, sheet, arranged } = stage[place.step - 1]!;
  const parameters = new URLSearchParams({ stage: id });
  if (place.answered) parameters.set('answered', '');
  if (sheet !== undefined) parameters.set('sheet', sheet);
  const now = typeof arranged === 'object' ? arranged[place.answered ? 'answered' : 'asked'] : arranged;
  if (now !== undefined) parameters.set('arranged', now);
  for (const [name, value] of Object.entries(settingAt(stage, place))) parameters.set(name, String(value));
  return `?${parameters.toString()}`;
}

/** The place that a query names, or nothing where it names none of the steps: each has the *names* by which it is known, its id first. */
export function placeIn(search: string, names: readonly (readonly string[])[]): Place | undefined {
  const parameters = new URLSearchParams(search);
  const named = parameters.get('stage') ?? '';
  const step = names.findIndex((all) => all.includes(named)) + 1;
  return step > 0 ? { step, answered: parameters.has('answered') } : undefined;
}

/** What a query calls a step, as far as it is quoted, where none has that name. */
export function unknownStepIn(search: string, names: readonly (readonly string[])[]): string | undefined {
  return placeIn(search, names) ? undefined : new URLSearchParams(search).get('stage')?.slice(0, 24);
}

/** True where a query says where it stands in the demonstration and nothing of the figure. */
export function namesPlaceOnly(search: string): boolean {
  const names = [...new URLSearchParams(search).keys()];
  return names.includes('stage') && names.every((name) => name === 'stage' || name === 'answered');
}

/** Where one goes from *place*, *by* presses on or back: question, answer, next question; it ends at the first question and the last answer. */
export function placeAfter({ step, answered }: Place, by: number, count: number): Place {
  const press = Math.min(2 * count - 1, Math.max(0, 2 * (step - 1) + Number(answered) + by));
  return { step: Math.floor(press / 2) + 1, answered: press % 2 === 1 };
}
