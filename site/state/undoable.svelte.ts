/** So many steps can be taken back. */
const most = 20;

/** What a page is set to, what was said of it last, and the way back: what is done can be undone, what is only set is set back by hand. */
export class Undoable<State> {
  now: State = $state.raw()!;
  said = $state.raw('');
  /** What could not be used of an address. */
  notices: readonly string[] = $state.raw([]);
  #before: readonly State[] = $state.raw([]);
  readonly #onset: () => void;

  constructor(start: State, onset: () => void) {
    this.now = start;
    this.#onset = onset;
  }

  get canUndo(): boolean {
    return this.#before.length > 0;
  }

  /** It is another now. With *words* something was done: they say what, and it can be undone. */
  set(state: State, words?: string): void {
    if (words !== undefined) {
      this.#before = [...this.#before.slice(1 - most), this.now];
      this.said = words;
    }
    this.now = state;
    this.notices = [];
    this.#onset();
  }

  /** As it was before what was done last; nothing where nothing was. */
  undo(): void {
    const last = this.#before.at(-1);
    if (last === undefined) return;
    this.now = last;
    this.#before = this.#before.slice(0, -1);
    this.said = 'As it was before.';
    this.#onset();
  }

  /** What an address says takes the place of all that was done. */
  open(state: State, notices: readonly string[]): void {
    this.now = state;
    this.notices = notices;
    this.said = '';
    this.#before = [];
  }
}
