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
  for (const [width, height] of [
    [1280, 720],
    [1440, 900],
    [360, 800],
  ] as const) {
    await page.setViewportSize({ width, height });
    await drawn(page);
    const { start, others, settings, words } = await page.evaluate(async () => {
      const readings = document.querySelector('.readings')!;
      const back = document.querySelector<HTMLButtonElement>('.bench-actions button')!;
      const high = () => Math.round(readings.getBoundingClientRect().height);
      const all = (selector: string) => [...document.querySelectorAll<HTMLInputElement | HTMLSelectElement>(selector)];
      const settings = [
        ...all('.controls input[type=range]').flatMap((slider) => {
          const { min, max } = slider as HTMLInputElement;
          return [min, max].map((value) => ({ control: slider, value, event: 'input' }));
        }),
        ...all('.controls select').flatMap((choice) =>
          [...(choice as HTMLSelectElement).options]
            .filter(({ disabled }) => !disabled)
            .map(({ value }) => ({ control: choice, value, event: 'change' })),
        ),
      ];
      back.click();
      await Promise.resolve();
      const start = high();
      const others: string[] = [];
      let words = 0;
      for (const { control, value, event } of settings) {
        control.value = value;
        control.dispatchEvent(new Event(event, { bubbles: true }));
        await Promise.resolve();
        words += readings.querySelectorAll('[data-type=object]').length;
        if (high() !== start) others.push(`${control.ariaLabel ?? control.name} at ${value}: ${high()} px`);
        back.click();
        await Promise.resolve();
      }
      return { start, others, settings: settings.length, words };
    });
    test.info().annotations.push({ type: 'words', description: `${words} in ${settings} settings` });
    expect(settings).toBeGreaterThan(4);
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
