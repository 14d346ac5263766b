import { refusalInWords } from '#site/state/answer.ts';
import { stopwatch } from '#site/state/stopwatch.ts';
import { finished, sketch, sketchAfter, type PictureJob } from './job.ts';
import type { Developed, Order, Report } from './messages.ts';

/** What a figure is told while its pictures are made. */
export interface Told {
  /** From 0 to 1 while the fine picture is being made; undefined when nothing is. */
  progress: (share: number | undefined) => void;
  picture: (developed: Developed, isSketch: boolean) => void;
  /** In words why there is no picture. */
  failed: (words: string) => void;
}

/** Where orders go: a worker, or in tests something like one. */
export interface Shop {
  send: (order: Order) => void;
  close: () => void;
}
type Stage = 'sketch' | 'finished';

export type OpenShop = (heard: (report: Report) => void, broken: (words: string) => void) => Shop;

const unavailable =
  'This browser does not let the page work in the background, so no picture is drawn here. The other sheets and all numbers still work.';

/** A worker, started when its first picture is wanted. */
export const openWorker: OpenShop = (heard, broken) => {
  try {
    const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<Report>) => heard(data);
    worker.onerror = (event) => {
      event.preventDefault();
      broken(unavailable);
    };
    return { send: (order) => worker.postMessage(order), close: () => worker.terminate() };
  } catch {
    broken(unavailable);
    return { send: () => undefined, close: () => undefined };
  }
};

/**
 * Has pictures made: a sketch at once while a hand moves, the fine picture when it rests. Each has a worker of its own, so that no sketch
 * waits for the fine one to be left off, and both keep the subject as they last drew it.
 *
 * A sketch under way is let finish, so that something moves on the screen however fast the hand is; the fine one is left off as soon as
 * another picture is wanted.
 */
export class Developer {
  readonly #told: Told;
  readonly #open: OpenShop;
  readonly #pause: number;
  readonly #shops = new Map<Stage, Shop>();
  #sketch = sketch;
  #wanted: PictureJob | undefined;
  /** The last job ordered, to tell it from another. */
  #ordered: string | undefined;
  #id = 0;
  #busy: { readonly job: PictureJob; readonly stage: Stage; readonly took: () => number } | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(told: Told, open: OpenShop = openWorker, pause = 250) {
    this.#told = told;
    this.#open = open;
    this.#pause = pause;
  }

  /** *job* is wanted now, or no picture at all. Says whether that is another than before: the same one is not made twice. */
  order(job: PictureJob | undefined): boolean {
    const ordered = job && JSON.stringify(job);
    if (ordered === this.#ordered) return false;
    this.#ordered = ordered;
    this.#wanted = job;
    if (job) this.again();
    else this.stop();
    return true;
  }

  /** What was ordered last is wanted after all. */
  again(): void {
    clearTimeout(this.#timer);
    if (this.#wanted && this.#busy?.stage !== 'sketch') this.#send('sketch');
  }

  /** Leaves off what is being made; the picture there stays. */
  stop(): void {
    clearTimeout(this.#timer);
    this.#leaveOff();
    this.#told.progress(undefined);
  }

  close(): void {
    clearTimeout(this.#timer);
    for (const shop of this.#shops.values()) shop.close();
    this.#shops.clear();
    this.#busy = undefined;
  }

  #leaveOff(): void {
    if (this.#busy) this.#shops.get(this.#busy.stage)?.send({ id: ++this.#id });
    this.#busy = undefined;
  }

  #send(stage: Stage): void {
    this.#leaveOff();
    const job = this.#wanted!;
    this.#busy = { job, stage, took: stopwatch() };
    this.#shopFor(stage).send({ id: ++this.#id, job, fineness: stage === 'sketch' ? this.#sketch : finished });
  }

  #shopFor(stage: Stage): Shop {
    let shop = this.#shops.get(stage);
    if (!shop) {
      shop = this.#open(
        (report) => this.#hear(report),
        (words) => this.#break(words),
      );
      this.#shops.set(stage, shop);
    }
    return shop;
  }

  #hear(report: Report): void {
    if (report.id !== this.#id || !this.#busy) return;
    const { job, stage, took } = this.#busy;
    if (report.kind === 'progress') {
      if (stage === 'finished') this.#told.progress(report.share);
      return;
    }
    this.#busy = undefined;
    this.#told.progress(undefined);
    if (stage === 'sketch') this.#sketch = sketchAfter(this.#sketch, took());
    if (report.kind === 'failed') this.#told.failed(report.refused ? refusalInWords(report.refused) : report.words);
    else this.#told.picture(report.developed, stage === 'sketch');
    if (job !== this.#wanted) this.#send('sketch');
    else if (stage === 'sketch' && report.kind === 'done') {
      this.#timer = setTimeout(() => this.#send('finished'), this.#pause);
    }
  }

  #break(words: string): void {
    this.close();
    this.#told.progress(undefined);
    this.#told.failed(words);
  }
}
