import { refusalInWords } from '#site/state/answer.ts';
import { stopwatch } from '#site/state/stopwatch.ts';
import { finished, sketch, sketchAfter, type PictureJob } from './job.ts';
import type { Listener, RenderReply } from './messages.ts';
import { preparation, type Preparation } from './preparation.ts';
import { startWorker, type RenderWorker, type StartWorker } from './start-worker.ts';

type Quality = 'sketch' | 'finished';

/**
 * Has pictures rendered: a sketch at once while a hand moves, the fine picture when it rests. Each has a worker of its own, so that no sketch
 * waits for the fine one to be left off, and both keep the subject as they last drew it.
 *
 * A sketch under way is let finish, so that something moves on the screen however fast the hand is; the fine one is left off as soon as
 * another picture is wanted.
 */
export class Renderer {
  readonly #listener: Listener;
  readonly #start: StartWorker;
  readonly #pause: number;
  readonly #prepared: Preparation;
  readonly #workers = new Map<Quality, RenderWorker>();
  #sketch = sketch;
  #wanted: PictureJob | undefined;
  /** The last job asked for, to tell it from another. */
  #asked: string | undefined;
  #id = 0;
  #busy: { readonly job: PictureJob; readonly quality: Quality; readonly took: () => number } | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(listener: Listener, start: StartWorker = startWorker, pause = 250, prepared: Preparation = preparation) {
    this.#prepared = prepared;
    this.#listener = listener;
    this.#start = start;
    this.#pause = pause;
  }

  /** *job* is wanted now, or no picture at all. Says whether that is another than before: the same one is not made twice. */
  render(job: PictureJob | undefined): boolean {
    const asked = job && JSON.stringify(job);
    if (asked === this.#asked) return false;
    this.#asked = asked;
    this.#wanted = job;
    if (job) this.again();
    else this.stop();
    return true;
  }

  /** Whether *job* is the one asked for last. */
  isAsked(job: PictureJob): boolean {
    return JSON.stringify(job) === this.#asked;
  }

  /** What was asked last is wanted after all. */
  again(): void {
    clearTimeout(this.#timer);
    if (!this.#wanted) return;
    // A picture that was begun beforehand is not begun again, and one that is there needs no sketch.
    if (this.#prepared.follow(this.#wanted, this.#listener)) this.#leaveOff();
    else if (this.#busy?.quality !== 'sketch') this.#send('sketch');
  }

  /** Leaves off what is being made; the picture there stays. */
  stop(): void {
    clearTimeout(this.#timer);
    this.#prepared.leave(this.#listener);
    this.#leaveOff();
    this.#listener.progress(undefined);
  }

  close(): void {
    clearTimeout(this.#timer);
    this.#prepared.leave(this.#listener);
    for (const worker of this.#workers.values()) worker.close();
    this.#workers.clear();
    this.#busy = undefined;
  }

  #leaveOff(): void {
    if (this.#busy) this.#workers.get(this.#busy.quality)?.send({ id: ++this.#id });
    this.#busy = undefined;
  }

  #send(quality: Quality): void {
    this.#leaveOff();
    const job = this.#wanted!;
    this.#busy = { job, quality, took: stopwatch() };
    this.#workerFor(quality).send({ id: ++this.#id, job, fineness: quality === 'sketch' ? this.#sketch : finished });
  }

  #workerFor(quality: Quality): RenderWorker {
    let worker = this.#workers.get(quality);
    if (!worker) {
      worker = this.#start(
        (reply) => this.#receive(reply),
        (words) => this.#fail(words),
      );
      this.#workers.set(quality, worker);
    }
    return worker;
  }

  #receive(reply: RenderReply): void {
    if (reply.id !== this.#id || !this.#busy) return;
    const { job, quality, took } = this.#busy;
    if (reply.kind === 'progress') {
      if (quality === 'finished') this.#listener.progress(reply.share);
      return;
    }
    this.#busy = undefined;
    this.#listener.progress(undefined);
    if (quality === 'sketch') this.#sketch = sketchAfter(this.#sketch, took());
    if (reply.kind === 'failed') this.#listener.failed(reply.refused ? refusalInWords(reply.refused) : reply.words);
    else this.#listener.picture(reply.rendered, quality === 'sketch');
    if (job !== this.#wanted) this.#send('sketch');
    else if (quality === 'sketch' && reply.kind === 'done') {
      this.#timer = setTimeout(() => this.#send('finished'), this.#pause);
    }
  }

  #fail(words: string): void {
    this.close();
    this.#listener.progress(undefined);
    this.#listener.failed(words);
  }
}
