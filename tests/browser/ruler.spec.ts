import { expect, test, type Locator, type Page } from '@playwright/test';
import { withExif } from '../support/exif-jpeg.ts';
import { greyPng } from '../support/png-head.ts';
import { coloursAt, expectAccessible } from './walk/axe.ts';
import { expectNarrow } from './walk/formulas.ts';
import { watched } from './walk/watch.ts';

/** A JPEG of a ruler, drawn by the browser: a dark mark every *period* pixels, on the grid of *columns* by *rows*. */
async function rulerJpeg(
  page: Page,
  columns: number,
  rows: number,
  period: number,
  upright = false,
): Promise<Uint8Array> {
  const base64 = await page.evaluate(
    async ({ columns, rows, period, upright }) => {
      const canvas = new OffscreenCanvas(columns, rows);
      const context = canvas.getContext('2d', { alpha: false })!;
      context.fillStyle = '#ddd';
      context.fillRect(0, 0, columns, rows);
      context.fillStyle = '#222';
      const [along, across] = upright ? [rows, columns] : [columns, rows];
      for (let mark = 0; mark * period < along; mark++) {
        const [start, wide, top, tall] = [mark * period, 0.2 * period, 0.3 * across, 0.4 * across];
        if (upright) context.fillRect(top, start, tall, wide);
        else context.fillRect(start, top, wide, tall);
      }
      const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 });
      const bytes = new Uint8Array(await blob.arrayBuffer());
      let text = '';
      for (let at = 0; at < bytes.length; at += 8192) text += String.fromCharCode(...bytes.subarray(at, at + 8192));
      return btoa(text);
    },
    { columns, rows, period, upright },
  );
  return Buffer.from(base64, 'base64');
}

const fileOf = (name: string, bytes: Uint8Array | string) => ({
  name,
  mimeType: 'image/jpeg',
  buffer: Buffer.from(bytes as never),
});

const choose = (page: Page, ...files: readonly ReturnType<typeof fileOf>[]) =>
  page
    .locator('input[type="file"]')
    .first()
    .setInputFiles([...files]);

const output = (page: Page, name: string) => page.locator(`output[name="${name}"]`).first();
const valueOf = async (place: Locator) => Number(await place.getAttribute('data-value'));
const listed = (page: Page) => page.locator('section[aria-labelledby="photographs"] tbody tr');
const trouble = (page: Page) => page.locator('.said .notice');

async function openSample(page: Page, name: string) {
  await page.getByText('No camera at hand?').click();
  await page.getByRole('button', { name }).click();
}

test('a photograph is opened, measured along a line that keys move, kept over a reload without its picture, and removed', async ({
  page,
  baseURL,
}) => {
  const faults = watched(page, baseURL!);
  await page.goto('ruler/');
  const jpeg = await rulerJpeg(page, 1200, 800, 14.6);
  const said = { focalLength: [500, 10], fNumber: [8, 1], pixels: [1200, 800], perCentimetre: [100_000, 300] } as const;
  await choose(page, fileOf('desk.jpg', withExif(jpeg, said)));
  // 14.6 pixels of 0.03 mm for a millimetre; what the file says filled the fields.
  await expect(output(page, 'magnification')).toHaveAttribute('data-value', /^0\.43/);
  expect(Math.abs((await valueOf(output(page, 'magnification'))) - 0.438)).toBeLessThan(0.0004);
  await expect(page.getByLabel('Sensor, longer side')).toHaveValue('36\u202fmm');
  await expect(page.getByLabel('Focal length, roughly')).toHaveValue('50\u202fmm');

  await page.getByLabel('From mark to mark').fill('0.5 mm');
  await page.getByLabel('From mark to mark').press('Tab');
  await expect(output(page, 'magnification')).toHaveAttribute('data-value', /^0\.87/);
  await page.getByLabel('Sensor, longer side').fill('banana');
  await page.getByLabel('Sensor, longer side').press('Tab');
  await expect(page.getByText('“banana” cannot be used.')).toBeVisible();
  await expect(output(page, 'magnification')).toHaveAttribute('data-value', /^0\.87/);

  // One end by keys, the loupe beside it; then off the ruler: no pattern, in words, and two places instead.
  const end = page.getByRole('button', { name: 'End of the line' });
  await end.focus();
  await expect(page.locator('.loupe canvas')).toBeVisible();
  await end.press('ArrowLeft');
  await expect(page.getByRole('button', { name: /End of the line: 1079 pixels across/ })).toBeFocused();
  await expect(output(page, 'magnification')).toHaveAttribute('data-value', /^0\.87/);
  const sheet = (await page.locator('.sheet').boundingBox())!;
  const drag = async (from: readonly [number, number], to: readonly [number, number]) => {
    await page.mouse.move(sheet.x + from[0] * sheet.width, sheet.y + from[1] * sheet.height);
    await page.mouse.down();
    await page.mouse.move(sheet.x + to[0] * sheet.width, sheet.y + to[1] * sheet.height, { steps: 4 });
    await page.mouse.up();
  };
  await page.locator('.sheet').scrollIntoViewIfNeeded();
  await drag([0.2, 0.1], [0.8, 0.12]);
  await expect(trouble(page)).toContainText('even tone');
  await page.getByLabel('between two places').check();
  await page.getByLabel('Between the two places').fill('50');
  await page.getByLabel('Between the two places').press('Tab');
  await expect(output(page, 'magnification')).toHaveAttribute('data-value', /^0\.4/);
  await page.getByLabel('by the marks’ pattern').check();
  await drag([0.1, 0.5], [0.9, 0.5]);
  await expect(output(page, 'magnification')).toHaveAttribute('data-value', /^0\.87/);

  await page.reload();
  await expect(listed(page)).toHaveCount(1);
  await expect(listed(page)).toContainText('desk.jpg');
  await page.getByRole('button', { name: 'desk.jpg', exact: true }).click();
  await expect(page.getByText('Its picture is not kept')).toBeVisible();
  await expect(output(page, 'magnification')).toHaveAttribute('data-value', /^0\.87/);
  await page.getByRole('button', { name: 'Remove desk.jpg' }).click();
  await expect(listed(page)).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(listed(page)).toHaveCount(1);
  expect(faults).toEqual([]);
});

test('files that are no photographs, or too large, damaged or turned, are named, and nothing is lost', async ({
  page,
  baseURL,
}) => {
  const faults = watched(page, baseURL!);
  await page.goto('ruler/');
  const jpeg = await rulerJpeg(page, 600, 900, 12, true);
  // Stored on its side, with the mark that says so: shown upright, its marks run across.
  await choose(page, fileOf('turned.jpg', withExif(jpeg, { orientation: 6 })));
  await expect(listed(page)).toHaveCount(1);
  await expect(page.locator('.said')).toContainText('900 × 600 pixels');
  await page.getByLabel('Sensor, longer side').fill('36');
  await page.getByLabel('Sensor, longer side').press('Tab');
  await expect(output(page, 'magnification')).toHaveAttribute('data-value', /^0\.(48|479)/);

  const heic = Buffer.from('0000001c6674797068656963000000006d696631686569636d696166', 'hex');
  const tiff = Buffer.concat([Buffer.from('49492a0008000000', 'hex'), Buffer.alloc(64)]);
  for (const [name, bytes, words] of [
    ['notes.jpg', 'Dear diary, today I measured nothing.', 'This file is a text'],
    ['nothing.jpg', '', 'an empty file'],
    ['huge.png', greyPng(20_000, 20_000, 1), '20000 × 20000 pixels'],
    ['dot.png', greyPng(1, 1), '1 × 1 pixels, too few to show marks'],
    ['half.png', greyPng(600, 400).subarray(0, 90), 'damaged or was cut off'],
    ['half.jpg', jpeg.subarray(0, 300), 'damaged or was cut off'],
    ['phone.heic', Buffer.concat([heic, Buffer.alloc(64)]), 'HEIC'],
    ['camera.raw', tiff, 'raw or TIFF'],
    [
      'noise.jpg',
      Buffer.from(Array.from({ length: 5000 }, (_, at) => (at * 7919) % 251)),
      'no picture that this page knows',
    ],
  ] as const) {
    await choose(page, fileOf(name, bytes));
    await expect(trouble(page), name).toContainText(words);
    await expect(trouble(page), name).toContainText('What was measured before is as it was.');
  }
  await expect(listed(page)).toHaveCount(1);
  await expect(output(page, 'magnification')).toHaveAttribute('data-value', /^0\.(48|479)/);

  // What a damaged storage holds is said, and measuring goes on.
  await page.evaluate(() => localStorage.setItem('ring-and-ruler.ruler', '[{"id":1,"__proto__":{"x":1}}]'));
  await page.reload();
  await expect(page.getByText('Measurements that this page cannot read')).toBeVisible();
  await page.setViewportSize({ width: 390, height: 844 });
  // Several at once, one of them none: the others are opened all the same.
  const flat = await rulerJpeg(page, 900, 600, 12);
  await choose(
    page,
    fileOf('flat.jpg', flat),
    fileOf('notes.jpg', 'Dear diary'),
    fileOf('short.jpg', flat.subarray(0, flat.length >> 1)),
  );
  await expect(listed(page).first()).toContainText('flat.jpg');
  await expect(trouble(page)).toContainText('This file is a text');
  // Of half a JPEG this browser shows half or nothing; either is said.
  await expect(page.locator('.said')).toContainText(/damaged or was cut off|part of it is missing/);
  await expectNarrow(page);
  expect(faults).toEqual([]);
});

test('a photograph of 40 megapixels is dropped, and measured to a part in a thousand', async ({ page }) => {
  await page.goto('ruler/');
  const jpeg = await rulerJpeg(page, 7728, 5152, 52.3);
  const data = await page.evaluateHandle((base64) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const transfer = new DataTransfer();
    transfer.items.add(new File([bytes], 'large.jpg', { type: 'image/jpeg' }));
    return transfer;
  }, Buffer.from(jpeg).toString('base64'));
  await page.dispatchEvent('main', 'drop', { dataTransfer: data });
  await page.getByLabel('Sensor, longer side').fill('36');
  await page.getByLabel('Sensor, longer side').press('Tab');
  await expect(output(page, 'magnification')).toBeVisible({ timeout: 120_000 });
  expect(Math.abs((await valueOf(output(page, 'magnification'))) / ((52.3 * 36) / 7728) - 1)).toBeLessThan(0.001);
});

test('samples say their own truth: lean, depth of field, and the lens, which goes into the kit with its errors', async ({
  page,
  baseURL,
}) => {
  const faults = watched(page, baseURL!);
  await page.goto('ruler/');
  await openSample(page, 'A ruler at a slant');
  await expect(output(page, 'subject-tilt')).toBeVisible({ timeout: 60_000 });
  expect(Math.abs((await valueOf(output(page, 'subject-tilt'))) - (42 * Math.PI) / 180)).toBeLessThan(0.02);
  await expect(output(page, 'depth-of-field')).toBeVisible();
  const [found, computed] = [
    await valueOf(output(page, 'depth-of-field')),
    await valueOf(output(page, 'expected.depth-of-field')),
  ];
  expect(Math.abs(found / computed - 1)).toBeLessThan(0.08);
  // A flat one beside it: the lens is told as well as the slanted one is, to some half of a per cent.
  await page.getByRole('button', { name: 'A ruler, laid flat' }).click();
  await expect(output(page, 'focal-length')).toHaveAttribute('data-error', /^0\.[2-5]/, { timeout: 60_000 });
  await expect(output(page, 'focal-length')).toContainText(/± 0\.[4-9]/);
  await page.getByRole('button', { name: 'Remove Sample: A ruler, laid flat' }).click();
  await page.getByRole('button', { name: 'Remove Sample: A ruler at a slant' }).click();

  await page.getByRole('button', { name: 'Four with different rings' }).click();
  await expect(output(page, 'focal-length')).toHaveAttribute('data-error', /^0\.0/, { timeout: 60_000 });
  await expect(listed(page)).toHaveCount(4, { timeout: 120_000 });
  await expect(page.locator('section[aria-labelledby="lens"] tbody tr')).toHaveCount(4, { timeout: 60_000 });
  await expect.poll(() => valueOf(output(page, 'focal-length'))).toBeCloseTo(50, 1);
  expect(await valueOf(output(page, 'focus-magnification'))).toBeCloseTo(0.15, 3);
  expect(Math.abs((await valueOf(output(page, 'front-principal-depth'))) - 22)).toBeLessThan(1.2);
  await expectAccessible(page, coloursAt(0));
  // None of four good ones is far out, and none is further off than its own error.
  for (const row of await page.locator('section[aria-labelledby="lens"] tbody tr').all())
    await expect(row).toContainText(/[+−]?0\.0\d\s%\s*± 0\.02\s%\s*−?0\.\d/);
  await expect(page.locator('[data-spoiler]')).toHaveCount(0);

  // A ring that was written down wrongly spoils the fit, and is pointed out.
  await page.getByLabel('Rings between').fill('33');
  await page.getByLabel('Rings between').press('Tab');
  await expect(page.locator('[data-spoiler]')).toContainText('“Sample: On 36 mm of rings” spoils the fit');
  await page.getByLabel('Rings between').fill('36');
  await page.getByLabel('Rings between').press('Tab');
  await expect(page.locator('[data-spoiler]')).toHaveCount(0);

  await page.getByRole('button', { name: 'Put it into the kit' }).click();
  await expect(page.getByText('Widest f-number takes')).toBeVisible();
  await page.getByLabel('Widest f-number').fill('1:1.8');
  await page.getByLabel('Name (if you like)').fill('The club’s fifty');
  await page.getByRole('button', { name: 'Put it into the kit' }).click();
  await expect(page.getByText('The club’s fifty is in your kit, with its errors.')).toBeVisible();
  await page.getByRole('link', { name: 'Open the kit' }).click();
  const part = page.locator('section[aria-labelledby="own"] li');
  await expect(part).toContainText('The club’s fifty');
  await expect(part).toContainText(/Focal length: 50\s?mm ± /);
  await expect(part).toContainText(/front rim to H: 2[12].*± /);
  expect(faults).toEqual([]);
});
