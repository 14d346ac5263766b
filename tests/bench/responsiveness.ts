import type { Browser, Locator, Page } from '@playwright/test';
import { barePage, drag, dragUnheard, labelOf, slowPage, type Drag } from './drag.ts';
import { percentile } from './percentile.ts';

/** Milliseconds of one handle of a page, beside those of the bare page measured in between; 95th percentiles but for the medians. */
export interface Responsiveness {
  readonly handle: string;
  readonly toFrame: number;
  readonly bareToFrame: number;
  readonly work: number;
  readonly bareWork: number;
  readonly medianWork: number;
  readonly bareMedianWork: number;
  readonly longTasks: number;
  readonly moved: boolean;
}

/** A page whose scripts hear nothing of its slider, beside the bare page: what no script of ours can mend. */
export interface Floor {
  readonly work: number;
  readonly bareWork: number;
  readonly medianWork: number;
  readonly bareMedianWork: number;
}

export interface LessonResponsiveness {
  readonly handles: readonly Responsiveness[];
  readonly floor: Floor;
}

const rounds = 2;

function share(part: number, drags: readonly Drag[], of: 'toFrame' | 'work'): number {
  return percentile(
    drags.flatMap((one) => one[of]),
    part,
  );
}

/** Every slider and everything in a figure that can be taken hold of. */
async function handlesOf(page: Page): Promise<{ label: string; locator: Locator }[]> {
  const all = await page.locator('input[type="range"]:not([disabled]), [role="slider"]').all();
  const visible: { label: string; locator: Locator }[] = [];
  for (const locator of all) {
    if (!(await locator.isVisible())) continue;
    visible.push({ label: await labelOf(locator), locator });
  }
  return visible;
}

/** Opens what the controls are folded into: where a lesson begins with choices, that holds all its sliders. */
export function unfold(page: Page): Promise<void> {
  return page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('.controls details')) fold.open = true;
  });
}

/** Drags every handle of the page at *address*, each from the lesson's start, and, turn about, the bare page's slider. */
export async function responsivenessOf(browser: Browser, address: string): Promise<LessonResponsiveness> {
  const bare = await slowPage(browser, (page) => page.setContent(barePage));
  const page = await slowPage(browser, async (opened) => {
    await opened.goto(address, { waitUntil: 'networkidle' });
    await unfold(opened);
  });

  async function besideBare(dragOurs: () => Promise<Drag>) {
    const ours: Drag[] = [];
    const theirs: Drag[] = [];
    for (let round = 0; round < rounds; round++) {
      theirs.push(await drag(bare, bare.locator('input')));
      ours.push(await dragOurs());
    }
    const numbers = {
      toFrame: share(0.95, ours, 'toFrame'),
      bareToFrame: share(0.95, theirs, 'toFrame'),
      work: share(0.95, ours, 'work'),
      bareWork: share(0.95, theirs, 'work'),
      medianWork: share(0.5, ours, 'work'),
      bareMedianWork: share(0.5, theirs, 'work'),
    };
    return { ours, numbers };
  }

  const slider = page.locator('input[type="range"]:not([disabled]):visible').first();
  const { numbers: floor } = await besideBare(() => dragUnheard(page, slider));

  const handles: Responsiveness[] = [];
  for (const { label, locator } of await handlesOf(page)) {
    await page.bringToFront();
    await page.getByRole('button', { name: 'Reset all settings' }).click();
    const { ours, numbers } = await besideBare(() => drag(page, locator));
    handles.push({
      handle: label,
      ...numbers,
      longTasks: ours.reduce((total, { longTasks }) => total + longTasks, 0),
      moved: ours.every(({ moved }) => moved),
    });
  }
  await page.close();
  await bare.close();
  return { handles, floor };
}
