import { beginOf, dealtFrames, secondsOf } from './dealt.ts';

/** A hand that rocks a camera when it is asked to, and takes frames: deal after deal of forty, until it is stopped. */
export class Hand {
  /** Which deal is seen, counted from 0. */
  turn = $state.raw(0);
  /** Frames of it that have been taken: all, until somebody rocks. */
  taken = $state.raw(dealtFrames);
  isRocking = $state.raw(false);
  /** Where the hand is on its way, seconds; nowhere while it rests. */
  seconds: number | undefined = $state.raw();

  /** A deal is under way: what can be dealt is the rest of it. */
  get isAmidDeal(): boolean {
    return this.isRocking || this.taken < dealtFrames;
  }

  /** The whole of the next forty at once; of a deal that is under way, what is left of it. */
  deal(): void {
    if (!this.isAmidDeal) this.turn += 1;
    this.isRocking = false;
    this.seconds = undefined;
    this.taken = dealtFrames;
  }

  /** Rocks on, or stops. Who wants no motion gets the frames at once. */
  toggle(wantsNoMotion: boolean): void {
    if (wantsNoMotion) this.deal();
    else if (this.isRocking) this.stop();
    else {
      if (this.taken === dealtFrames) this.#begin(this.turn + 1);
      this.isRocking = true;
    }
  }

  stop(): void {
    this.isRocking = false;
  }

  /** Rocks for so many *seconds* more. */
  advance(seconds: number): void {
    const now = (this.seconds ?? beginOf(this.turn)) + seconds;
    if (now >= beginOf(this.turn + 1)) this.#begin(this.turn + 1);
    this.seconds = now;
    this.taken = secondsOf(this.turn).filter((second) => second <= now).length;
  }

  #begin(turn: number): void {
    this.turn = turn;
    this.taken = 0;
    this.seconds = beginOf(turn);
  }
}
