import type { Browser, Locator, Page } from '@playwright/test';
import { drag, dragUnheard, labelOf, slowdown, timedPage, type Drag } from './drag.ts';
import { percentile } from './percentile.ts';

/** Milliseconds that one handle of a page takes from the hand's movement on. */
export interface Responsiveness {
  readonly handle: string;
  /** From the moment the page hears of a movement, slowed down: the median, and what 95 in 100 do not exceed. */
  readonly medianWork: number;
  readonly work: number;
  /** Tasks over 50 ms, slowed down. */
  readonly longTasks: number;
  /** From the movement's own timestamp to the task after its frame, at full speed: what 95 in 100 do not exceed. */
  readonly toFrame: number;
  readonly moved: boolean;
}

/** The same page whose scripts hear nothing of its first slider: what no script of ours can mend. Slowed down but for `toFrame`. */
export interface Deaf {
  readonly medianWork: number;
  readonly work: number;
  readonly toFrame: number;
}

export interface LessonResponsiveness {
  readonly handles: readonly Responsiveness[];
  readonly deaf: Deaf;
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

/** Drags every handle of the page at *address*, each from the lesson's start, slowed down and at full speed; before and after them its slider, deaf. */
export async function responsivenessOf(browser: Browser, address: string): Promise<LessonResponsiveness> {
  const { page, pace } = await timedPage(browser, async (opened) => {
    await opened.goto(address, { waitUntil: 'networkidle' });
    await unfold(opened);
  });
  const atBothPaces = async (once: () => Promise<Drag>) => {
    await pace(slowdown);
    const slowed = await once();
    await pace(1);
    return { slowed, full: await once() };
  };

  const slider = page.locator('input[type="range"]:not([disabled]):visible').first();
  const unheard = [await atBothPaces(() => dragUnheard(page, slider))];
  const handles: Responsiveness[] = [];
  for (const { label, locator } of await handlesOf(page)) {
    await page.getByRole('button', { name: 'Reset all settings' }).click();
    const { slowed, full } = await atBothPaces(() => drag(page, locator));
    handles.push({
      handle: label,
      medianWork: percentile(slowed.work, 0.5),
      work: percentile(slowed.work, 0.95),
      longTasks: slowed.longTasks,
      toFrame: percentile(full.toFrame, 0.95),
      moved: slowed.moved && full.moved,
    });
  }
  unheard.push(await atBothPaces(() => dragUnheard(page, slider)));
  await page.close();

  const deafWork = unheard.flatMap(({ slowed }) => slowed.work);
  const deaf = {
    medianWork: percentile(deafWork, 0.5),
    work: percentile(deafWork, 0.95),
    toFrame: percentile(
      unheard.flatMap(({ full }) => full.toFrame),
      0.95,
    ),
  };
  return { handles, deaf };
}
