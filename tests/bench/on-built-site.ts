import { chromium, type Browser } from '@playwright/test';
import { builtBase } from '../support/built-base.ts';
import { browserFlags, findBrowser } from '../support/find-browser.ts';
import { listen } from '../support/listen.ts';
import { staticServer } from '../support/static-server.ts';
import { dist } from './built.ts';

/** What *measure* finds with a browser at the address of the built site, which is served until it has; both are closed whatever becomes of it. */
export async function onBuiltSite<Found>(
  measure: (browser: Browser, address: string) => Promise<Found>,
): Promise<Found> {
  const base = builtBase();
  const server = staticServer(dist, base);
  const address = `http://localhost:${await listen(server, 0)}${base}`;
  const browser = await chromium.launch({ executablePath: await findBrowser(), args: [...browserFlags] });
  try {
    return await measure(browser, address);
  } finally {
    await browser.close();
    server.close();
  }
}
