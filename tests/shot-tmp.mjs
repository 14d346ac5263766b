import { chromium } from '@playwright/test';
const base = process.argv[3] ?? 'http://localhost:4471/lessons/working-distance/';
const shots = JSON.parse(process.argv[2]);
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
for (const { name, query = '', width = 1280, height = 720, dark, full, wait = 800, print, figure } of shots) {
  const context = await browser.newContext({ viewport: { width, height }, colorScheme: dark ? 'dark' : 'light', serviceWorkers: 'block' });
  const page = await context.newPage();
  page.on('console', (m) => m.type() === 'error' && console.log(name, m.text()));
  page.on('pageerror', (e) => console.log(name, 'ERR', e.message));
  await page.goto(base + query, { waitUntil: 'networkidle' });
  await page.waitForTimeout(wait);
  if (print) await page.pdf({ path: `/tmp/dshots/${name}.pdf`, format: 'A4' });
  else if (figure) await page.locator('.workbench, [data-workbench], figure').first().screenshot({ path: `/tmp/dshots/${name}.png` });
  else await page.screenshot({ path: `/tmp/dshots/${name}.png`, fullPage: !!full });
  if (full) console.log(name, await page.evaluate(() => document.documentElement.scrollHeight));
  await context.close();
}
await browser.close();
