/** Checks answers beside the page: the formulas and the problems of all lessons are many, and no page should carry them along. */
import { benchQuery } from './chain-of-given.ts';
import { checkedAnswers, givenIn, readBoth } from './check.ts';
import { grounds } from './engine.ts';
import type { CheckReply, CheckRequest } from './messages.ts';

addEventListener('message', ({ data: { id, have, found } }: MessageEvent<CheckRequest>) => {
  const read = readBoth(have, found);
  const bench = benchQuery(givenIn(read.have), read.have.setUps);
  const answers = checkedAnswers(read.have, read.found, grounds);
  const reply: CheckReply = { id, ...read, answers, ...(bench !== undefined && { bench }) };
  postMessage(reply);
});
