import type { laterSheets } from './later-sheets.ts';

/** The sheets behind the first: the page has that before it fetches these. */
class Later {
  here: typeof laterSheets | undefined = $state.raw();

  fetch(): void {
    if (this.here) return;
    void import('./later-sheets.ts').then(
      (fetched) => (this.here = fetched.laterSheets),
      () => undefined,
    );
  }
}

export const later = new Later();

// What is drawn while the site is built waits for nothing; browsers are sent none of this.
if (import.meta.env.SSR) later.here = (await import('./later-sheets.ts')).laterSheets;
