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
  /** Takes what is stored at this moment, by another tab perhaps, makes of it what *how* says, stores that and gives it. */
  change(how: (value: T) => T): T;
  /** The text of what lies there and cannot be read, or was put aside since; undefined where there is none. */
  unread(): string | undefined;
  /** Erases what {@link unread} gives: the reader has it, or does not want it. */
  forgetUnread(): void;
  /** Calls *listener* whenever another tab has stored something; returns the way to stop. */
  onChanged(listener: (found: Found<T>) => void): () => void;
}

export interface StoredPlan<T> {
  readonly key: string;
  /** What is kept, in the reader's words: "choice of colours". */
  readonly words: string;
  /** A sentence: how a new one comes about. */
  readonly renewed: string;
  readonly fallback: T;
  readonly isValid: (value: unknown) => value is T;
  /** Brings what an earlier edition stored up to date, before it is looked at; throws or gives what is not valid for anything else. */
  readonly upgraded?: (value: unknown) => unknown;
}

export function stored<T>({ key, words, renewed, fallback, isValid, upgraded }: StoredPlan<T>): Stored<T> {
  const name = `ring-and-ruler.${key}`;
  const refused = {
    value: fallback,
    notice: `This browser’s saved ${words} could not be read, so the page starts without it. ${renewed}`,
  };
  /** What cannot be read is put aside before something else takes its place: nothing that was kept is lost. */
  const putAside = () => {
    const text = localStorage.getItem(name);
    if (text !== null && reading(text) === refused) localStorage.setItem(`${name}.put-aside`, text);
  };
  const reading = (text: string): Found<T> => {
    try {
      const parsed: unknown = JSON.parse(text);
      const value = upgraded ? upgraded(parsed) : parsed;
      return isValid(value) ? { value } : refused;
    } catch {
      return refused;
    }
  };
  const store: Stored<T> = {
    read() {
      let text: string | null;
      try {
        text = localStorage.getItem(name);
      } catch {
        return { value: fallback };
      }
      return text === null ? { value: fallback } : reading(text);
    },
    write(value) {
      try {
        putAside();
        localStorage.setItem(name, JSON.stringify(value));
      } catch {
        // A page that cannot remember still works.
      }
    },
    change(how) {
      const value = how(store.read().value);
      store.write(value);
      return value;
    },
    unread() {
      try {
        const text = localStorage.getItem(name);
        const lies = text !== null && reading(text) === refused ? text : localStorage.getItem(`${name}.put-aside`);
        return lies ?? undefined;
      } catch {
        return undefined;
      }
    },
    forgetUnread() {
      try {
        const text = localStorage.getItem(name);
        if (text !== null && reading(text) === refused) localStorage.removeItem(name);
        else localStorage.removeItem(`${name}.put-aside`);
      } catch {
        // Nothing could be kept, so nothing is there.
      }
    },
    onChanged(listener) {
      // Only the other tabs of the same site hear this; a key of null is everything being erased.
      const hear = ({ key }: StorageEvent) => {
        if (key === name || key === null) listener(store.read());
      };
      window.addEventListener('storage', hear);
      return () => window.removeEventListener('storage', hear);
    },
  };
  return store;
}

/** Whether anything is stored under a key, without a look at what. */
export function isStored(key: string): boolean {
  try {
    return localStorage.getItem(`ring-and-ruler.${key}`) !== null;
  } catch {
    return false;
  }
}
