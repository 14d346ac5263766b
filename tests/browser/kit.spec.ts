import { expect, test, type Page } from '@playwright/test';
import { watched } from './walk/watch.ts';

/** Fills in the form that is open and adds the part. */
async function add(page: Page, kind: string, fields: Readonly<Record<string, string>>) {
  await page.locator('#kind').selectOption(kind);
  for (const [name, text] of Object.entries(fields)) await page.locator(`.add [name="${name}"]`).fill(text);
  await page.locator('.add button[type="submit"]').press('Enter');
}

const camera = { 'sensor-width': '36', 'sensor-height': '24 mm', 'register-distance': '44' };
const lens = { name: 'My fifty', 'focal-length': '50', 'max-aperture': '1:1.8', 'focus-magnification': '1:7' };

/** Lets a file fall on the page. */
async function drop(page: Page, text: string, name = 'kit.json') {
  const data = await page.evaluateHandle(
    ({ text, name }) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([text], name));
      return transfer;
    },
    { text, name },
  );
  await page.dispatchEvent('main', 'drop', { dataTransfer: data });
}

const parts = (page: Page) => page.locator('section[aria-labelledby="own"] li');

test('a kit is entered, kept, and listed first in a lesson, with the ranges of what is assumed', async ({
  page,
  baseURL,
}) => {
  const faults = watched(page, baseURL!);
  await page.goto('kit/');
  await add(page, 'camera', camera);
  await add(page, 'lens', { ...lens, 'focal-length': 'banana' });
  await expect(page.locator('.add [name="focal-length"]')).toBeFocused();
  await expect(page.locator('.add .notice').first()).toContainText('“banana” cannot be used');
  await page.locator('.add [name="focal-length"]').fill('50');
  await page.locator('.add button[type="submit"]').press('Enter');
  await add(page, 'ring', { extension: '13' });
  await expect(parts(page)).toHaveCount(3);
  // The focus is with what has just been entered.
  await expect(parts(page).nth(2).locator('.name')).toBeFocused();
  await expect(page.locator('.why')).toContainText('of this lens are assumed');
  await page.reload();
  await expect(parts(page)).toHaveCount(3);
  await page.getByRole('button', { name: 'Remove My fifty' }).click();
  await expect(parts(page)).toHaveCount(2);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(parts(page).nth(1)).toContainText('My fifty');

  await page.goto('lessons/extension/');
  await expect(page.locator('select[name="lens"] optgroup').first()).toHaveAttribute('label', 'Your kit');
  await page.locator('select[name="lens"]').selectOption({ label: 'My fifty' });
  await expect(page.locator('.assumed')).toHaveText(/w .* to .*mm.*: P, h, HH′ and length of this lens are assumed\./);
  await page.getByLabel('my 13').check();
  // 1/7 by itself, and 24 + 13 mm over 50 mm.
  await expect(page.locator('output[name="magnification"]').first()).toHaveAttribute('data-value', /^0\.88285/);
  const button = page.locator('[data-example-switch]');
  await expect(button).toHaveText('Work it with my own kit');
  await button.click();
  await expect(page.locator('select[name="sensor"]')).toHaveValue('my-camera-1');

  // Where chains are searched the whole kit is one more to choose from, and an address can name it: the lens with the ring and without.
  await page.goto('lessons/choosing-kit/?kit=own');
  await expect(page.locator('select[name="kit"]')).toHaveValue('own');
  await expect(page.locator('output[name="chain-count"]').first()).toHaveAttribute('data-value', '2');
  await expect(page.locator('.notices')).toHaveCount(0);

  // What it finds is planned with the same parts, and the card says between what the room lies.
  await page.goto('lessons/choosing-kit/?kit=own&nearest.working-distance=0&subject-width=70');
  await expect(page.locator('.assumed')).toHaveText(/^Of the best: room .* to .*mm.*My fifty: P, h, HH′ and length/);
  await page.getByText('The whole list, with reasons').click();
  await page.getByRole('link', { name: 'Plan it: place 1' }).click();
  await expect(page.locator('.notes')).toContainText('From the camera: 13 mm extension ring, My fifty.');
  await page.getByRole('button', { name: 'Next' }).click();
  await page.getByRole('button', { name: '4 The card' }).click();
  await expect(page.locator('.sheet svg').first()).toContainText(/3 Room.*\d to \d+.*mm/);
  expect(faults).toEqual([]);
});

test('a link shows its kit and asks; nothing is sent anywhere', async ({ page, context, baseURL }) => {
  const faults = watched(page, baseURL!);
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto('kit/');
  await page.getByRole('button', { name: 'Begin with the club’s crate' }).click();
  // The list is written after the press: counted at once it may still be empty.
  await expect(parts(page)).not.toHaveCount(0);
  const count = await parts(page).count();
  await page.getByRole('button', { name: 'Copy a link' }).click();
  await expect(page.getByText('Copied:')).toBeVisible();
  const link = await page.evaluate(() => navigator.clipboard.readText());
  expect(link).toMatch(/\/kit\/#kit=[\w-]+$/);
  await page.getByRole('button', { name: 'Show a QR code' }).click();
  await expect(page.getByRole('img', { name: 'QR code' })).toBeVisible();

  // From a page that keeps no kit: one that does may still be writing it.
  await page.goto('glossary/');
  await page.evaluate(() => localStorage.clear());
  await page.goto(link);
  await expect(page.getByRole('heading', { name: 'A link brings a kit' })).toBeVisible();
  await expect(parts(page)).toHaveCount(0);
  await page.getByRole('button', { name: 'Leave mine as it is' }).click();
  await expect(parts(page)).toHaveCount(0);
  await page.goto('about:blank');
  await page.goto(link);
  await page.getByRole('button', { name: 'Take it as my kit' }).click();
  await expect(parts(page)).toHaveCount(count);
  expect(new URL(page.url()).hash).toBe('');
  expect(faults).toEqual([]);
});

test('bad files and bad links change nothing and say why', async ({ page }) => {
  await page.goto('kit/');
  await add(page, 'camera', camera);
  const before = await page.evaluate(() => localStorage.getItem('ring-and-ruler.kit'));
  for (const [text, words] of [
    ['a'.repeat(10_000_000), 'larger than any kit'],
    ['['.repeat(200_000), 'not JSON'],
    ['\u0000\u0001', 'not JSON'],
    ['{"kit":"ring-and-ruler","version":1,"parts":[{"__proto__":{"x":1}}]}', 'Part 1'],
    [
      JSON.stringify({ kit: 'ring-and-ruler', version: 1, parts: Array.from({ length: 10_000 }, () => 0) }),
      '10000 parts',
    ],
    [
      '{"kit":"ring-and-ruler","version":1,"parts":[{"id":"a","kind":"ring","name":"R","extension":-3,"contacts":"no"}]}',
      '“Length” takes',
    ],
  ] as const) {
    await drop(page, text);
    await expect(page.locator('.said .notice')).toContainText(words);
    await expect(page.locator('.said .notice')).toContainText('Your kit is as it was.');
  }
  await page.evaluate(() => (location.hash = '#kit=nonsense'));
  await expect(page.locator('.said .notice')).toContainText('damaged');
  expect(await page.evaluate(() => localStorage.getItem('ring-and-ruler.kit'))).toBe(before);
  await expect(parts(page)).toHaveCount(1);
});

test('what two tabs enter becomes one kit', async ({ context }) => {
  const [first, second] = [await context.newPage(), await context.newPage()];
  for (const page of [first, second]) await page.goto('kit/');
  // A page behind another draws twice a second.
  await first.bringToFront();
  await add(first, 'camera', camera);
  await expect(parts(second)).toHaveCount(1);
  await second.bringToFront();
  await add(second, 'lens', lens);
  await add(first, 'ring', { extension: '12' });
  for (const page of [first, second]) await expect(parts(page)).toHaveCount(3);
});

test('without a kit a lesson fetches nothing of it', async ({ page }) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.goto('lessons/extension/');
  await expect(page.locator('select[name="lens"]')).toBeVisible();
  await expect(page.locator('[data-example-switch]')).toHaveText('Work it with the figure’s numbers');
  expect(asked.filter((url) => /in-lesson/.test(url))).toEqual([]);
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });
  test('the page says in words what it needs', async ({ page }) => {
    await page.goto('kit/');
    await expect(page.getByText('they do not run here')).toBeVisible();
    await expect(page.getByRole('button', { name: /Add/ })).toHaveCount(0);
  });
});
