/** How long a page takes from the hand's movement to the frame that shows it. */
import type { Browser, CDPSession, ElementHandle, Locator, Page } from '@playwright/test';

/** Milliseconds of every movement of one drag. */
export interface Drag {
  /** From the movement's own timestamp to the task after the next frame: what the reader waits, the wait for the frame included. */
  readonly toFrame: readonly number[];
  /** From the moment the page hears of the movement: what the page itself takes. */
  readonly work: readonly number[];
  /** Tasks longer than 50 ms while dragging. */
  readonly longTasks: number;
  /** False where the value stayed what it was: then nothing was measured. */
  readonly moved: boolean;
}

export const slowdown = 4;
const movements = 24;

interface Probe {
  toFrame: number[];
  work: number[];
  longTasks: number;
  /** The page's own scripts hear nothing of what a slider does. */
  deaf: boolean;
}

declare global {
  interface Window {
    dragProbe: Probe;
  }
}

/** In the page: times every movement while a button is held. Entries of kind `event` do not arrive in every Chromium. */
function installProbe(): void {
  const probe: Probe = { toFrame: [], work: [], longTasks: 0, deaf: false };
  window.dragProbe = probe;
  new PerformanceObserver((list) => (probe.longTasks += list.getEntries().length)).observe({ type: 'longtask' });

  const afterFrame = new MessageChannel();
  let waiting: { happened: number; heard: number }[] = [];
  afterFrame.port1.onmessage = () => {
    const now = performance.now();
    for (const { happened, heard } of waiting) {
      probe.toFrame.push(now - happened);
      probe.work.push(now - heard);
    }
    waiting = [];
  };
  const hear = (event: PointerEvent) => {
    if (event.buttons === 0) return;
    if (waiting.length === 0) requestAnimationFrame(() => afterFrame.port2.postMessage(null));
    waiting.push({ happened: event.timeStamp, heard: performance.now() });
  };
  window.addEventListener('pointermove', hear, { capture: true });
  for (const kind of ['input', 'change']) {
    window.addEventListener(kind, (event) => probe.deaf && event.stopImmediatePropagation(), { capture: true });
  }
}

/** A page made ready to be dragged on: timed, and slowed down as many times as it is paced. */
export async function timedPage(browser: Browser, open: (page: Page) => Promise<unknown>) {
  const page = await browser.newPage({ viewport: { width: 1280, height: 720 }, serviceWorkers: 'block' });
  await open(page);
  await page.evaluate(installProbe);
  const session: CDPSession = await page.context().newCDPSession(page);
  const pace = (times: number) => session.send('Emulation.setCPUThrottlingRate', { rate: times });
  return { page, pace };
}

/** What a handle is called in the tables. */
export function labelOf(handle: Locator): Promise<string> {
  return handle.evaluate((element) => {
    const name = element.getAttribute('name') ?? element.getAttribute('aria-label')?.replace(/, slider$/, '');
    return `${element instanceof HTMLInputElement ? 'slider' : 'figure'} ${name ?? 'without a name'}`;
  });
}

/** Where a hand can take hold of it: the point of it nearest its middle over which nothing else lies. */
export async function holdOf(handle: Locator): Promise<{ x: number; y: number; width: number }> {
  await handle.scrollIntoViewIfNeeded();
  return handle.evaluate((element) => {
    const { left, top, width, height } = element.getBoundingClientRect();
    const shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9];
    for (const across of shares) {
      for (const down of shares) {
        const [x, y] = [left + across * width, top + down * height];
        if (element.contains(document.elementFromPoint(x, y))) return { x, y, width };
      }
    }
    throw new Error('Something lies over the whole of a handle: nobody can take hold of it.');
  });
}

const valueOf = (handle: ElementHandle<SVGElement | HTMLElement>) =>
  handle.evaluate((element) => (element instanceof HTMLInputElement ? element.value : element.ariaValueNow));

/** The browser's own mouse: the test library's would run a script of its own in the page at every movement, and time it too. */
export async function handOn(page: Page) {
  const session = await page.context().newCDPSession(page);
  return (
    type: 'mouseMoved' | 'mousePressed' | 'mouseReleased',
    x: number,
    y: number,
    button: 'left' | 'none' = 'left',
  ) =>
    session.send('Input.dispatchMouseEvent', {
      type,
      x,
      y,
      button,
      buttons: button === 'none' || type === 'mouseReleased' ? 0 : 1,
      clickCount: 1,
    });
}

/** Drags *handle* to and fro by a good part of its width; what stands in a figure askew, as some go across and some up. */
export async function drag(page: Page, handle: Locator): Promise<Drag> {
  await page.bringToFront();
  const { x, y, width } = await holdOf(handle);
  // What a hand has hold of stays the same thing, though controls before it come and go.
  const held = (await handle.elementHandle())!;
  const isSlider = await held.evaluate((element) => element instanceof HTMLInputElement);
  const reach = isSlider ? { x: Math.max(60, 0.35 * width), y: 0 } : { x: 60, y: 60 };
  const hand = await handOn(page);

  await hand('mouseMoved', x, y, 'none');
  await hand('mousePressed', x, y);
  await hand('mouseMoved', x + 1, y);
  await page.evaluate(() => Object.assign(window.dragProbe, { toFrame: [], work: [], longTasks: 0 }));
  const values = new Set<string | null>();
  for (let movement = 1; movement <= movements; movement++) {
    const part = Math.sin((2 * Math.PI * movement) / movements);
    await hand('mouseMoved', x + reach.x * part, y + reach.y * part);
    // Movements fall anywhere between two frames, as a hand's do.
    await new Promise((done) => setTimeout(done, 5 + ((movement * 7) % 17)));
    if (movement % (movements / 4) === 0) values.add(await valueOf(held));
  }
  const { toFrame, work, longTasks } = await page.evaluate(() => window.dragProbe);
  await hand('mouseReleased', x, y);
  return { toFrame, work, longTasks, moved: values.size > 1 };
}

/** Drags the slider *handle* while nothing follows it: what the browser takes for this page and one moving thumb on it. */
export async function dragUnheard(page: Page, handle: Locator): Promise<Drag> {
  await page.evaluate(() => (window.dragProbe.deaf = true));
  const unheard = await drag(page, handle);
  await page.evaluate(() => (window.dragProbe.deaf = false));
  return unheard;
}
