/** Takes the picture of a lesson that README.md shows, from the built site: `node tests/support/retake-lesson-picture.ts`. */
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { builtBase } from './built-base.ts';
import { browserFlags, findBrowser } from './find-browser.ts';
import { listen } from './listen.ts';
import { root } from './run.ts';
import { staticServer } from './static-server.ts';

const base = builtBase();
const server = staticServer(join(root, 'dist'), base);
const address = `http://localhost:${await listen(server, 0)}${base}lessons/extension/`;
const browser = await chromium.launch({ executablePath: await findBrowser(), args: [...browserFlags] });
try {
  const page = await browser.newPage({
    viewport: { width: 1280, height: 800 },
    colorScheme: 'light',
    serviceWorkers: 'block',
  });
  await page.goto(address, { waitUntil: 'networkidle' });
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path: join(root, 'site', 'lesson.png') });
} finally {
  await browser.close();
  server.close();
}
