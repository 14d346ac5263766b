import { mkdtempSync, rmSync } from 'node:fs';
import type { Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { freePort, listen } from '../support/listen.ts';
import { run } from '../support/run.ts';
import { staticServer } from '../support/static-server.ts';
import { lessons } from './pages.ts';

const base = '/club/workbook/';

test.describe('the workbook under a path of its own', () => {
  let folder: string;
  let server: Server;
  let address: string;

  test.beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'ring-and-ruler-base-'));
    expect(await run('astro', ['build', '--outDir', folder], { BASE_PATH: base })).toBe(0);
    server = staticServer(folder, base);
    const port = await freePort();
    await listen(server, port);
    address = `http://localhost:${port}${base}`;
  });

  test.afterAll(() => {
    server.close();
    rmSync(folder, { recursive: true });
  });

  test('loads everything from below it and links nowhere else', async ({ page }) => {
    const strays: string[] = [];
    page.on('response', (response) => {
      if (!response.ok() || !response.url().startsWith(address)) strays.push(`${response.status()} ${response.url()}`);
    });
    for (const path of ['', 'course/', 'glossary/', lessons[0]!]) {
      await page.goto(`${address}${path}`);
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
      const links = await page
        .locator('a[href^="/"]')
        .evaluateAll((anchors) => anchors.map((anchor) => anchor.getAttribute('href')!));
      expect(links.filter((link) => !link.startsWith(base))).toEqual([]);
    }
    await page.locator('.controls input[type=range]').first().press('ArrowRight');
    expect(strays).toEqual([]);
  });
});
