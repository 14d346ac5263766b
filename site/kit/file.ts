import type { Kit } from './part.ts';
import { readKit, type KitReading } from './schema.ts';

/** The largest file that is read, bytes: a kit of the most parts has a third of it. */
export const largestFile = 500_000;

/** A kit as the text of its file. */
export function fileOf(kit: Kit): string {
  return `${JSON.stringify(kit, undefined, 2)}\n`;
}

/** Reads the text of a file as a kit. What is none is refused in a sentence; no text makes this throw. */
export function readFile(text: string): KitReading {
  if (text.length > largestFile) return { kind: 'refused', message: tooLarge };
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return { kind: 'refused', message: 'This file is not written as a kit is: it is not JSON.' };
  }
  return readKit(data);
}

/** What is said of a file that is not even opened. */
export const tooLarge = `This file is larger than any kit: ${largestFile / 1000} kB is the most.`;
