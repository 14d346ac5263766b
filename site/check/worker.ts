/** Checks answers beside the page: the formulas and the problems of all lessons are many, and no page should carry them along. */
import { checkedAnswers, readWritten } from './check.ts';
import { grounds } from './engine.ts';
import type { CheckReply, CheckRequest } from './messages.ts';

addEventListener('message', ({ data: { id, have, found } }: MessageEvent<CheckRequest>) => {
  const read = { have: readWritten(have), found: readWritten(found) };
  const reply: CheckReply = { id, ...read, answers: checkedAnswers(read.have, read.found, grounds) };
  postMessage(reply);
});
