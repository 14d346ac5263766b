/** Whether a page stays at hand while pictures come in. */
import { readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from '@playwright/test';
import { handOn, holdOf, labelOf } from './drag.ts';

/** How the main thread of a page fares while its picture follows a slider and is finished. */
export interface PicturePage {
  readonly page: string;
  readonly handle: string;
  /** Milliseconds of its longest tasks, longest first: what a hand can be kept waiting */
  readonly longest: readonly number[];
  readonly tasks: number;
  /** Sketches and finished pictures that came in */
  readonly pictures: number;
}

/** What a browser's trace says of one stretch of work; times in µs. */
interface Entry {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly dur?: number;
  readonly args?: { readonly name?: string };
}

const movements = 90;

/** Counts what the page's workers send back with pixels. */
function countPictures(): void {
  const counted = window as unknown as { picturesIn: number };
  counted.picturesIn = 0;
  const Plain = window.Worker;
  window.Worker = class extends Plain {
    constructor(url: string | URL, options?: WorkerOptions) {
      super(url, options);
      this.addEventListener('message', ({ data }: MessageEvent<{ kind?: string }>) => {
        if (data.kind === 'done') counted.picturesIn++;
      });
    }
  };
}

const picturesIn = (page: Page) => page.evaluate(() => (window as unknown as { picturesIn: number }).picturesIn);

/** Opens the picture of the page at *address*, drags its first slider to and fro, lets it finish, and reads how long the page was ever busy. */
export async function picturePage(browser: Browser, address: string, page: string): Promise<PicturePage> {
  const opened = await browser.newPage({ viewport: { width: 1280, height: 720 }, serviceWorkers: 'block' });
  await opened.addInitScript(countPictures);
  await opened.goto(`${address}?sheet=picture`, { waitUntil: 'networkidle' });
  await opened.waitForFunction(() => (window as unknown as { picturesIn: number }).picturesIn >= 2);
  const slider = opened.locator('input[type="range"]:not([disabled])').first();
  const handle = await labelOf(slider);
  const { x, y, width } = await holdOf(slider);
  const hand = await handOn(opened);
  const before = await picturesIn(opened);

  const path = join(tmpdir(), `main-thread-${process.pid}.json`);
  await browser.startTracing(opened, { path, categories: ['disabled-by-default-devtools.timeline'] });
  await hand('mouseMoved', x, y, 'none');
  await hand('mousePressed', x, y);
  for (let movement = 1; movement <= movements; movement++) {
    await hand('mouseMoved', x + 0.15 * width * Math.sin((6 * Math.PI * movement) / movements), y);
    await new Promise((done) => setTimeout(done, 16));
  }
  await hand('mouseReleased', x, y);
  await opened.waitForTimeout(4000);
  await browser.stopTracing();
  const pictures = (await picturesIn(opened)) - before;
  await opened.close();

  const { traceEvents } = JSON.parse(readFileSync(path, 'utf8')) as { traceEvents: readonly Entry[] };
  rmSync(path);
  const main = new Set(
    traceEvents
      .filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
      .map(({ pid, tid }) => `${pid}/${tid}`),
  );
  const tasks = traceEvents
    .filter(({ name, pid, tid, dur }) => name === 'RunTask' && dur !== undefined && main.has(`${pid}/${tid}`))
    .map(({ dur = 0 }) => dur / 1000)
    .sort((one, other) => other - one);
  return { page, handle, longest: tasks.slice(0, 5), tasks: tasks.length, pictures };
}
