/**
 * One value kept on the reader's machine. Storage may be full, forbidden or hold what another version left:
 * reading then gives the default, and writing what does not fit is given up in silence, for nothing is lost on the page.
 */
export interface Stored<T> {
  read(): T;
  write(value: T): void;
}

export function stored<T>(key: string, fallback: T, isValid: (value: unknown) => value is T): Stored<T> {
  const name = `ring-and-ruler.${key}`;
  return {
    read() {
      try {
        const value: unknown = JSON.parse(localStorage.getItem(name) ?? 'null');
        return isValid(value) ? value : fallback;
      } catch {
        return fallback;
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
