import { packed, unpacked } from '#site/state/packed.ts';
import type { Plan } from './plan.ts';
import { readPlan, type PlanReading, type Steps } from './schema.ts';

/** The largest file that is read, bytes: a plan of the most items, each with long texts, is smaller. */
export const largestFile = 500_000;

/** What is said of a file that is not even opened. */
export const tooLarge: PlanReading = {
  kind: 'refused',
  message: `This file is larger than any plan: ${largestFile / 1000} kB is the most.`,
};

/** A plan as the text of its file. */
export function fileOf(plan: Plan): string {
  return `${JSON.stringify(plan, undefined, 2)}\n`;
}

/** Reads the text of a file as a plan. What is none is refused in a sentence; no text makes this throw. */
export function readFile(text: string, steps: Steps): PlanReading {
  if (text.length > largestFile) return tooLarge;
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return { kind: 'refused', message: 'This file is not written as a plan is: it is not JSON.' };
  }
  return readPlan(data, steps);
}

/** What stands in an address before a plan; behind the #, which no server is told. */
export const mark = '#plan=';

/** A plan as the part of an address behind its #, packed in letters that an address may have. */
export async function hashOf(plan: Plan): Promise<string> {
  return mark + (await packed(JSON.stringify(plan)));
}

/** Reads a plan from the part of an address behind its #; undefined where that speaks of none. No address makes this throw. */
export async function readHash(hash: string, steps: Steps): Promise<PlanReading | undefined> {
  if (!hash.startsWith(mark)) return undefined;
  try {
    return readPlan(JSON.parse(await unpacked(hash.slice(mark.length), largestFile)), steps);
  } catch {
    return {
      kind: 'refused',
      message:
        'This link to a plan is damaged: part of it is missing, or it is no link to a plan. Copy all of it, or ask for the file.',
    };
  }
}
