import { expect, test } from '@playwright/test';
import { pages } from './pages.ts';

for (const path of pages) {
  test(`/${path} keeps to its content policy and asks no other host`, async ({ page, baseURL }) => {
    const complaints: string[] = [];
    const elsewhere: string[] = [];
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(message.text());
    });
    page.on('pageerror', ({ message }) => complaints.push(message));
    page.on('request', (request) => {
      if (!request.url().startsWith(baseURL!) && !/^(data|blob):/.test(request.url())) elsewhere.push(request.url());
    });
    await page.goto(path);
    await page.mouse.wheel(0, 20000);
    await page.waitForTimeout(300);
    const policy = (await page.locator('meta[http-equiv="content-security-policy"]').getAttribute('content'))!;
    const scripts = /(?:^|;)\s*script-src ([^;]*)/.exec(policy)![1]!;
    expect(scripts).not.toContain('unsafe');
    expect(policy).toContain("default-src 'self'");
    expect(complaints).toEqual([]);
    expect(elsewhere).toEqual([]);
  });
}
