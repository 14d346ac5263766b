/** What was found in storage: the value to use, and in words what was wrong where something else lay there. */
export interface Found<T> {
  readonly value: T;
  readonly notice?: string;
}

/**
 * One value kept on the reader's machine. Storage may be full, forbidden or hold what another version left:
 * reading then gives the default and says so, and writing what does not fit is given up, for nothing is lost on the page.
 */
export interface Stored<T> {
  read(): Found<T>;
  write(value: T): void;
}

export interface StoredPlan<T> {
  readonly key: string;
  /** What is kept, in the reader's words: "choice of colours". */
  readonly words: string;
  /** What is accepted, in words. */
  readonly accepted: string;
  readonly fallback: T;
  readonly isValid: (value: unknown) => value is T;
}

export function stored<T>({ key, words, accepted, fallback, isValid }: StoredPlan<T>): Stored<T> {
  const name = `ring-and-ruler.${key}`;
  const refused = {
    value: fallback,
    notice: `The stored ${words} could not be read and is left out; accepted: ${accepted}. Choosing again replaces it.`,
  };
  return {
    read() {
      let text: string | null;
      try {
        text = localStorage.getItem(name);
      } catch {
        return { value: fallback };
      }
      if (text === null) return { value: fallback };
      try {
        const value: unknown = JSON.parse(text);
        return isValid(value) ? { value } : refused;
      } catch {
        return refused;
      }
    },
    write(value) {
      try {
        localStorage.setItem(name, JSON.stringify(value));
      } catch {
        // A page that cannot remember still works.
      }
    },
  };
}
