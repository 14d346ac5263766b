import { expect, type Page } from '@playwright/test';
import { crowded } from './room.ts';
import { drawn } from './watch.ts';

/** Old and new projectors, a laptop’s window, a large screen, and a phone lying. */
const walls = [
  { width: 1024, height: 768 },
  { width: 1280, height: 600 },
  { width: 1920, height: 1080 },
  { width: 844, height: 390 },
  { width: 1280, height: 720 },
];

/** Plays all steps forward on a projector's screen, question and answer, and backward on a phone's, and leaves. */
export async function projectAllSteps(page: Page): Promise<void> {
  await page.setViewportSize({ width: 1280, height: 720 });
  const steps = await page.locator('.stage-steps > li').count();
  expect(steps).toBeGreaterThan(3);
  const stage = page.locator('.stage');
  const places = Array.from({ length: steps }, (_, index) => index + 1).flatMap((step) =>
    (['question', 'answer'] as const).map((half) => ({ step, half })),
  );
  const at = ({ step, half }: (typeof places)[number]) =>
    expect(stage).toHaveAttribute('aria-label', `Projected view, step ${step} of ${steps}, ${half}`);
  // What a change looks like on its way is for the shared tests: here it is there at once.
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.keyboard.press('Alt+KeyP');
  for (const place of places) {
    await at(place);
    await expectLegible(page, place.step, place.half);
    if (place.half === 'answer') await expectRoom(page, place.step);
    await page.keyboard.press('PageDown');
  }
  await page.setViewportSize({ width: 390, height: 844 });
  for (const place of places.reverse()) {
    await at(place);
    await expectFigureHalf(page, place.step);
    await page.keyboard.press('PageUp');
  }
  await at({ step: 1, half: 'question' });
  await page.keyboard.press('Escape');
  await expect(stage).toBeHidden();
  await page.emulateMedia({ reducedMotion: null });
  await page.setViewportSize({ width: 1280, height: 720 });
}

/** On no wall one thing lies on another, is cut off or has to be scrolled to. Ends at the size it began with. */
async function expectRoom(page: Page, step: number): Promise<void> {
  for (const wall of walls) {
    await page.setViewportSize(wall);
    await drawn(page);
    expect(await crowded(page), `step ${step} at ${wall.width} × ${wall.height}`).toEqual([]);
  }
}

/** Words that hold, none smaller than 1/25 of the height, none outside the sheet. */
async function expectLegible(page: Page, step: number, half: 'question' | 'answer'): Promise<void> {
  expect(new URL(page.url()).searchParams.get('stage')).toBe(`${step}`);
  await drawn(page);
  const found = await page.locator('.stage').evaluate((stage) => {
    const text = (selector: string) => stage.querySelector(selector)!.textContent.trim();
    const frame = stage.querySelector(':is(.sheet, .picture-sheet)')!.getBoundingClientRect();
    const leaves = ({ left, right, top, bottom, width }: DOMRect) =>
      width > 0 &&
      (left < frame.left - 2 || right > frame.right + 2 || top < frame.top - 2 || bottom > frame.bottom + 2);
    return {
      question: text('.question'),
      caption: text('.caption'),
      small: [...stage.querySelectorAll<HTMLElement>('h2, p, text')]
        .filter((element) => element.textContent.trim() !== '' && !element.closest('.visually-hidden'))
        .filter((element) => parseFloat(getComputedStyle(element).fontSize) < window.innerHeight / 25)
        .map((element) => element.textContent),
      outside: [...stage.querySelectorAll('.figure text')]
        .filter((element) => leaves(element.getBoundingClientRect()))
        .map((element) => element.textContent),
    };
  });
  expect(found.question, `step ${step}`).not.toBe('');
  // While the question is open nothing is given away.
  expect(found.caption, `step ${step}`).toMatch(half === 'answer' ? /^(?!.*(?:[{}]|NaN|undefined)).+/s : /^$/);
  expect(found.small, `step ${step}, smaller than 1/25`).toEqual([]);
  expect(found.outside, `step ${step}, outside the sheet`).toEqual([]);
}

/** Almost half of a phone's height is the figure's, with everything else above or below it. */
async function expectFigureHalf(page: Page, step: number): Promise<void> {
  await drawn(page);
  const [figure, caption, question, buttons] = await page.locator('.stage').evaluate((stage) =>
    ['.figure', '.caption', '.question', 'nav'].map((part) => {
      const { top, bottom, height } = stage.querySelector(`:scope > ${part}`)!.getBoundingClientRect();
      return { top, bottom, height };
    }),
  );
  expect(figure!.height, `step ${step}`).toBeGreaterThan(0.45 * 844);
  expect(caption!.bottom, `step ${step}`).toBeLessThanOrEqual(844);
  expect(buttons!.top, `step ${step}`).toBeGreaterThanOrEqual(question!.bottom);
  expect(figure!.top, `step ${step}`).toBeGreaterThanOrEqual(buttons!.bottom);
}
