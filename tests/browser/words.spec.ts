import { expect, test } from '@playwright/test';
import { sharing } from './pages.ts';

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
    const plain = (await term.getAttribute('data-plain'))!;
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
