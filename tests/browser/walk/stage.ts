import { expect, type Page } from '@playwright/test';
import { crowded } from './room.ts';

/** An old projector and a phone lying: the narrowest and the widest for their height, and the smallest. Between them stand all others. */
const furtherWalls = [
  { width: 1024, height: 768 },
  { width: 844, height: 390 },
];
/** A laptop’s window, as wide for its height as a phone lying, and a large screen, a larger 1280 × 720: for lessons that are asked what all share. */
const likeOthers = [
  { width: 1280, height: 600 },
  { width: 1920, height: 1080 },
];

type Half = 'question' | 'answer';

interface Place {
  readonly step: number;
  readonly half: Half;
}

/** What one place of the view shows, as it was found there. */
interface Found {
  readonly label: string;
  /** The step that the address names. */
  readonly named: string | null;
  readonly question: string;
  readonly caption: string;
  /** In words, what is wrong with where and how it stands. */
  readonly faults: readonly string[];
}

/**
 * Plays all steps: every question and answer on one wall, then the answers on further walls and on a phone in the hand, backward and forward. A
 * question is its answer's figure at another setting under the same words. Another step costs a browser less than another size, so a wall is
 * taken once.
 *
 * @param everyWall whether on walls, too, that show what another does at another size
 */
export async function projectAllSteps(page: Page, everyWall: boolean): Promise<void> {
  await page.setViewportSize({ width: 1280, height: 720 });
  const ids = await page
    .locator('.stage-steps > li')
    .evaluateAll((items) => items.map((item) => (item as HTMLElement).dataset['stageNames']!.split(' ')[0]));
  const steps = ids.length;
  expect(steps).toBeGreaterThan(3);
  const stage = page.locator('.stage');
  const labelOf = ({ step, half }: Place) => `Projected view, step ${step} of ${steps}, ${half}`;
  // What a change looks like on its way is for the shared tests: here it is there at once.
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.keyboard.press('Alt+KeyP');
  await expect(stage).toHaveAttribute('aria-label', labelOf({ step: 1, half: 'question' }));

  const numbers = Array.from({ length: steps }, (_, index) => index + 1);
  const places = numbers.flatMap((step) => (['question', 'answer'] as const).map((half) => ({ step, half })));
  const told = await along(page, 'PageDown', 1, places.length, [illegible, crowded, givenAway]);
  for (const [index, { label, named, question, caption, faults }] of told.entries()) {
    const { step, half } = places[index]!;
    expect(label).toBe(labelOf({ step, half }));
    expect(named, `step ${step} in the address`).toBe(ids[step - 1]);
    expect(question, `step ${step}`).not.toBe('');
    // While the question is open nothing is given away; what speaks of a picture waits for it.
    expect(caption, `step ${step}`).toMatch(half === 'answer' ? /^(?!.*(?:[{}]|NaN|undefined)).+/s : /^$/);
    expect(faults, label).toEqual([]);
  }

  const answers = numbers.map((step) => labelOf({ step, half: 'answer' }));
  const onwards: { width: number; height: number; look: () => string[] }[] = [
    ...[...furtherWalls, ...(everyWall ? likeOthers : [])].map((wall) => ({ ...wall, look: crowded })),
    { width: 390, height: 844, look: outOfHand },
  ];
  for (const [index, { width, height, look }] of onwards.entries()) {
    await page.setViewportSize({ width, height });
    const isBack = index % 2 === 0;
    const found = await along(page, isBack ? 'PageUp' : 'PageDown', 2, steps, [look]);
    expect(found.map(({ label }) => label)).toEqual(isBack ? answers.toReversed() : answers);
    const faults = found.flatMap(({ label, faults }) => faults.map((words) => `${label}: ${words}`));
    expect(faults, `at ${width} × ${height}`).toEqual([]);
  }
  await page.keyboard.press('Escape');
  await expect(stage).toBeHidden();
  await page.emulateMedia({ reducedMotion: null });
  await page.setViewportSize({ width: 1280, height: 720 });
}

/**
 * Looks at the place where the view stands and at others, each so many presses of *key* from the last one: *count* places in all. *looks* run in
 * the page. All in one call: a browser takes longer to be asked than to answer. Two presses at once are drawn as one.
 */
function along(
  page: Page,
  key: 'PageUp' | 'PageDown',
  presses: number,
  count: number,
  looks: readonly (() => string[])[],
): Promise<Found[]> {
  return page.evaluate(`(async () => {
    const looks = [${looks.join(', ')}];
    // Once to measure, once to follow.
    const drawn = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    const stage = document.querySelector('.stage');
    const text = (selector) => stage.querySelector(selector).textContent.trim();
    const found = [];
    for (let place = 0; place < ${count}; place++) {
      const event = { key: '${key}', code: '${key}', bubbles: true, cancelable: true };
      const press = async () => {
        document.activeElement.dispatchEvent(new KeyboardEvent('keydown', event));
        // What it changes is written before this goes on, and not yet drawn.
        await null;
      };
      for (let pressed = 0; place > 0 && pressed < ${presses}; pressed++) {
        const before = stage.getAttribute('aria-label');
        await press();
        // An answer whose picture is still being computed keeps the first press.
        if (stage.getAttribute('aria-label') === before) await press();
      }
      await drawn();
      found.push({
        label: stage.getAttribute('aria-label'),
        named: new URLSearchParams(location.search).get('stage'),
        question: text('.question'),
        caption: text('.caption'),
        faults: looks.flatMap((look) => look()),
      });
    }
    return found;
  })()`);
}

/** Words smaller than 1/25 of the height, or outside the sheet. */
function illegible(): string[] {
  const stage = document.querySelector('.stage')!;
  const frame = stage.querySelector(':is(.sheet, .picture-sheet)')!.getBoundingClientRect();
  const leaves = ({ left, right, top, bottom, width }: DOMRect) =>
    width > 0 && (left < frame.left - 2 || right > frame.right + 2 || top < frame.top - 2 || bottom > frame.bottom + 2);
  const small = [...stage.querySelectorAll<HTMLElement>('h2, p, text')]
    .filter((element) => element.textContent.trim() !== '' && !element.closest('.visually-hidden'))
    .filter((element) => parseFloat(getComputedStyle(element).fontSize) < window.innerHeight / 25);
  const outside = [...stage.querySelectorAll('.figure text')].filter((element) =>
    leaves(element.getBoundingClientRect()),
  );
  return [
    ...small.map(({ textContent }) => `“${textContent}” is smaller than 1/25`),
    ...outside.map(({ textContent }) => `“${textContent}” stands outside the sheet`),
  ];
}

/** What the step withholds is in its figure: with the answer it shows, before it does not. */
function givenAway(): string[] {
  const place = new URLSearchParams(location.search);
  const step = document.querySelectorAll<HTMLElement>('.stage-steps > li')[Number(place.get('stage')) - 1];
  const wanted = place.has('answered') ? 'visible' : 'hidden';
  return (step?.dataset['stageWithheld']?.split(' ') ?? []).flatMap((id) => {
    const marks = document.querySelectorAll(`.stage .figure [data-quantity='${id}']`);
    const shown = new Set([...marks].map((mark) => getComputedStyle(mark).visibility));
    return shown.size === 1 && shown.has(wanted)
      ? []
      : [`${id} is withheld, and ${[...shown].join(' and ') || 'nowhere'}`];
  });
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
