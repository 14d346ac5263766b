import { expect, test, type Page } from '@playwright/test';
import { expectAccessible } from './walk/axe.ts';
import { expectNarrow } from './walk/formulas.ts';
import { watched } from './walk/watch.ts';

const output = (page: Page, name: string) => page.locator(`.groups output[name="${name}"]`);
const query = (page: Page) => expect.poll(() => new URL(page.url()).search);

/** The middle of a handle's mark. */
async function grip(page: Page, name: RegExp) {
  const box = (await page.getByRole('slider', { name }).locator('.reach').boundingBox())!;
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function pull(page: Page, from: { x: number; y: number }, to: { x: number; y: number }) {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 6 });
  await page.mouse.up();
}

test('a chain is built by list and by hand, says every number with its formulas, and its address brings it back', async ({
  page,
  baseURL,
}) => {
  const faults = watched(page, baseURL!);
  await page.addInitScript(() => {
    const seen = new PerformanceObserver((list) => {
      for (const shift of list.getEntries() as (PerformanceEntry & { value: number; hadRecentInput: boolean })[])
        if (!shift.hadRecentInput) document.documentElement.dataset['jumped'] = String(shift.value);
    });
    seen.observe({ type: 'layout-shift', buffered: true });
  });
  await page.goto('bench/');
  // 0.15 + 24/50, and 50 (1 + 1/m) − 22.
  await expect(output(page, 'magnification')).toHaveAttribute('data-value', /^0\.63/);
  await expect(output(page, 'working-distance')).toHaveText('107\u202fmm');
  // What came after the figure has moved nothing.
  await expect(page.locator('html')).not.toHaveAttribute('data-jumped');
  const list = page.locator('.chain ol > li');
  await page.locator('#first-add').selectOption({ label: '12 mm ring' });
  await page.getByRole('button', { name: 'Add it' }).click();
  await expect(list).toHaveCount(4);
  await page.getByRole('button', { name: 'Move 12 mm ring towards the camera' }).click();
  await query(page).toBe('?chain=body-36,ring-12,ring-24,lens-50');
  await expect(page.getByRole('button', { name: 'Move 12 mm ring outwards' })).toBeFocused();
  await page.getByRole('button', { name: 'Remove 12 mm ring' }).click();
  await expect(list).toHaveCount(3);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(list).toHaveCount(4);

  // By hand: a part from the list into the figure, another off it, the sharp plane nearer.
  await page.getByText('All parts, to press or to pull').click();
  const chip = page.locator('.palette').getByRole('button', { name: '36 mm ring' });
  await chip.scrollIntoViewIfNeeded();
  const from = (await chip.boundingBox())!;
  const sheet = (await page.locator('.drawing svg').boundingBox())!;
  await pull(page, { x: from.x + 9, y: from.y + 9 }, { x: sheet.x + sheet.width - 60, y: sheet.y + sheet.height / 2 });
  await query(page).toBe('?chain=body-36,ring-36,ring-12,ring-24,lens-50');
  const ring = await grip(page, /^36 mm ring/);
  await pull(page, ring, { x: ring.x, y: ring.y - 170 });
  await query(page).toBe('?chain=body-36,ring-12,ring-24,lens-50');
  const plane = await grip(page, /^Sharp plane/);
  await pull(page, plane, { x: plane.x - 8, y: plane.y });
  await query(page).toMatch(/lens-50:m0\.\d{1,5}$/);

  // Turned round without what it hangs on: the numbers stand, and the page says what is missing.
  await page.getByRole('button', { name: /^Free end of 50 mm f\/1.8/ }).press('Enter');
  await expect(page.getByRole('button', { name: 'Turn 50 mm f/1.8 round' })).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator('.chain .notice')).toContainText('needs a reversing ring behind it');
  await page.getByRole('button', { name: 'How the magnification follows' }).click();
  const working = page.locator('[data-quantity="magnification"] .working');
  await expect(working).toContainText('From the numbers of the parts.');
  await expect(working.locator('.katex-html').last()).toBeVisible();
  // The address follows when the hand has rested.
  await query(page).toMatch(/:turned/);
  const before = await output(page, 'magnification').getAttribute('data-value');
  await page.goto(page.url());
  await expect(output(page, 'magnification')).toHaveAttribute('data-value', before!);

  // A lesson takes the same numbers.
  await page.goto('bench/?chain=body-36,ring-36,lens-50');
  const link = page.locator('[data-quantity="effective-f-number"]').getByRole('link', { name: /^Lesson/ });
  await link.click();
  await expect(page.locator('output[name="effective-f-number"]').first()).toHaveAttribute('data-value', /^14\.32/);
  expect(faults).toEqual([]);
});

test('a bad link keeps what can be kept; a chain that cannot be says which part and why', async ({ page, baseURL }) => {
  const faults = watched(page, baseURL!);
  await page.goto('bench/?chain=body-36,sofa,ring-24,my-ring:extension=-4,lens-50:f99999&wavelength=red&show=x');
  await expect(page.locator('.notices .notice')).toHaveCount(6);
  await expect(page.locator('.notices')).toContainText('“sofa”: the crate has nothing of that name');
  await expect(output(page, 'magnification')).toHaveAttribute('data-value', /^0\.63/);
  await page.goto('bench/?chain=body-36,lens-50,converter-2');
  await expect(page.locator('.state')).toContainText(
    'Part 3, ×2 converter: A converter stands behind the lens, not in front of it.',
  );
  await expect(page.locator('[data-faulty]')).toContainText('×2 converter');
  await page.getByRole('button', { name: 'Move ×2 converter towards the camera' }).click();
  await expect(output(page, 'magnification')).toBeVisible();
  expect(faults).toEqual([]);
});

test('two chains stand side by side, what differs first, and on the wall', async ({ page, baseURL }) => {
  const faults = watched(page, baseURL!);
  await page.goto('bench/?chain=body-36,ring-24,lens-50&beside=body-36,lens-60&equal=magnification');
  await expect(page.locator('.state')).toContainText('The second chain is set to 0.63×, as the first.');
  const rows = page.locator('tbody tr');
  await expect(rows.first()).not.toHaveAttribute('data-alike');
  await expect(rows.last()).toHaveAttribute('data-alike', '');
  await page.getByLabel('Side by side at').selectOption('working-distance');
  await expect(page.locator('.state')).toContainText('The second chain is set to 107');
  await page.setViewportSize({ width: 390, height: 844 });
  await expectNarrow(page);
  await page.setViewportSize({ width: 1280, height: 720 });
  await expectAccessible(page, 'dark');

  await page.keyboard.press('Alt+p');
  const stage = page.locator('.stage');
  await expect(stage.locator('.question')).toHaveText(/Which chain/);
  await expect(stage.locator('.caption')).toHaveText('');
  await page.keyboard.press('PageDown');
  await expect(stage.locator('.caption')).toContainText('Above');
  await query(page).toContain('stage=1&answered');
  await page.reload();
  await expect(stage.locator('.caption')).toContainText('Above');
  await page.keyboard.press('b');
  await expect(stage.locator('.blank')).toBeVisible();
  await page.keyboard.press('b');
  await page.keyboard.press('Escape');
  await expect(stage).toHaveCount(0);
  expect(faults).toEqual([]);
});

test('own parts come from the kit, go into the address spelled out, and give ranges where something is assumed', async ({
  page,
}) => {
  await page.goto('kit/');
  const add = async (kind: string, fields: Readonly<Record<string, string>>) => {
    await page.locator('#kind').selectOption(kind);
    for (const [name, text] of Object.entries(fields)) await page.locator(`.add [name="${name}"]`).fill(text);
    await page.locator('.add button[type="submit"]').press('Enter');
  };
  await add('camera', { 'sensor-width': '36', 'sensor-height': '24', 'register-distance': '44' });
  await add('lens', { name: 'My fifty', 'focal-length': '50', 'max-aperture': '1.8', 'focus-magnification': '1:7' });
  await page.getByRole('link', { name: 'My fifty on the bench' }).click();
  await expect(page.locator('.chain ol > li').last()).toContainText('My fifty');
  await expect(page.locator('.answer[data-quantity="working-distance"] .range')).toContainText(/ to .*mm/);
  await expect(page.locator('.because')).toContainText('of this lens are assumed');
  await expect(page.locator('#first-add optgroup').first()).toHaveAttribute('label', 'Your kit');
  await expect(page.locator('#first-camera option', { hasText: /camera$/ })).toHaveCount(1);
  const value = await output(page, 'magnification').getAttribute('data-value');
  // Elsewhere, without that kit.
  const address = page.url();
  await page.goto('glossary/');
  await page.evaluate(() => localStorage.clear());
  await page.goto(address);
  await expect(page.locator('.chain ol > li').last()).toContainText('My fifty');
  await expect(output(page, 'magnification')).toHaveAttribute('data-value', value!);
});

test('a lens on a camera of a shorter register gets its adapter, and words of the page say what they mean', async ({
  page,
  baseURL,
}) => {
  const faults = watched(page, baseURL!);
  await page.goto('bench/?chain=my-camera:sensor-width=36:sensor-height=24:register-distance=20,lens-50');
  const notice = page.locator('.chain .notice');
  await expect(notice).toContainText('it needs an adapter of 24\u202fmm');
  await page.getByRole('button', { name: 'Put in the 24\u202fmm adapter' }).click();
  await expect(notice).toHaveCount(0);
  await expect(output(page, 'magnification')).toHaveText('0.15×');
  await query(page).toContain('my-ring:name=24_mm_adapter:extension=24:contacts=yes,lens-50');

  const row = page.locator('.answer[data-quantity="principal-separation"]');
  const term = row.locator('a.term');
  await expect(term).toHaveAttribute('href', '../glossary/#principal-separation');
  await term.hover();
  await expect(page.locator('#meaning')).toContainText('the distance between them');
  const letters = page.locator('.drawing text', { hasText: /^H′?$/ });
  await expect(letters).toHaveCount(2);
  for (const letter of await letters.all()) await expect(letter).toHaveClass(/lit/);
  await page.getByText('What is drawn in the figure').click();
  await expect(page.getByText('A chief ray passes the middle of the opening')).toBeVisible();
  expect(faults).toEqual([]);
});
