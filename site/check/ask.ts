import type { CheckReply, CheckRequest } from './messages.ts';

let worker: Worker | undefined;
let asked = 0;

/** Has *question* answered beside the page. Only the last question is answered: an earlier promise is left open for ever. */
export function ask(question: Omit<CheckRequest, 'id'>): Promise<CheckReply> {
  const id = ++asked;
  return new Promise((resolve, reject) => {
    worker ??= new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<CheckReply>) => {
      if (data.id === id) resolve(data);
    };
    worker.onerror = (event) => {
      worker?.terminate();
      worker = undefined;
      reject(new Error(event.message));
    };
    const request: CheckRequest = { id, ...question };
    worker.postMessage(request);
  });
}
