/** Renders pictures beside the page, which stays free for the hand. Orders come and reports go by `messages.ts`. */
import { OutOfRange } from '#core/quantity/errors.ts';
import { developing } from './developing.ts';
import type { Developed, Order, Report } from './messages.ts';

let latest = 0;

addEventListener('message', ({ data }: MessageEvent<Order>) => {
  latest = data.id;
  if (data.job) void work(data);
});

async function work({ id, job, fineness }: Order): Promise<void> {
  try {
    const steps = developing(job!, fineness!);
    for (;;) {
      const step = steps.next();
      if (step.done) {
        report({ id, kind: 'done', developed: step.value });
        return;
      }
      report({ id, kind: 'progress', share: step.value });
      await messagesRead();
      if (latest !== id) return;
    }
  } catch (error) {
    const words = error instanceof Error ? error.message : String(error);
    report({ id, kind: 'failed', words, ...(error instanceof OutOfRange && { refused: { ...error } }) });
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

function report(news: Report): void {
  postMessage(news, { transfer: news.kind === 'done' ? buffersOf(news.developed) : [] });
}

function buffersOf({ picture, sharp, difference }: Developed): ArrayBuffer[] {
  return [picture, sharp, difference].flatMap((pixels) => (pixels ? [pixels.rgba.buffer] : []));
}
