import { expect, type Page } from '@playwright/test';

/** So high may a lesson be with everything folded: on a phone 7000, of which a finger's larger controls and the kept copy's buttons take 50. */
const high = 6950;
/** So far down may the first problem be, in windows: three flicks of a thumb. */
const farDown = 6.75;

/** A lesson is short in the hand; what it is not about is folded. Ends at the size it began with. */
export async function expectShort(page: Page): Promise<void> {
  const before = page.viewportSize()!;
  await page.setViewportSize({ width: 390, height: 844 });
  const found = await page.evaluate(async () => {
    await document.fonts.ready;
    const parts = [...document.querySelectorAll<HTMLElement>('.part')];
    // What is out of sight would count with a guessed height.
    for (const part of parts) part.style.contentVisibility = 'visible';
    const high = document.documentElement.scrollHeight;
    const problem = document.querySelector('.part-check form')!.getBoundingClientRect().top + scrollY;
    for (const part of parts) part.style.contentVisibility = '';
    return { high, down: problem / innerHeight };
  });
  expect(found.high, 'px on a phone').toBeLessThan(high);
  expect(found.down, 'windows to the first problem').toBeLessThan(farDown);
  await page.setViewportSize(before);
}
