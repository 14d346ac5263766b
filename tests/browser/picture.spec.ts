import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { root } from '../support/run.ts';
import { lessons } from './pages.ts';

const sheet = (page: Page) => page.locator('.picture-sheet');

/** The spread of brightness over the picture: an empty canvas has none. */
function spreadOf(page: Page): Promise<number> {
  return sheet(page)
    .locator('canvas')
    .first()
    .evaluate((canvas: HTMLCanvasElement) => {
      const { width, height } = canvas;
      if (width === 0 || height === 0) return 0;
      const { data } = canvas.getContext('2d')!.getImageData(0, 0, width, height);
      const values = Array.from({ length: width * height }, (_, at) => data[4 * at + 1]!).filter((value) => value > 0);
      if (values.length === 0) return 0;
      const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
      return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
    });
}

/** A lesson that makes a picture has a sheet for it. */
const withPicture = lessons.filter((path) =>
  readFileSync(`${root}/${path}figures/Bench.svelte`, 'utf8').includes('<PictureSheet'),
);
if (withPicture.length === 0) throw new Error('No lesson has a <PictureSheet>: nothing to render.');

for (const path of withPicture) {
  test(`/${path} renders its picture beside the page`, async ({ page }) => {
    await page.goto(`${path}?sheet=picture`);
    await expect.poll(() => spreadOf(page), { timeout: 60_000 }).toBeGreaterThan(5);
  });
}

test('a page fetches no worker before its picture is opened', async ({ page }) => {
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(request.url()));
  await page.goto('lessons/depth-of-field/');
  await page.waitForLoadState('networkidle');
  expect(fetched.filter((url) => url.includes('worker'))).toEqual([]);
  await page.getByRole('button', { name: 'The picture this gives' }).click();
  await expect.poll(() => fetched.some((url) => url.includes('worker'))).toBe(true);
});

test.describe('a picture', () => {
  const path = 'lessons/depth-of-field/?sheet=picture&subject=stamp';

  test('is compared with the sharp one, in words too, and put aside', async ({ page }) => {
    await page.goto(path);
    await sheet(page).getByLabel('Compare with').selectOption('sharp');
    await expect(sheet(page).locator('output')).toContainText(/dB|same/, { timeout: 60_000 });
    await sheet(page).getByRole('button', { name: 'Keep for comparison' }).click();
    await sheet(page).getByLabel('Compare with').selectOption('aside');
    await sheet(page).getByLabel('Layout').selectOption('divided');
    await expect(sheet(page).getByLabel('Position of the dividing line')).toBeVisible();
  });

  test('is arranged by its address as by hand, and the address says what has been arranged', async ({ page }) => {
    const choice = (name: string) => sheet(page).getByLabel(name);
    await page.goto(path);
    await choice('Compare with').selectOption('sharp');
    await choice('Layout').selectOption('divided');
    await choice('Position of the dividing line').fill('0.3');
    await expect.poll(() => new URL(page.url()).searchParams.get('divide')).toBe('0.3');
    const copied = page.url();
    await page.goto('about:blank');
    await page.goto(copied);
    await expect(choice('Compare with')).toHaveValue('sharp');
    await expect(choice('Layout')).toHaveValue('divided');
    await expect(choice('Position of the dividing line')).toHaveValue('0.3', { timeout: 60_000 });
    await page.getByRole('button', { name: 'Reset all settings' }).click();
    // The sheet is where the reader is, not a setting.
    expect(new URL(page.url()).search).toBe('?sheet=picture');
  });

  test('that a link arranges as none can be says what there is', async ({ page }) => {
    await page.goto(`${path}&arranged=upside-down&divide=2`);
    const notices = page.locator('.notices .notice');
    await expect(notices).toHaveCount(2);
    await expect(notices.first()).toContainText('enlarged where they differ most');
    await expect(sheet(page).getByLabel('Compare with')).toHaveValue('nothing');
    await sheet(page).getByLabel('Compare with').selectOption('sharp');
    await expect(notices).toHaveCount(0);
  });

  test('is saved as a file that carries its settings in its name', async ({ page }) => {
    await page.goto(path);
    const save = sheet(page).getByRole('button', { name: 'Save picture' });
    await expect(save).toBeEnabled({ timeout: 60_000 });
    const [download] = await Promise.all([page.waitForEvent('download'), save.click()]);
    expect(download.suggestedFilename()).toMatch(/stamp.*f8.*\.png$/);
  });

  test('says in words why there is none, and the page works on', async ({ page }) => {
    await page.goto('lessons/depth-of-field/?sheet=picture&subject=slanted-scale&focal-length=4&magnification=20');
    await expect(sheet(page).getByRole('status')).toContainText(/in front of the entrance pupil/, { timeout: 60_000 });
    await expect(sheet(page).getByRole('status')).toContainText(/would be −[\d.]+\smm/);
    await expect(sheet(page).locator('canvas')).toBeHidden();
    // What the lesson is not about is folded.
    await page.evaluate(() => document.querySelectorAll('details').forEach((fold) => (fold.open = true)));
    await page.locator('input[name="magnification"]').fill('0.5');
    await page.locator('input[name="magnification"]').press('Enter');
    await page.locator('input[name="focal-length"]').fill('100');
    await page.locator('input[name="focal-length"]').press('Enter');
    await expect.poll(() => spreadOf(page), { timeout: 60_000 }).toBeGreaterThan(5);
  });

  test('that no worker can make says what still works', async ({ page }) => {
    await page.addInitScript(() => {
      Object.defineProperty(window, 'Worker', {
        value: class {
          constructor() {
            throw new Error('blocked');
          }
        },
      });
    });
    await page.goto(path);
    await expect(sheet(page).getByRole('status')).toContainText('still work');
  });
});
