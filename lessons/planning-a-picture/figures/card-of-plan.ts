import { bench } from '../bench.svelte.ts';
import { checks } from './checks.ts';
import { planRows } from './plan.ts';
import { plan } from './planned.svelte.ts';
import { said } from './said.svelte.ts';
import { subjects } from './subjects.ts';

/** What stands on the card. */
export function cardNow() {
  const [first, second, caution] = checks[plan.subject];
  return {
    head: subjects[plan.subject].label,
    rows: planRows(
      plan.decided,
      (name) => bench.words(name),
      {
        chain: said.chain,
        checks: `${first}; ${second}`,
        gives: said.gives,
        iso: bench.inputs.iso,
        ...(said.noChain && { noChain: said.noChain }),
      },
      plan.question,
    ),
    caution: `! ${caution}`,
  };
}

/** The card for listeners. */
export function cardInWords(): string {
  const { head, rows, caution } = cardNow();
  const lines = rows.map(({ title, answer, change }) => `${title}: ${answer}${change ? `, ${change}` : ''}`);
  return `${head}. ${lines.join('. ')}. ${caution}`;
}

/** What times may be taken, and what is asked for. */
export const timesNow = () =>
  [
    {
      title: 'Daylight',
      may: { time: plan.slowest, words: `movement allows ${bench.words('slowest.exposure-time')}` },
      takes: {
        time: bench.number('ambient.exposure-time', Infinity),
        words: `wants ${bench.words('ambient.exposure-time')}`,
      },
    },
    {
      title: 'All frames',
      may: { time: bench.inputs['time-limit'], words: `it holds still for ${bench.words('time-limit')}` },
      takes: { time: bench.number('stack-time', Infinity), words: `take ${bench.words('stack-time')}` },
    },
  ] as const;

/** The times for listeners. */
export const timesInWords = () =>
  timesNow()
    .map(({ title, may, takes }) => `${title}: ${takes.words}; ${may.words}.`)
    .join(' ');
