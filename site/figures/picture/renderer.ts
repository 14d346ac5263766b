import { refusalInWords } from '#site/state/answer.ts';
import { stopwatch } from '#site/state/stopwatch.ts';
import { finished, sketch, sketchAfter, type PictureJob } from './job.ts';
import type { Rendered, RenderRequest, RenderReply } from './messages.ts';

/** What a figure is told while its pictures are made. */
export interface Listener {
  /** From 0 to 1 while the fine picture is being made; undefined when nothing is. */
  progress: (share: number | undefined) => void;
  picture: (rendered: Rendered, isSketch: boolean) => void;
  /** In words why there is no picture. */
  failed: (words: string) => void;
}

/** What renders: a worker, or in tests something like one. */
export interface RenderWorker {
  send: (request: RenderRequest) => void;
  close: () => void;
}
type Quality = 'sketch' | 'finished';

export type StartWorker = (onreply: (reply: RenderReply) => void, onerror: (words: string) => void) => RenderWorker;

const unavailable =
  'This browser does not let the page work in the background, so no picture is drawn here. The other sheets and all numbers still work.';

/** A worker, started when its first picture is wanted. */
export const startWorker: StartWorker = (onreply, onerror) => {
  try {
    const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<RenderReply>) => onreply(data);
    worker.onerror = (event) => {
      event.preventDefault();
      onerror(unavailable);
    };
    return { send: (request) => worker.postMessage(request), close: () => worker.terminate() };
  } catch {
    onerror(unavailable);
    return { send: () => undefined, close: () => undefined };
  }
};

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
  readonly #workers = new Map<Quality, RenderWorker>();
  #sketch = sketch;
  #wanted: PictureJob | undefined;
  /** The last job asked for, to tell it from another. */
  #asked: string | undefined;
  #id = 0;
  #busy: { readonly job: PictureJob; readonly quality: Quality; readonly took: () => number } | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(listener: Listener, start: StartWorker = startWorker, pause = 250) {
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

  /** What was asked last is wanted after all. */
  again(): void {
    clearTimeout(this.#timer);
    if (this.#wanted && this.#busy?.quality !== 'sketch') this.#send('sketch');
  }

  /** Leaves off what is being made; the picture there stays. */
  stop(): void {
    clearTimeout(this.#timer);
    this.#leaveOff();
    this.#listener.progress(undefined);
  }

  close(): void {
    clearTimeout(this.#timer);
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
