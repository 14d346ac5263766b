import type { RenderRequest, RenderReply } from './messages.ts';

/** What renders: a worker, or in tests something like one. */
export interface RenderWorker {
  send: (request: RenderRequest) => void;
  close: () => void;
}
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
