import type { RulerReply, RulerRequest } from './messages.ts';

type Question = RulerRequest extends infer One ? (One extends RulerRequest ? Omit<One, 'id'> : never) : never;

/** The worker that holds the photograph: asked by kind, answered by number. Of questions of one kind only the last is answered. */
export class RulerWorker {
  #worker: Worker | undefined;
  #asked = 0;
  readonly #latest = new Map<string, number>();

  /**
   * Asks, and calls *then* with the answer. Words for a worker that is gone are an answer, too: `refused`.
   */
  ask(question: Question, then: (reply: RulerReply) => void): void {
    const id = ++this.#asked;
    this.#latest.set(question.kind, id);
    const worker = (this.#worker ??= this.#started());
    const hear = ({ data }: MessageEvent<RulerReply>) => {
      if (data.id !== id) return;
      stop();
      if (this.#latest.get(question.kind) === id) then(data);
    };
    const fail = (event: ErrorEvent) => {
      event.preventDefault();
      stop();
      this.stop();
      then({ id, kind: 'refused', words: gone });
    };
    const stop = () => {
      worker.removeEventListener('message', hear);
      worker.removeEventListener('error', fail);
    };
    worker.addEventListener('message', hear);
    worker.addEventListener('error', fail);
    worker.postMessage({ ...question, id });
  }

  /** Whether it is there: what was opened last is still in it, even where something else was refused since. */
  get isRunning(): boolean {
    return this.#worker !== undefined;
  }

  /** Ends what it does, and what it holds. */
  stop(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#latest.clear();
  }

  #started(): Worker {
    return new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  }
}

const gone =
  'What measures photographs could not be fetched, or ran out of memory. Load the page again; what was measured is kept.';
