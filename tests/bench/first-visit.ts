/** What a first visit brings over the wire, as the browser counts it: headers and fonts included. */
import type { Browser } from '@playwright/test';

export interface FirstVisit {
  /** Bytes received in all, and of fonts alone. */
  readonly total: number;
  readonly fonts: number;
  readonly requests: number;
  /** Addresses outside the site; there must be none. */
  readonly elsewhere: readonly string[];
}

export async function firstVisit(browser: Browser, address: string): Promise<FirstVisit> {
  // The worker that keeps the site for use offline is left out: it fetches the other pages, not this one.
  const context = await browser.newContext({ viewport: { width: 1280, height: 720 }, serviceWorkers: 'block' });
  try {
    const page = await context.newPage();
    const network = await context.newCDPSession(page);
    await network.send('Network.enable');
    const kinds = new Map<string, string>();
    const sizes = new Map<string, number>();
    const elsewhere = new Set<string>();
    network.on('Network.responseReceived', ({ requestId, type, response }) => {
      kinds.set(requestId, type);
      if (/^https?:/.test(response.url) && new URL(response.url).origin !== new URL(address).origin)
        elsewhere.add(response.url);
    });
    network.on('Network.loadingFinished', ({ requestId, encodedDataLength }) =>
      sizes.set(requestId, encodedDataLength),
    );

    await page.goto(address, { waitUntil: 'networkidle' });
    // Islands that wait to be seen load on the way down.
    await page.evaluate(async () => {
      for (let y = 0; y < document.body.scrollHeight; y += innerHeight / 2) {
        scrollTo(0, y);
        await new Promise((done) => requestAnimationFrame(() => setTimeout(done, 20)));
      }
    });
    await page.waitForLoadState('networkidle');

    const sum = (ids: Iterable<string>) => [...ids].reduce((total, id) => total + (sizes.get(id) ?? 0), 0);
    return {
      total: sum(sizes.keys()),
      fonts: sum([...sizes.keys()].filter((id) => kinds.get(id) === 'Font')),
      requests: sizes.size,
      elsewhere: [...elsewhere],
    };
  } finally {
    await context.close();
  }
}
