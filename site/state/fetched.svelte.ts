/** A piece of the page's code that is fetched once something is seen without it. Where the network does not give it, it can be asked for again. */
export class Fetched<Piece> {
  here: Piece | undefined = $state.raw();
  /** It did not come. */
  isMissing = $state.raw(false);
  #coming: Promise<void> | undefined;
  readonly #load: () => Promise<Piece>;

  constructor(load: () => Promise<Piece>) {
    this.#load = load;
  }

  fetch(): void {
    if (this.here || this.#coming) return;
    this.#coming = this.#load().then(
      (piece) => {
        this.here = piece;
        this.isMissing = false;
      },
      () => {
        this.isMissing = true;
        this.#coming = undefined;
      },
    );
  }
}
