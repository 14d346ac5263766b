import { expect, type Page } from '@playwright/test';

/** Scripts run by their hashes alone, and every link of the site stays below the path where it stands. */
export async function expectPolicy(page: Page, baseURL: string): Promise<void> {
  const policy = (await page.locator('meta[http-equiv="content-security-policy"]').getAttribute('content'))!;
  const scripts = /(?:^|;)\s*script-src ([^;]*)/.exec(policy)![1]!;
  expect(scripts).not.toContain('unsafe');
  expect(policy).toContain("default-src 'self'");
  const links = await page
    .locator('a[href^="/"]')
    .evaluateAll((anchors) => anchors.map((anchor) => anchor.getAttribute('href')!));
  const base = new URL(baseURL).pathname;
  expect(links.length).toBeGreaterThan(0);
  expect(links.filter((link) => !link.startsWith(base))).toEqual([]);
}
