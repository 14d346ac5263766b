/** Renders pictures beside the page, which stays free for the hand. Requests come and replies go by `messages.ts`. */
import { OutOfRange } from '#core/quantity/errors.ts';
import { renderJob } from './render-job.ts';
import type { Rendered, RenderRequest, RenderReply } from './messages.ts';

let latest = 0;

addEventListener('message', ({ data }: MessageEvent<RenderRequest>) => {
  latest = data.id;
  if (data.job) void respond(data);
});

async function respond({ id, job, fineness }: RenderRequest): Promise<void> {
  try {
    const steps = renderJob(job!, fineness!);
    for (;;) {
      const step = steps.next();
      if (step.done) {
        reply({ id, kind: 'done', rendered: step.value });
        return;
      }
      reply({ id, kind: 'progress', share: step.value });
      await messagesRead();
      if (latest !== id) return;
    }
  } catch (error) {
    const words = error instanceof Error ? error.message : String(error);
    reply({ id, kind: 'failed', words, ...(error instanceof OutOfRange && { refused: { ...error } }) });
  }
}

/** After the messages that wait by now. */
function messagesRead(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}

function reply(message: RenderReply): void {
  postMessage(message, { transfer: message.kind === 'done' ? buffersOf(message.rendered) : [] });
}

function buffersOf({ picture, sharp, difference }: Rendered): ArrayBuffer[] {
  return [picture, sharp, difference].flatMap((pixels) => (pixels ? [pixels.rgba.buffer] : []));
}
