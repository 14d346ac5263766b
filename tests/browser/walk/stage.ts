import { expect, type Page } from '@playwright/test';
import { crowded } from './room.ts';
import { drawn } from './watch.ts';

/** Old and new projectors, a laptop’s window, a large screen, and a phone lying. */
const walls = [
  { width: 1280, height: 720 },
  { width: 1024, height: 768 },
  { width: 1280, height: 600 },
  { width: 1920, height: 1080 },
  { width: 844, height: 390 },
];

interface Place {
  readonly step: number;
  readonly half: 'question' | 'answer';
}

/**
 * Plays all steps forward and backward, question and answer, on each wall and on a phone in the hand, and leaves. Another step costs a
 * browser less than another size, so a wall is taken once.
 */
export async function projectAllSteps(page: Page): Promise<void> {
  await page.setViewportSize({ width: 1280, height: 720 });
  const steps = await page.locator('.stage-steps > li').count();
  expect(steps).toBeGreaterThan(3);
  const stage = page.locator('.stage');
  const places = Array.from({ length: steps }, (_, index) => index + 1).flatMap((step) =>
    (['question', 'answer'] as const).map((half) => ({ step, half })),
  );
  const labelOf = ({ step, half }: Place) => `Projected view, step ${step} of ${steps}, ${half}`;
  // What a change looks like on its way is for the shared tests: here it is there at once.
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.keyboard.press('Alt+KeyP');
  for (const place of places) {
    if (place !== places[0]) await page.keyboard.press('PageDown');
    await expect(stage).toHaveAttribute('aria-label', labelOf(place));
    await expectLegible(page, place.step, place.half);
  }
  let way = places;
  for (const wall of walls) {
    await page.setViewportSize(wall);
    way = way.toReversed();
    const found = await along(page, way[0]!.step === 1 ? 'PageDown' : 'PageUp', way, /answer$/, crowded);
    expect(found.map(({ label }) => label)).toEqual(way.map(labelOf));
    const faults = found.flatMap(({ label, said }) => said.map((words) => `${label}: ${words}`));
    expect(faults, `at ${wall.width} × ${wall.height}`).toEqual([]);
  }
  await page.setViewportSize({ width: 390, height: 844 });
  way = way.toReversed();
  const found = await along(page, way[0]!.step === 1 ? 'PageDown' : 'PageUp', way, /./, outOfHand);
  expect(found.map(({ label }) => label)).toEqual(way.map(labelOf));
  expect(found.filter(({ said }) => said.length > 0)).toEqual([]);
  await page.keyboard.press('Escape');
  await expect(stage).toBeHidden();
  await page.emulateMedia({ reducedMotion: null });
  await page.setViewportSize({ width: 1280, height: 720 });
}

/**
 * Goes on with *key* from the first of *places* to the last and says where the view stood and, at those that *where* names, what *look*, which
 * runs in the page, finds there. All in one call: a browser takes longer to be asked than to answer.
 */
function along(
  page: Page,
  key: 'PageUp' | 'PageDown',
  places: readonly Place[],
  where: RegExp,
  look: () => string[],
): Promise<{ label: string; said: string[] }[]> {
  return page.evaluate(`(async () => {
    const look = ${look};
    // Once to measure, once to follow.
    const drawn = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    const found = [];
    for (let place = 0; place < ${places.length}; place++) {
      const event = { key: '${key}', code: '${key}', bubbles: true, cancelable: true };
      if (place > 0) document.activeElement.dispatchEvent(new KeyboardEvent('keydown', event));
      await Promise.resolve();
      const label = document.querySelector('.stage').getAttribute('aria-label');
      const isLookedAt = ${where}.test(label);
      if (isLookedAt) await drawn();
      found.push({ label, said: isLookedAt ? look() : [] });
    }
    return found;
  })()`);
}

/** Words that hold, none smaller than 1/25 of the height, none outside the sheet. */
async function expectLegible(page: Page, step: number, half: 'question' | 'answer'): Promise<void> {
  expect(new URL(page.url()).searchParams.get('stage')).toBe(`${step}`);
  await drawn(page);
  const found = await page.locator('.stage').evaluate((stage, step) => {
    const text = (selector: string) => stage.querySelector(selector)!.textContent.trim();
    // What the step withholds is in its figure: with the answer it shows, before it does not.
    const withheld = document.querySelectorAll<HTMLElement>('.stage-steps > li')[step - 1]!.dataset['stageWithheld'];
    const shown = (id: string) =>
      [...stage.querySelectorAll(`.figure [data-quantity='${id}']`)].map(
        (element) => getComputedStyle(element).visibility,
      );
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
      withheld: withheld?.split(' ').map((id) => ({ id, shown: [...new Set(shown(id))] })) ?? [],
    };
  }, step);
  expect(found.question, `step ${step}`).not.toBe('');
  // While the question is open nothing is given away.
  expect(found.caption, `step ${step}`).toMatch(half === 'answer' ? /^(?!.*(?:[{}]|NaN|undefined)).+/s : /^$/);
  for (const { id, shown } of found.withheld)
    expect(shown, `step ${step}, ${id} withheld`).toEqual([half === 'answer' ? 'visible' : 'hidden']);
  expect(found.small, `step ${step}, smaller than 1/25`).toEqual([]);
  expect(found.outside, `step ${step}, outside the sheet`).toEqual([]);
}

/** What a phone held upright shows too small or in the wrong order: almost half of its height is the figure's, all else above or below it. */
function outOfHand(): string[] {
  const stage = document.querySelector('.stage')!;
  const [figure, caption, question, buttons] = ['.figure', '.caption', '.question', 'nav'].map((part) =>
    stage.querySelector(`:scope > ${part}`)!.getBoundingClientRect(),
  ) as [DOMRect, DOMRect, DOMRect, DOMRect];
  return [
    figure.height > 0.45 * innerHeight ? '' : `the figure is ${figure.height} px high`,
    caption.bottom <= innerHeight ? '' : 'the caption is cut off',
    buttons.top >= question.bottom ? '' : 'the buttons lie on the question',
    figure.top >= buttons.bottom ? '' : 'the figure lies on the buttons',
  ].filter((words) => words !== '');
}
