/** What a glossary says of a word: a beginner understands the first sentence, a physicist accepts the second. */
export interface Explanation {
  /** The lesson of the course whose subject it is, by slug. */
  readonly taughtIn: string;
  /** One sentence in plain words. */
  readonly plain: string;
  /** One sentence or a definition, exact. */
  readonly exact: string;
  /** How prose writes it, without the plural's *s*; its name where not given, nothing where prose uses other words for it. */
  readonly forms?: readonly string[];
  /** What else people call it, for who looks for it. */
  readonly synonyms: readonly string[];
  /** Plain English that says by itself roughly what it is: prose may use it without having explained it. */
  readonly everyday: boolean;
}

type More = Partial<Pick<Explanation, 'forms' | 'synonyms' | 'everyday'>>;

/** A row of a table of explanations. */
export function explain(taughtIn: string, plain: string, exact: string, more: More = {}): Explanation {
  return { taughtIn, plain, exact, synonyms: [], everyday: false, ...more };
}
