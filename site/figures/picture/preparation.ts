import { refusalInWords } from '#site/state/answer.ts';
import { finished, type PictureJob } from './job.ts';
import type { Listener, Rendered, RenderReply } from './messages.ts';
import { startWorker, type RenderWorker, type StartWorker } from './start-worker.ts';

/** A job with the text that tells it from others. */
interface Wanted {
  readonly key: string;
  readonly job: PictureJob;
}

/**
 * Makes fine pictures before they are wanted, one after the other, and keeps them: a lecture does not wait for what was known when it began.
 * What is wanted now goes before the others.
 */
export class Preparation {
  readonly #start: StartWorker;
  readonly #kept = new Map<string, Rendered>();
  #waiting: readonly Wanted[] = [];
  #busy: (Wanted & { share: number }) | undefined;
  #worker: RenderWorker | undefined;
  #id = 0;
  /** Who waits for which picture: a sheet may show several. */
  readonly #followers = new Map<Listener, string>();

  constructor(start: StartWorker = startWorker) {
    this.#start = start;
  }

  /** *job* will be wanted later. */
  want(job: PictureJob): void {
    const key = JSON.stringify(job);
    if (this.#kept.has(key) || this.#busy?.key === key || this.#waiting.some((other) => other.key === key)) return;
    this.#waiting = [...this.#waiting, { key, job }];
    this.#next();
  }

  /** Tells *listener* of *job*, at once where it is done. False where it is none of those begun: it is for others to make then. */
  follow(job: PictureJob, listener: Listener): boolean {
    const key = JSON.stringify(job);
    this.#followers.delete(listener);
    const rendered = this.#kept.get(key);
    if (rendered) {
      listener.progress(undefined);
      listener.picture(rendered, false);
      return true;
    }
    const first = this.#waiting.find((other) => other.key === key);
    if (!first && this.#busy?.key !== key) return false;
    this.#followers.set(listener, key);
    if (first) this.#putFirst(first);
    listener.progress(this.#busy!.key === key ? this.#busy!.share : 0);
    return true;
  }

  /** *listener* waits no more; what was begun goes on. */
  leave(listener: Listener): void {
    this.#followers.delete(listener);
  }

  #putFirst(first: Wanted): void {
    const others = this.#waiting.filter((other) => other !== first);
    // What somebody else waits for is finished before.
    if (this.#busy && this.#waitingFor(this.#busy.key).length > 0) {
      this.#waiting = [first, ...others];
      return;
    }
    this.#waiting = [first, ...(this.#busy ? [this.#busy] : []), ...others];
    this.#busy = undefined;
    this.#next();
  }

  #waitingFor(key: string): readonly Listener[] {
    return [...this.#followers].filter(([, wanted]) => wanted === key).map(([listener]) => listener);
  }

  #next(): void {
    const [first, ...others] = this.#waiting;
    if (this.#busy || !first) return;
    this.#waiting = others;
    this.#busy = { ...first, share: 0 };
    this.#worker ??= this.#start(
      (reply) => this.#receive(reply),
      (words) => this.#fail(words),
    );
    this.#worker.send({ id: ++this.#id, job: first.job, fineness: finished });
  }

  #receive(reply: RenderReply): void {
    if (reply.id !== this.#id || !this.#busy) return;
    const { key } = this.#busy;
    const listeners = this.#waitingFor(key);
    if (reply.kind === 'progress') {
      this.#busy.share = reply.share;
      for (const listener of listeners) listener.progress(reply.share);
      return;
    }
    this.#busy = undefined;
    if (reply.kind === 'done') this.#kept.set(key, reply.rendered);
    for (const listener of listeners) {
      this.#followers.delete(listener);
      listener.progress(undefined);
      if (reply.kind === 'done') listener.picture(reply.rendered, false);
      else listener.failed(reply.refused ? refusalInWords(reply.refused) : reply.words);
    }
    this.#next();
  }

  #fail(words: string): void {
    const listeners = [...this.#followers.keys()];
    this.#worker?.close();
    this.#worker = undefined;
    this.#busy = undefined;
    this.#waiting = [];
    this.#followers.clear();
    for (const listener of listeners) {
      listener.progress(undefined);
      listener.failed(words);
    }
  }
}

/** The page's one: what a demonstration will show. */
export const preparation = new Preparation();
