/** Whether a page stays at hand while pictures come in. */
import { readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Locator, Page } from '@playwright/test';
import { handOn, holdOf, labelOf } from './drag.ts';
import { unfold } from './responsiveness.ts';

/** How the main thread of a page fares while its picture follows a slider and is finished. */
export interface PicturePage {
  readonly page: string;
  readonly handle: string;
  /** Milliseconds of its longest tasks, longest first: what a hand can be kept waiting */
  readonly longest: readonly number[];
  readonly tasks: number;
  /** Sketches and finished pictures that came in */
  readonly pictures: number;
  /** Milliseconds from each of many single movements to the task after the frame that shows its sketch */
  readonly toSketch: readonly number[];
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

/** What is kept in the page. */
interface Counted {
  picturesIn: number;
  toSketch: number[];
}

/** Counts what the page's workers send back with pixels, and times the first after a movement. */
function countPictures(): void {
  const counted = window as unknown as Counted;
  counted.picturesIn = 0;
  counted.toSketch = [];
  let moved: number | undefined;
  window.addEventListener('input', ({ timeStamp }) => (moved ??= timeStamp), { capture: true });
  const seen = () => {
    const since = moved;
    moved = undefined;
    if (since === undefined) return;
    requestAnimationFrame(() => setTimeout(() => counted.toSketch.push(performance.now() - since)));
  };
  const Plain = window.Worker;
  window.Worker = class extends Plain {
    constructor(url: string | URL, options?: WorkerOptions) {
      super(url, options);
      this.addEventListener('message', ({ data }: MessageEvent<{ kind?: string }>) => {
        if (data.kind !== 'done') return;
        counted.picturesIn++;
        seen();
      });
    }
  };
}

const countedIn = (page: Page) =>
  page.evaluate(() => {
    const { picturesIn, toSketch } = window as unknown as Counted;
    return { picturesIn, toSketch };
  });

/** Moves a slider step by step, now while the page rests and now while the finished picture is being made. */
async function singleMovements(page: Page, slider: Locator): Promise<readonly number[]> {
  await slider.focus();
  for (let movement = 0; movement < 24; movement++) {
    await page.keyboard.press(movement % 8 < 4 ? 'ArrowRight' : 'ArrowLeft');
    await page.waitForTimeout(150 + ((movement * 137) % 500));
  }
  // The first few run code that is new to the browser.
  return (await countedIn(page)).toSketch.slice(8);
}

/** Opens the picture of the page at *address*, drags its first slider to and fro, lets it finish, and reads how long the page was ever busy. */
export async function picturePage(browser: Browser, address: string, page: string): Promise<PicturePage> {
  const opened = await browser.newPage({ viewport: { width: 1280, height: 720 }, serviceWorkers: 'block' });
  await opened.addInitScript(countPictures);
  await opened.goto(address, { waitUntil: 'networkidle' });
  // Its sheet goes by another name in each lesson.
  for (const tab of await opened.locator('.tabs button').all()) {
    await tab.click();
    await opened.waitForTimeout(300);
    if ((await opened.locator('.picture-sheet, .picture').count()) > 0) break;
  }
  await opened.waitForFunction(() => (window as unknown as Counted).picturesIn >= 2);
  await unfold(opened);
  const slider = opened.locator('input[type="range"]:not([disabled]):visible').first();
  const handle = await labelOf(slider);
  const { x, y, width } = await holdOf(slider);
  const hand = await handOn(opened);
  const toSketch = await singleMovements(opened, slider);
  if (toSketch.length === 0) throw new Error('No sketch was seen: this slider moves no picture.');
  const before = (await countedIn(opened)).picturesIn;

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
  const pictures = (await countedIn(opened)).picturesIn - before;
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
  return { page, handle, longest: tasks.slice(0, 5), tasks: tasks.length, pictures, toSketch };
}
