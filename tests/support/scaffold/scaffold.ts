/** True where a text still holds a place that a scaffold left open: ⟨… and what belongs there. */
export const isUnfilled = (text: string) => text.includes('⟨…') || text.includes('is not written yet');

/** Files to begin a new piece with, and what to do with them. */
export interface Scaffold {
  /** Path from the repository's folder to text. */
  readonly files: Readonly<Record<string, string>>;
  readonly next: readonly string[];
}

/** An author's mistake, said in words that tell what to write instead. */
export class Refusal extends Error {
  override readonly name = 'Refusal';
}

/** Throws {@link Refusal} unless *name* is lower-case words joined by hyphens, as folders and files here are named. */
export function requireName(name: string, usage: string): void {
  if (!/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(name)) {
    throw new Refusal(
      `${name === '' ? 'A name is missing' : `"${name}" is no name of ours`}: lower-case words joined by hyphens. ${usage}`,
    );
  }
}
