import { expect, test, type Locator, type Page } from '@playwright/test';
import jsQR from 'jsqr';
import { readPdf } from '../support/pdf.ts';
import { reported } from './walk/axe.ts';
import { expectNarrow } from './walk/formulas.ts';
import { watched } from './walk/watch.ts';

const wall = (page: Page) => page.locator('.stage');
const plan = (page: Page) => page.locator('[aria-labelledby="plan"] ol > li');
const titles = (page: Page) => plan(page).locator('.words').allTextContents();

async function take(page: Page, minutes: number) {
  await page.getByRole('button', { name: `${minutes} minutes:` }).click();
  await expect(page.getByLabel('Minutes in all')).toHaveText(String(minutes));
}

async function start(page: Page) {
  const end = page.getByRole('button', { name: 'End this evening' });
  if (await end.isVisible()) await end.click();
  await page.getByRole('button', { name: 'Start on this screen' }).click();
}

/** Waits until the wall stands there: `2 answer`. */
const at = (page: Page, place: string) => {
  const [step, half] = place.split(' ');
  return expect(wall(page)).toHaveAttribute(
    'aria-label',
    new RegExp(`^Projected view, step ${step} of \\d+, ${half}$`),
  );
};

/** What a drawn code says, square by square. */
async function codeIn(drawing: Locator): Promise<string | undefined> {
  const { dark, side } = await drawing.evaluate((svg) => {
    const path = svg.querySelector('path')!;
    const side = (svg as SVGSVGElement).viewBox.baseVal.width;
    const places = Array.from({ length: side * side }, (_, at) => [(at % side) - 3.5, Math.floor(at / side) - 3.5]);
    return { side, dark: places.map(([x, y]) => path.isPointInFill(new DOMPoint(x, y))) };
  });
  const scale = 4;
  const pixels = new Uint8ClampedArray(4 * (scale * side) ** 2);
  for (let y = 0; y < scale * side; y++)
    for (let x = 0; x < scale * side; x++)
      pixels.set(
        dark[Math.floor(y / scale) * side + Math.floor(x / scale)] ? [0, 0, 0, 255] : [255, 255, 255, 255],
        4 * (y * scale * side + x),
      );
  return jsQR(pixels, scale * side, scale * side)?.data;
}

/** Whether the figures of the step that is seen and of the next one are drawn. */
const isReady = (page: Page) =>
  page.evaluate(() => {
    const { items } = JSON.parse(localStorage.getItem('ring-and-ruler.workshop')!) as {
      items: { kind: string; lesson: string }[];
    };
    const step = Number(/step (\d+)/.exec(document.querySelector('.stage')!.getAttribute('aria-label')!)![1]);
    const [here, next] = [items[step - 1], items.slice(step).find(({ kind }) => kind === 'step')];
    return [here, next].every(
      (one) => one?.kind !== 'step' || document.querySelector(`[data-lesson="${one.lesson}"] :is(svg, canvas)`),
    );
  });

/** What the wall shows, in one look. */
const seen = (page: Page) =>
  page.evaluate(() => {
    const stage = document.querySelector('.stage')!;
    const figure = stage.querySelector<HTMLElement>('.lesson:not([data-away])');
    const [, step, count, half] = /step (\d+) of (\d+), (\w+)$/.exec(stage.getAttribute('aria-label')!)!;
    const { items } = JSON.parse(localStorage.getItem('ring-and-ruler.workshop')!) as { items: { kind: string }[] };
    return {
      step: Number(step),
      isStep: items[Number(step) - 1]?.kind === 'step',
      isLast: step === count,
      half,
      question: stage.querySelector('.question')!.textContent.replace(/\u00a0/g, ' '),
      caption: stage.querySelector('.caption')!.textContent,
      drawn: figure ? figure.querySelectorAll('svg, canvas').length > 0 : undefined,
      trouble: stage.querySelector('.card[role=status]')?.textContent.trim() ?? '',
      wide: document.documentElement.scrollWidth <= innerWidth,
    };
  });

for (const [minutes, width, height] of [
  [60, 390, 844],
  [120, 1280, 720],
] as const) {
  test(`the ready plan of ${minutes} minutes plays by a clicker from first to last step, ${width} × ${height}`, async ({
    page,
    baseURL,
  }) => {
    const faults = watched(page, baseURL!);
    await page.setViewportSize({ width, height });
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.goto('workshop/');
    await page.evaluate(() => Object.assign(window, { unloaded: false }));
    await take(page, minutes);
    const questions = await titles(page);
    await start(page);
    await at(page, '1 question');
    let answers = 0;
    for (;;) {
      // The figure of this step, and of the next one's lesson before it is asked for.
      await expect.poll(() => isReady(page)).toBe(true);
      const now = await seen(page);
      expect(now.trouble).toBe('');
      expect(now.drawn).toBe(now.isStep ? true : undefined);
      expect(now.wide).toBe(true);
      if (now.isLast) break;
      expect(now.question).toBe(questions[now.step - 1]);
      if (now.half === 'answer') {
        expect(now.caption).toMatch(/\S/);
        expect(now.caption).not.toMatch(/[{}]|NaN|undefined|Moved/);
        answers++;
      }
      await page.keyboard.press('PageDown');
      // An answer whose picture is still being computed keeps the first press.
      const stays = new RegExp(`step ${now.step} of \\d+, answer$`);
      if (now.half === 'answer' && stays.test((await wall(page).getAttribute('aria-label'))!))
        await page.keyboard.press('PageDown');
      await at(
        page,
        now.half === 'question' && !/^(?:Welcome|A break|A ring on|Five frames)/.test(now.question)
          ? `${now.step} answer`
          : `${now.step + 1} question`,
      );
    }
    expect(answers).toBe(questions.length - (minutes === 60 ? 2 : 3));
    await page.keyboard.press('Escape');
    await expect(wall(page)).toBeHidden();
    // Another evening after it, on the same page.
    await take(page, 180 - minutes);
    await start(page);
    await at(page, '1 question');
    await expect.poll(() => isReady(page)).toBe(true);
    expect(await page.evaluate(() => 'unloaded' in window)).toBe(true);
    expect(faults).toEqual([]);
  });
}

test('two windows are one evening: what one does the other shows, hands are counted in either, and the end tells what was believed', async ({
  context,
}) => {
  const first = await context.newPage();
  await first.emulateMedia({ reducedMotion: 'reduce' });
  await first.goto('workshop/');
  await take(first, 60);
  await start(first);
  await at(first, '1 question');
  const notes = await context.newPage();
  await notes.goto('workshop/?notes');
  await expect(notes.getByText('Step 1 of 14')).toBeVisible();
  await expect(notes.getByText('ends', { exact: false }).first()).toBeVisible();
  await notes.keyboard.press('PageDown');
  await at(first, '2 question');
  await expect(notes.getByText('Then: 15 mm: at 0.5×')).toBeVisible();

  // By number keys in the one, by button in the other; the last is taken back.
  for (const key of ['1', '2', '2', '2', 'Backspace', '4']) await first.keyboard.press(key);
  await notes.getByRole('button', { name: 'One hand more for 60 mm' }).click();
  await expect(first.locator('.below output')).toHaveText(['1', '2', '1']);
  await first.bringToFront();
  // A page that was loaded again knows which hand was the last; a pointer that nobody has moved marks nothing.
  await first.keyboard.press('3');
  await first.reload();
  await at(first, '2 question');
  await first.keyboard.press('Backspace');
  await expect(first.locator('.below output')).toHaveText(['1', '2', '1']);
  await expect(wall(first)).toHaveAttribute('data-pointer', 'rests');
  await first.mouse.move(300, 300);
  await first.mouse.move(310, 300);
  await expect(wall(first)).not.toHaveAttribute('data-pointer');
  await first.keyboard.press('b');
  await expect(notes.getByText('the wall is blank')).toBeVisible();
  await first.keyboard.press('b');
  await first.keyboard.press('PageDown');
  await expect(notes.getByText('Shown: 15 mm')).toBeVisible();

  // The notes' window has no clock of the wall's: the wall has none.
  await expect(first.locator('.clock')).toHaveCount(0);
  await first.keyboard.press('n');
  await expect(first.locator('.clock')).toBeVisible();
  await first.keyboard.press('n');

  // A jump by number, a lid closed and opened again.
  await first.keyboard.type('9');
  await first.keyboard.press('Enter');
  await at(first, '9 question');
  await first.keyboard.press('PageDown');
  await first.keyboard.press('j');
  await first.keyboard.type('8');
  await first.keyboard.press('Enter');
  await first.keyboard.press('PageDown');
  await at(first, '8 answer');
  await expect(first.locator('.stage .caption')).toContainText('1.59×');
  const said = await first.locator('.stage .caption').textContent();
  await first.reload();
  await at(first, '8 answer');
  await expect(first.locator('.stage .caption')).toHaveText(said!);
  await first.close();
  const again = await context.newPage();
  await again.goto('workshop/');
  await again.getByRole('button', { name: 'Go on with the evening' }).click();
  await at(again, '8 answer');

  await again.keyboard.press('Escape');
  await again.getByRole('button', { name: 'End this evening' }).click();
  await again.getByRole('button', { name: 'Undo' }).click();
  await again.getByRole('button', { name: 'Go on with the evening' }).click();
  await at(again, '8 answer');

  await again.keyboard.press('End');
  await expect(again.getByRole('heading', { name: 'What the room believed' })).toBeVisible();
  await expect(again.locator('.stage section output')).toHaveText(['1', '2', '1']);
  await expect(again.locator('[data-so]')).toContainText('15 mm');
  expect(await reported(again, '.stage')).toEqual([]);
  expect(await reported(notes, 'main')).toEqual([]);
});

test('notes say when no room sees the evening, and no clock runs before one does', async ({ context }) => {
  const [first, notes] = [await context.newPage(), await context.newPage()];
  await first.goto('workshop/');
  await take(first, 60);
  await notes.goto('workshop/?notes');
  const unseen = notes.locator('[role=status] .notice');
  await expect(unseen).toContainText('Nothing is projected yet: press “Start on this screen”');
  for (const press of ['PageDown', 'PageDown', 'b']) await notes.keyboard.press(press);
  await expect(notes.getByText('Then: 15 mm')).toBeVisible();
  await expect(notes.getByRole('button', { name: 'Blank' })).toHaveAttribute('aria-pressed', 'true');
  await expect(notes.getByText('the wall is blank')).toHaveCount(0);
  await expect(notes.getByText('The clock begins when the evening is on the wall.')).toBeVisible();

  await start(first);
  await at(first, '1 question');
  await expect(unseen).toHaveCount(0);
  await expect(notes.getByText('Step 1 of 14')).toBeVisible();
  await expect(notes.locator('.clock b')).toBeVisible();
  // Loaded later than the wall, too.
  await notes.reload();
  await expect(notes.locator('.clock b')).toBeVisible();
  for (const half of ['2 question', '2 answer']) {
    await notes.keyboard.press('PageDown');
    await at(first, half);
  }
  await expect(notes.getByText('Shown: 15 mm')).toBeVisible();
  await first.keyboard.press('Escape');
  await expect(unseen).toContainText('Nothing is projected now: press “Go on with the evening”');
  await first.getByRole('button', { name: 'Go on with the evening' }).click();
  await expect(unseen).toHaveCount(0);
  await first.goto('course/');
  await expect(unseen).toBeVisible();
});

test('what was said goes after some seconds; the way back stays, and follows nobody down the page', async ({
  page,
}) => {
  await page.clock.install();
  await page.goto('workshop/');
  await take(page, 60);
  const said = page.locator('.said p');
  await expect(said).toBeInViewport();
  await expect(said).toContainText('Change what you like.');
  await page.clock.fastForward(9000);
  await expect(said).toBeHidden();
  await take(page, 120);
  const undo = page.getByRole('button', { name: 'Undo' });
  const down = () => page.evaluate(() => scrollTo({ top: document.body.scrollHeight, behavior: 'instant' }));
  await down();
  await expect(undo).toBeInViewport();
  await page.clock.fastForward(9000);
  await expect(undo).not.toBeInViewport();
  await undo.click();
  await expect(page.getByLabel('Minutes in all')).toHaveText('60');
  await expect(page.getByText('As it was before.')).toBeVisible();
  await start(page);
  await at(page, '1 question');
  await expect(said).toHaveCount(0);
});

test('axe finds nothing to report on a wall where hands are counted, the notes over it', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
  await page.goto('workshop/');
  await take(page, 60);
  await start(page);
  await at(page, '1 question');
  await page.keyboard.press('PageDown');
  await at(page, '2 question');
  // By a tap, as on a tablet; the keys go on meaning the same.
  await page.locator('.below button').first().click();
  await page.keyboard.press('1');
  await expect(page.locator('.below output').first()).toHaveText('2');
  await page.keyboard.press('Backspace');
  await page.keyboard.press('Backspace');
  await expect(page.locator('.below output').first()).toHaveText('0');
  await page.keyboard.press('n');
  await expect(page.locator('.clock')).toBeVisible();
  // The room reads along: what is so is folded until it is shown.
  await expect(page.getByText('this is so')).toHaveCount(0);
  expect(await reported(page, '.stage')).toEqual([]);
});

test('a wall holds the longest options with their hands, and what was believed of them', async ({ page }) => {
  await page.goto('workshop/');
  const options = Array.from({ length: 6 }, (_, index) =>
    `${index + 1} ${'of rings and lenses '.repeat(3)}`.slice(0, 59),
  );
  const question = (id: number) => ({
    id: `question-${id}`,
    kind: 'question',
    question: `${id}: which of these would you take to the marsh at dawn, when there is wind and the sun is low?`,
    options,
    holds: 2,
    minutes: 1,
  });
  const items = [1, 2, 3, 4].map(question);
  await page.evaluate((plan) => localStorage.setItem('ring-and-ruler.workshop', JSON.stringify(plan)), {
    workshop: 'ring-and-ruler',
    version: 1,
    title: 'x',
    items,
  });
  await page.reload();
  await start(page);
  const isWhole = (box: Locator) => box.evaluate((one) => one.scrollHeight <= one.clientHeight + 1);
  for (const item of items) {
    await at(page, `${items.indexOf(item) + 1} question`);
    await page.keyboard.press('3');
    await expect(wall(page).locator('output')).toHaveText(['0', '0', '1', '0', '0', '0']);
    await expect.poll(() => isWhole(page.locator('.options'))).toBe(true);
    await page.keyboard.press('PageDown');
    await expect(wall(page).locator('[data-so]')).toContainText('✓');
    await page.keyboard.press('PageDown');
  }
  await expect(wall(page).locator('section')).toHaveCount(4);
  await expect.poll(() => isWhole(wall(page).locator('section').first().locator('..'))).toBe(true);
});

test('a figure that was dragged goes to the phones as it stands, and opens there with its numbers', async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto('workshop/');
  await take(page, 60);
  await start(page);
  await at(page, '1 question');
  await page.keyboard.type('8');
  await page.keyboard.press('Enter');
  await page.keyboard.press('PageDown');
  await at(page, '8 answer');
  await page.keyboard.press('p');
  await expect(page.getByText('Phones cannot open this copy.')).toBeVisible();
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await page.getByLabel('Address for phones').fill('nonsense here');
  await page.getByLabel('Address for phones').blur();
  await expect(page.getByText('“nonsense here” cannot be used')).toBeVisible();
  await page.getByLabel('Address for phones').fill('192.168.7.20:4321');
  await page.getByLabel('Address for phones').blur();
  await page.getByRole('button', { name: 'Go on with the evening' }).click();
  await at(page, '8 answer');
  await page.keyboard.press('p');
  const short = await page.locator('.phones .address').innerText();
  expect(short).toMatch(/^192\.168\.7\.20:4321\/(?:.*\/)?go\/\?extension\.three-rings\.a$/);
  await page.keyboard.press('p');
  const handle = wall(page).locator('.lesson:not([data-away]) svg [role=slider]').first();
  await handle.focus();
  await page.keyboard.press('ArrowLeft');
  await expect(wall(page).locator('.caption')).toContainText('Moved');
  await page.keyboard.press('p');
  const address = await page.locator('.phones .address').innerText();
  expect(address).toMatch(/^192\.168\.7\.20:4321\/(?:.*\/)?lessons\/extension\/\?extension=7\d$/);
  expect(address).not.toContain('extension=72');
  expect(await codeIn(page.locator('.phones svg'))).toBe(`http://${address}`);

  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('go/?4-3a');
  await expect(page).toHaveURL(/lessons\/extension\/\?extension=72#figure$/);
  await page.goto('go/?extension.no-ring');
  await expect(page).toHaveURL(/lessons\/extension\/#figure$/);
  await page.goto('go/?4-33');
  await expect(page.getByText('“4-33” is the name of no step')).toBeVisible();
  await page.goto(`lessons/extension/${new URL(`http://${address}`).search}`);
  await expect(page.getByRole('slider', { name: /xtension/ }).first()).toBeVisible();
  await expect(page.locator('.stage')).toHaveCount(0);
});

test('a plan is put together, moved by keys and by hand, kept, and the same in two tabs', async ({ context }) => {
  const [page, other] = [await context.newPage(), await context.newPage()];
  for (const one of [page, other]) await one.goto('workshop/');
  // A page behind another draws twice a second.
  await page.bringToFront();
  await page.getByLabel('Steps of a lesson').selectOption('stacking');
  await page.getByRole('button', { name: 'Add step 2' }).click();
  await page.getByRole('button', { name: 'Add step 4' }).click();
  await page.getByText('A question of your own').click();
  await page.getByLabel('Question for the room').fill('Who has a rail?');
  await page.getByLabel('Options, one a line').fill('Yes\nNo\nYes ');
  await page.getByRole('button', { name: 'Add the question' }).click();
  await expect(page.getByRole('alert')).toContainText('“Yes” stands there twice');
  await page.getByLabel('Options, one a line').fill('Yes\n\n No ');
  await page.getByLabel('Which of them is so').fill('3');
  await page.getByRole('button', { name: 'Add the question' }).click();
  await expect(page.getByRole('alert')).toContainText('1 to 2');
  await page.getByLabel('Which of them is so').fill('');
  await page.getByRole('button', { name: 'Add the question' }).click();
  await page.getByText('A pause', { exact: true }).click();
  await page.getByLabel('What it is for').fill('Tea');
  await page.getByRole('button', { name: 'Add the pause' }).click();
  await expect(plan(other)).toHaveCount(4);

  await page.locator('[data-item="question-1"]').getByText('Change it').click();
  await page.locator('[data-item="question-1"]').getByLabel('Question for the room').fill('Who brings a rail?');
  await page.locator('[data-item="question-1"]').getByRole('button', { name: 'Save the change' }).click();
  await expect.poll(async () => (await titles(other))[2]).toBe('Who brings a rail?');

  const before = await titles(page);
  await page.bringToFront();
  await page.getByRole('button', { name: 'Move step 4: Tea', exact: true }).focus();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => titles(other)).toEqual([before[0], 'Tea', before[1], before[2]]);
  await expect(page.getByRole('button', { name: 'Move step 2: Tea', exact: true })).toBeFocused();
  const grip = (await page.getByRole('button', { name: 'Move step 2: Tea', exact: true }).boundingBox())!;
  const last = (await plan(page).last().boundingBox())!;
  await page.mouse.move(grip.x + 10, grip.y + 10);
  await page.mouse.down();
  await page.mouse.move(grip.x + 10, last.y + last.height - 4, { steps: 5 });
  await page.mouse.up();
  await expect.poll(() => titles(page)).toEqual(before);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => titles(page)).toEqual([before[0], 'Tea', before[1], before[2]]);
  await page.getByRole('button', { name: 'Move step 2: Tea', exact: true }).press('End');
  await expect.poll(() => titles(page)).toEqual(before);

  const minutes = page.getByLabel('Minutes for step 4');
  await minutes.fill('25');
  await minutes.blur();
  await expect(other.getByLabel('Minutes in all')).toHaveText(String(4 + 4 + 4 + 25));
  await minutes.fill('a while');
  await minutes.blur();
  await expect(page.getByText('“a while” cannot be used')).toBeVisible();
  await expect(minutes).toHaveValue('25');
  await page.getByRole('button', { name: 'Remove step 1' }).click();
  await expect(plan(page)).toHaveCount(3);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => titles(page)).toEqual(before);
  await expect(page.locator('#bring + p')).toHaveText('a rail.');
  await expect(page.locator('.caution')).toContainText('never fire it close to anybody');
  await page.setViewportSize({ width: 390, height: 844 });
  await expectNarrow(page);
});

test('a plan comes back from its file and its link, and what is none changes nothing and is said', async ({ page }) => {
  await page.goto('workshop/');
  await take(page, 60);
  const all = await titles(page);
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).click();
  const path = await (await saving).path();
  await page.evaluate(() => Object.assign(navigator.clipboard, { writeText: () => Promise.reject(new Error('no')) }));
  await page.getByRole('button', { name: 'Copy a link' }).click();
  const link = await page.getByLabel('Link with your plan').inputValue();
  // Of this plan: the code of the longer one is of version 23, of which the reader in this test knows a wrong pattern (74 for 78 in ISO/IEC 18004).
  await page.getByRole('button', { name: 'Show a QR code' }).click();
  await expect(page.getByText('Other devices cannot open this copy.')).toBeVisible();
  await page.getByLabel('Address for phones').fill('192.168.7.20');
  await page.getByLabel('Address for phones').blur();
  const { port } = new URL(page.url());
  await expect(page.getByText(`No port was written, so it is this page’s own, ${port}.`)).toBeVisible();
  await page.getByRole('button', { name: 'Show a QR code' }).click();
  const drawn = await codeIn(page.getByRole('img', { name: 'QR code of a link with your plan' }));
  expect(drawn).toMatch(new RegExp(`^http://192\\.168\\.7\\.20:${port}/(?:.*/)?workshop/#plan=[\\w-]+$`));
  await take(page, 120);
  const kept = () => page.evaluate(() => localStorage.getItem('ring-and-ruler.workshop'));
  const before = await kept();
  for (const [text, words] of [
    ['{"kit":"ring-and-ruler","version":1,"parts":[]}', 'no plan'],
    ['[', 'not JSON'],
    [
      '{"workshop":"ring-and-ruler","version":1,"title":"x","items":[{"id":"a","kind":"step","lesson":"extension","step":99,"minutes":1}]}',
      'Item 1',
    ],
  ] as const) {
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await expect(page.locator('.said .notice')).toContainText(words);
    await expect(page.locator('.said .notice')).toContainText('Your plan is as it was.');
  }
  await page.evaluate(() => (location.hash = '#plan=nonsense'));
  await expect(page.locator('.said .notice')).toContainText('damaged');
  expect(await kept()).toBe(before);

  for (const bring of [
    () => page.locator('input[type=file]').setInputFiles(path),
    () => page.evaluate((hash) => (location.hash = hash), new URL(link).hash),
  ]) {
    await bring();
    await expect(page.getByText('Nothing has changed yet.')).toBeVisible();
    await page.getByRole('button', { name: 'Replace my plan by it' }).click();
    expect(await titles(page)).toEqual(all);
    await page.getByRole('button', { name: 'Undo' }).click();
    expect((await titles(page)).length).toBe(29);
  }
  await page.evaluate(() => localStorage.setItem('ring-and-ruler.workshop', '{"workshop":7}'));
  await page.reload();
  await expect(page.getByText('A plan that this page cannot read lies in this browser')).toBeVisible();
  expect(await kept()).toBe('{"workshop":7}');
});

test('the handout is one print: running order, a page for each lesson, problems and their key', async ({ page }) => {
  await page.addInitScript(() => (window.print = () => undefined));
  await page.goto('workshop/');
  await take(page, 60);
  await page.getByLabel('Address for phones').fill('192.168.7.20:4321');
  await page.getByLabel('Address for phones').blur();
  for (const paper of ['A4', 'Letter'] as const) {
    await page.getByLabel('Paper').selectOption({ label: paper });
    await page.getByRole('button', { name: 'Print', exact: true }).click();
    await expect(page.locator('.handout .drawing > svg')).toHaveCount(4);
    await expect(page.locator('.handout .katex').first()).toBeAttached();
    const pages = await readPdf(await page.pdf({ preferCSSPageSize: true }));
    expect(Math.round(pages[0]!.height)).toBe(paper === 'A4' ? 297 : 279);
    const text = pages.map((one) => one.text);
    expect(text[0]).toContain('Running order');
    expect(text[0]).toContain('Say aloud before hands are on the gear');
    // A page for each lesson, with no answer on it.
    const first = text.findIndex((one) => one.includes('How big is it') && !one.includes('Running order'));
    const titles = ['How big is it', 'What do the numbers', 'What does each extension ring', 'Why does f/8'];
    for (const [place, title] of titles.entries()) expect(text[first + place]).toContain(title);
    const sheets = text
      .slice(first, first + 4)
      .join(' ')
      .replace(/\s+/g, ' ');
    expect(sheets).not.toContain('0.87×');
    // What the figures found has blanks to be filled in.
    for (const found of ['image 15 mm', 'works at f/16', '2 stops lost', '57.1']) expect(sheets).not.toContain(found);
    expect(sheets).toMatch(/image … ?mm/);
    expect(sheets).toContain('works at f/…');
    expect(sheets).toContain('far away f/8');
    expect(text[first + 4]).toContain('Problems, What does each ring buy?');
    expect(text.at(-1)).not.toContain('Running order');
    expect(text.join(' ')).toContain('The whole working');
    expect(Math.min(...pages.map(({ smallest }) => smallest))).toBeGreaterThanOrEqual(5);
    await page.reload();
    await expect(plan(page)).toHaveCount(14);
  }
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });
  test('the page says in words what it needs', async ({ page }) => {
    await page.goto('workshop/');
    await expect(page.getByText('they do not run here')).toBeVisible();
  });
});
