import { expect, test, type Page } from '@playwright/test';
import { drawn } from './watch.ts';

/** A hand on the first slider moves no part of the page but the values. */
export async function expectStillUnderTheHand(page: Page): Promise<void> {
  await page.evaluate(() => document.fonts.ready);
  const slider = page.locator('.controls input[type=range]').first();
  await slider.scrollIntoViewIfNeeded();
  await drawn(page);
  await page.evaluate(() => {
    const observer = new PerformanceObserver(() => undefined);
    observer.observe({ type: 'layout-shift', buffered: false });
    Object.assign(window, { observer });
  });
  const box = (await slider.boundingBox())!;
  const [left, middle] = [box.x + box.width * 0.3, box.y + box.height / 2];
  await page.mouse.move(box.x + box.width / 2, middle);
  await page.mouse.down();
  for (let part = 0; part <= 10; part++) await page.mouse.move(left + (part / 10) * 0.4 * box.width, middle);
  await page.mouse.up();
  await drawn(page);
  const shift = await page.evaluate(() => {
    const { observer } = window as unknown as { observer: PerformanceObserver };
    const entries = observer.takeRecords() as (PerformanceEntry & { value: number })[];
    observer.disconnect();
    return entries.reduce((sum, { value }) => sum + value, 0);
  });
  expect(shift, 'how far the page shifted').toBeLessThan(0.01);
}

/** Readings are as high at every end of every slider and with every choice, numbers or words in them, on each of three screens. */
export async function expectReadingsAsHigh(page: Page): Promise<void> {
  const { settings, words } = await page.evaluate(async () => {
    const readings = document.querySelector<HTMLElement>('.readings')!;
    const back = document.querySelector<HTMLButtonElement>('.bench-actions button')!;
    const all = (selector: string) => [...document.querySelectorAll<HTMLInputElement | HTMLSelectElement>(selector)];
    const settings = [
      ...all('.controls input[type=range]').map((slider) => {
        const { min, max } = slider as HTMLInputElement;
        return { control: slider, values: [min, max], event: 'input' };
      }),
      ...all('.controls select').map((choice) => {
        const options = [...(choice as HTMLSelectElement).options].filter(({ disabled }) => !disabled);
        return { control: choice, values: options.map(({ value }) => value), event: 'change' };
      }),
    ];
    const follow = async () => void (await Promise.resolve());
    back.click();
    await follow();
    // What the readings say is made once and measured on each screen: a figure takes far longer to follow than they take to stand there.
    const said = new Map([[readings.innerHTML, 'at first']]);
    let words = 0;
    for (const { control, values, event } of settings) {
      for (const value of values) {
        control.value = value;
        control.dispatchEvent(new Event(event, { bubbles: true }));
        await follow();
        words += readings.querySelectorAll('[data-type=object]').length;
        if (!said.has(readings.innerHTML))
          said.set(readings.innerHTML, `${control.ariaLabel ?? control.name} at ${value}`);
        // A slider's one end follows upon the other; what a choice brings along, the next would keep.
        if (event === 'input' && value !== values.at(-1)) continue;
        back.click();
        await follow();
      }
    }
    Object.assign(window, { said });
    return { settings: settings.reduce((sum, { values }) => sum + values.length, 0), words };
  });
  test.info().annotations.push({ type: 'words', description: `${words} in ${settings} settings` });
  expect(settings).toBeGreaterThan(4);
  // Else numbers would be held against numbers: somewhere every lesson has an answer that is none.
  expect(words, 'readings in words').toBeGreaterThan(0);
  for (const [width, height] of [
    [1280, 720],
    [1440, 900],
    [360, 800],
  ] as const) {
    await page.setViewportSize({ width, height });
    await drawn(page);
    const { start, others } = await page.evaluate(() => {
      const { said } = window as unknown as { said: Map<string, string> };
      const readings = document.querySelector<HTMLElement>('.readings')!;
      const copy = readings.cloneNode() as HTMLElement;
      readings.replaceWith(copy);
      const heights = [...said].map(([html, where]) => {
        copy.innerHTML = html;
        return { where, high: Math.round(copy.getBoundingClientRect().height) };
      });
      copy.replaceWith(readings);
      const start = heights[0]!.high;
      return {
        start,
        others: heights.filter(({ high }) => high !== start).map(({ where, high }) => `${where}: ${high} px`),
      };
    });
    expect(start, `px on ${width} × ${height}`).toBeGreaterThan(20);
    expect(others, `as high as ${start} px on ${width} × ${height}`).toEqual([]);
  }
}

/** Whoever jumps to the end of the page finds it where it was before the parts in between were seen. */
export async function expectStillWhenJumped(page: Page): Promise<void> {
  await page.locator('.lesson[data-settled]').waitFor();
  // The problem that the address names takes the height that it needs.
  await page.locator('.part-check [data-island]:not([inert])').waitFor({ state: 'attached' });
  const high = () => page.evaluate(() => document.documentElement.scrollHeight);
  const before = await high();
  await page.evaluate(() => scrollTo({ top: document.documentElement.scrollHeight, behavior: 'instant' }));
  await drawn(page);
  expect(await high(), 'px from top to end, seen and unseen').toBe(before);
  await page.evaluate(() => scrollTo({ top: 0, behavior: 'instant' }));
}
