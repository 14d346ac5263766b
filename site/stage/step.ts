/** One step of a lesson's demonstration: what the projected view asks, shows and says. */
export interface StageStep {
  /** One question for the room. */
  readonly question: string;
  /** One caption; `{magnification}` stands for that quantity as the figure has it now. */
  readonly caption: string;
  /** What the figure is set to, base units; the rest goes back to the lesson's start. */
  readonly set?: Readonly<Record<string, number | string>>;
  /** The sheet to show where a lesson has several. */
  readonly sheet?: string;
}

/** The query that opens a lesson at step *number* (from 1), set as the step says. */
export function stepAddress(step: StageStep, number: number): string {
  const parameters = new URLSearchParams({ stage: String(number) });
  if (step.sheet !== undefined) parameters.set('sheet', step.sheet);
  for (const [name, value] of Object.entries(step.set ?? {})) parameters.set(name, String(value));
  return `?${parameters.toString()}`;
}
