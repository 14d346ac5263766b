import { expect, test } from '@playwright/test';
import { glossary } from '#core/quantity/glossary.ts';
import { terms } from '#core/quantity/terms.ts';
import { lessons, sharing } from './pages.ts';

const [path] = sharing;

test.describe('a term in a lesson', () => {
  test.beforeEach(async ({ page }) => {
    await page.goto(path!);
    await expect(page.locator('#meaning')).toBeAttached();
  });

  test('says its plain sentence under the mouse and at the keyboard’s focus, and is silent at Escape', async ({
    page,
  }) => {
    const term = page.locator('#idea a.term').first();
    const meaning = page.locator('#meaning');
    const entry = (await term.getAttribute('href'))!.split('#')[1];
    const { plain } = terms.find(({ id }) => id === entry)!;
    await term.hover();
    await expect(meaning).toBeVisible();
    await expect(meaning).toContainText(plain);
    await meaning.hover();
    await expect(meaning).toBeVisible();
    await page.keyboard.press('Escape');
    await expect(meaning).toBeHidden();
    await page.mouse.move(0, 0);
    await page.keyboard.press('Tab');
    await term.focus();
    await expect(meaning).toBeVisible();
    await expect(term).toHaveAttribute('aria-describedby', 'meaning');
    await page.keyboard.press('Enter');
    await expect(page).toHaveURL(/glossary\/#[a-z-]+$/);
    await expect(page.locator('details.entry:target')).toHaveAttribute('open', '');
  });
});

test.describe('a letter of a formula', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });

  test('says what it means at a touch, wherever it stands: its line stands once, where it is explained', async ({
    page,
  }) => {
    await page.goto(path!);
    const meaning = page.locator('#meaning');
    await expect(meaning).toBeAttached();
    const lines = await page
      .locator('dl.letters > div')
      .evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset['quantity']));
    expect(new Set(lines).size).toBe(lines.length);
    const letter = page.locator('#example .katex-html [data-quantity="magnification"]').first();
    await letter.evaluate((here) => here.scrollIntoView({ block: 'center' }));
    await letter.tap();
    await expect(meaning).toContainText('magnification, image size over subject size');
    await meaning.getByRole('link').tap();
    await expect(page).toHaveURL(/glossary\/#magnification$/);
  });

  test('has a line to say in every lesson, in prose and in workings', async ({ request }) => {
    for (const lesson of lessons) {
      const html = await (await request.get(lesson)).text();
      const letters = [...html.matchAll(/<span class="katex-html".*?(?=<span class="katex-mathml"|<\/div>)/gs)].flatMap(
        ([formula]) => [...formula.matchAll(/data-quantity="([^"]+)"/g)].map(([, id]) => id!),
      );
      expect(letters.length, lesson).toBeGreaterThan(0);
      expect(
        letters.filter((id) => !(id.slice(id.lastIndexOf('.') + 1) in glossary)),
        lesson,
      ).toEqual([]);
    }
  });
});

test.describe('under a finger', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });

  test('a term says its sentence at the first touch, within the window, and stays on the page', async ({ page }) => {
    await page.goto(path!);
    const meaning = page.locator('#meaning');
    await expect(meaning).toBeAttached();
    await page.locator('#formula a.term, #limits a.term').first().tap();
    await expect(meaning).toBeVisible();
    const box = (await meaning.boundingBox())!;
    expect(box.x).toBeGreaterThanOrEqual(0);
    expect(box.x + box.width).toBeLessThanOrEqual(390);
    expect(page.url()).toContain(path!);
    await meaning.getByRole('link').tap();
    await expect(page).toHaveURL(/glossary\/#/);
  });

  test('a term leads to its entry where the network does not give its sentence', async ({ page }) => {
    await page.route('**/meaning-of*', (route) => route.abort());
    await page.goto(path!);
    await expect(page.locator('#meaning')).toBeAttached();
    await page.locator('#formula a.term, #limits a.term').first().tap();
    await expect(page).toHaveURL(/glossary\/#/);
  });

  test('the glossary is read without scrolling sideways', async ({ page }) => {
    await page.goto('glossary/');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });

  test('every term leads to its entry in the glossary', async ({ page }) => {
    await page.goto(path!);
    const addresses = await page
      .locator('a.term')
      .evaluateAll((links) => links.map((link) => link.getAttribute('href')!));
    expect(addresses.length).toBeGreaterThan(5);
    await page.goto('glossary/');
    for (const address of new Set(addresses))
      await expect(page.locator(`[id="${address.split('#')[1]!}"]`)).toHaveCount(1);
  });
});
