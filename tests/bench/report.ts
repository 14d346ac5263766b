import { limits, verdict } from './limits.ts';
import { slowdown } from './drag.ts';
import type { FirstVisit } from './first-visit.ts';
import { percentile } from './percentile.ts';
import type { PicturePage } from './picture-page.ts';
import type { LessonResponsiveness } from './responsiveness.ts';
import { table } from './table.ts';
import { jsLimitOf, type Weight } from './weight.ts';

export interface PageResult {
  readonly page: string;
  readonly lesson: boolean;
  readonly weight: Weight;
  readonly firstVisit: Omit<FirstVisit, 'received'>;
}

export interface LessonResult extends LessonResponsiveness {
  readonly page: string;
}

export interface Results {
  /** What it ran on, and how busy that was (programs waiting for a processor: well below one each, or the times mean little). Times can only be compared on one machine, the bare page's beside them. */
  readonly machine: string;
  readonly browser: string;
  readonly pages: readonly PageResult[];
  readonly lessons: readonly LessonResult[];
  readonly pictures: readonly PicturePage[];
}

const kilobytes = (bytes: number) => (bytes / 1000).toFixed(1);
const milliseconds = (time: number) => time.toFixed(1);
const nameOf = (page: string) => `/${page}`;

function weights({ pages }: Results): string {
  const rows = pages.map(({ page, lesson, weight, firstVisit }) => {
    const withinLimits =
      weight.js <= jsLimitOf(page) && firstVisit.total <= limits.firstVisit && firstVisit.elsewhere.length === 0;
    return [
      nameOf(page),
      ...[weight.html, weight.js, weight.css, firstVisit.fonts, firstVisit.total].map(kilobytes),
      String(firstVisit.requests),
      String(firstVisit.elsewhere.length),
      lesson ? verdict(withinLimits) : '',
    ];
  });
  return table(
    ['page', 'HTML', 'JavaScript', 'CSS', 'fonts', 'first visit', 'requests', 'to other hosts', 'limits'],
    1,
    rows,
  );
}

function responses({ lessons }: Results): string {
  const rows = lessons.flatMap(({ page, handles, deaf }) =>
    handles.map(({ handle, medianWork, work, longTasks, toFrame, moved }) => {
      const times = medianWork / deaf.medianWork;
      return [
        nameOf(page),
        handle,
        ...[medianWork, work].map(milliseconds),
        times.toFixed(2),
        String(longTasks),
        milliseconds(toFrame),
        moved ? verdict(times <= limits.work && longTasks === 0 && toFrame <= limits.toFrame) : '**not moved**',
      ];
    }),
  );
  return table(['page', 'handle', 'median work', 'work', 'times deaf', 'long tasks', 'to frame', 'limits'], 2, rows);
}

function deafPages({ lessons }: Results): string {
  const rows = lessons.map(({ page, deaf: { medianWork, work, toFrame } }) => [
    nameOf(page),
    ...[medianWork, work, toFrame].map(milliseconds),
  ]);
  return table(['page', 'median work', 'work', 'to frame'], 1, rows);
}

function pictures({ pictures: pages }: Results): string {
  const rows = pages.map(({ page, handle, longest, tasks, pictures: came, toSketch }) => [
    nameOf(page),
    handle,
    milliseconds(percentile(toSketch, 0.5)),
    milliseconds(percentile(toSketch, 0.95)),
    String(came),
    String(tasks),
    longest.map(milliseconds).join(', '),
    verdict((longest[0] ?? Infinity) <= limits.blocked && percentile(toSketch, 0.5) <= limits.sketch),
  ]);
  return table(['page', 'handle', 'sketch seen', 'at the latest', 'pictures', 'tasks', 'longest', 'limits'], 2, rows);
}

/** The results as a page of Markdown that two readers can lay side by side. */
export function report(results: Results): string {
  return `# What the pages cost

Written by \`npm run bench -- pages\`. ${results.machine}; ${results.browser}.

## Bytes

Kilobytes (1000 bytes) of gzip. JavaScript is what the page loads by itself, inline code included, and besides it what it can come to load, the
worker that keeps the site for use offline left out. Fonts and the first visit are counted by the browser over the wire, headers included. Limits of a lesson: ${limits.js.plain / 1000} KB of JavaScript loaded by itself, ${limits.js.chain / 1000} KB with a chain of parts, ${limits.firstVisit / 1000} KB for the first
visit, no request to another host.

${weights(results)}

## From hand to frame

Milliseconds of 24 movements of each handle. "Work" is from the moment the page hears of a movement to the task after the next frame, with the processor slowed
down ${slowdown} times: its median, what 95 in 100 do not exceed, and the median as a multiple of the same page's with its scripts deaf. "Long tasks" took over 50 ms of it. "To frame" is from the
movement's own timestamp, the wait for the frame included, at the machine's full speed, 95 in 100. Limits: ${limits.work} times the deaf page's work, no long task, ${limits.toFrame} ms to the
frame, so that none is missed.

${responses(results)}

The same pages with their scripts hearing nothing of their first slider: what this browser takes for a page of that size and one moving thumb on it.

${deafPages(results)}

## While pictures come in

At the machine's full speed, the picture's sheet open, in milliseconds. The first slider moved step by step: from the movement to the task after
the frame that shows its sketch, the median and the 95th percentile. Then dragged to and fro for a second and a half and the finished picture
waited for: the longest tasks of the page's main thread, its own drawing included. Limits: a sketch within ${limits.sketch} ms as a rule, no task longer than
${limits.blocked} ms.

${pictures(results)}
`;
}
