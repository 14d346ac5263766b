/** What a first visit brings over the wire, as the browser counts it: headers and fonts included. */
import type { Browser } from '@playwright/test';

/** One answer to the page: its address, what the browser takes it for (Document, Script, Stylesheet, Font …), its bytes. */
export interface Received {
  readonly address: string;
  readonly kind: string;
  readonly bytes: number;
}

export interface FirstVisit {
  /** Bytes received in all, and of fonts alone. */
  readonly total: number;
  readonly fonts: number;
  /** All that came, heaviest first. */
  readonly received: readonly Received[];
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
    const answers = new Map<string, { address: string; kind: string }>();
    const sizes = new Map<string, number>();
    const elsewhere = new Set<string>();
    network.on('Network.responseReceived', ({ requestId, type, response }) => {
      answers.set(requestId, { address: response.url, kind: type });
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

    const received = [...sizes]
      .map(([id, bytes]) => ({ address: '', kind: '', ...answers.get(id), bytes }))
      .sort((one, other) => other.bytes - one.bytes);
    const sum = (some: readonly Received[]) => some.reduce((total, { bytes }) => total + bytes, 0);
    return {
      total: sum(received),
      fonts: sum(received.filter(({ kind }) => kind === 'Font')),
      received,
      requests: received.length,
      elsewhere: [...elsewhere],
    };
  } finally {
    await context.close();
  }
}
