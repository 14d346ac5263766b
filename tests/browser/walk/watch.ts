import type { Page } from '@playwright/test';

/** Watches a page from before it opens; the list that comes back fills with whatever it complains of and whomever else it asks. */
export function watched(page: Page, baseURL: string): readonly string[] {
  const faults: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  page.on('pageerror', ({ message }) => faults.push(message));
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(baseURL) && !/^(data|blob):/.test(url)) faults.push(`asks ${url}`);
  });
  page.on('response', (response) => {
    if (!response.ok() && response.status() !== 304) faults.push(`${response.status()} ${response.url()}`);
  });
  return faults;
}

/** Waits until the page has drawn what it was told: once to measure, once to follow. */
export async function drawn(page: Page): Promise<void> {
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
}
