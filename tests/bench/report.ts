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
  readonly firstVisit: FirstVisit;
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
  const rows = lessons.flatMap(({ page, handles }) =>
    handles.map(({ handle, toFrame, bareToFrame, work, bareWork, medianWork, bareMedianWork, longTasks, moved }) => [
      nameOf(page),
      handle,
      `${milliseconds(medianWork)} (${milliseconds(bareMedianWork)})`,
      `${milliseconds(work)} (${milliseconds(bareWork)})`,
      `${milliseconds(toFrame)} (${milliseconds(bareToFrame)})`,
      (toFrame / bareToFrame).toFixed(2),
      String(longTasks),
      moved
        ? verdict(work <= limits.work && toFrame / bareToFrame <= limits.ratio && longTasks === 0)
        : '**not moved**',
    ]),
  );
  return table(['page', 'handle', 'median work', 'work', 'to frame', 'ratio', 'long tasks', 'limits'], 2, rows);
}

function floors({ lessons }: Results): string {
  const rows = lessons.map(({ page, floor }) => [
    nameOf(page),
    `${milliseconds(floor.medianWork)} (${milliseconds(floor.bareMedianWork)})`,
    `${milliseconds(floor.work)} (${milliseconds(floor.bareWork)})`,
    milliseconds(Math.max(0, limits.work - floor.work)),
  ]);
  return table(['page', 'median work', 'work', 'left of the limit'], 1, rows);
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

95th percentile in milliseconds with the processor slowed down ${slowdown} times; in brackets a bare page with one slider mirrored into text, dragged in turn
with the lesson. The median is there for machines that are busy with something else. "Work" is from the moment the page hears of a movement to the task after the next frame, "to frame" from the movement's own
timestamp, so that it holds the wait for the frame too. Limits: work within one frame at 60 Hz (${limits.work.toFixed(1)} ms), to frame at most ${limits.ratio} times the bare
page's, no task longer than 50 ms while dragging.

${responses(results)}

The same with the lesson's scripts hearing nothing of its first slider: what this browser takes for a page of that size and one moving thumb on
it. What is left of the limit is for all that follows the hand: scripts, readings, formulas, figure.

${floors(results)}

## While pictures come in

At the machine's full speed, the picture's sheet open, in milliseconds. The first slider moved step by step: from the movement to the task after
the frame that shows its sketch, the median and the 95th percentile. Then dragged to and fro for a second and a half and the finished picture
waited for: the longest tasks of the page's main thread, its own drawing included. Limits: a sketch within ${limits.sketch} ms as a rule, no task longer than
${limits.blocked} ms.

${pictures(results)}
`;
}
