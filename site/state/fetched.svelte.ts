/** A piece of the page's code that is fetched once something is seen without it. Where the network does not give it, it can be asked for again. */
export class Fetched<Piece> {
  here: Piece | undefined = $state.raw();
  /** It did not come. */
  isMissing = $state.raw(false);
  #isComing = false;
  readonly #load: () => Promise<Piece>;

  constructor(load: () => Promise<Piece>) {
    this.#load = load;
  }

  fetch(): void {
    if (this.here || this.#isComing) return;
    this.#isComing = true;
    const end = (isMissing: boolean) => {
      this.#isComing = false;
      this.isMissing = isMissing;
    };
    void this.#load().then(
      (piece) => {
        this.here = piece;
        end(false);
      },
      () => end(true),
    );
  }
}
