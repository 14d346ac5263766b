import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { listen } from '../support/listen.ts';
import { moodyServer, type Mood, type MoodyServer } from '../support/moody-server.ts';
import { root } from '../support/run.ts';
import { builtBase } from '../support/built-base.ts';
import { lessons, pages } from './pages.ts';
import { comeToProblems } from './walk/problems.ts';

test.use({ serviceWorkers: 'allow', reuseContext: false });

const base = builtBase();

let moody: MoodyServer;
let address: string;

test.beforeEach(async () => {
  moody = moodyServer(join(root, 'dist'), base);
  address = `http://localhost:${await listen(moody.server, 0)}${base}`;
});
test.afterEach(() => moody.stop());

async function visit(page: Page) {
  await page.goto(address);
  await expect(page.locator('[data-copy-words]')).toContainText(/kept on this device \(\d+ files, [\d.]+ MB\)/, {
    // All files of the workbook, on a machine that may be busy.
    timeout: 120_000,
  });
}

test('with a copy kept, a network that is there and dead keeps nothing from opening, nor does none', async ({
  page,
  context,
}) => {
  await visit(page);
  // Before it dies: what a page has not fetched yet opens all the same.
  await page.goto(address + lessons[0]);
  await expect(page.locator('.readings output').first()).toBeVisible();
  moody.mood = 'silent';
  await page.getByRole('button', { name: 'Project this lesson' }).click();
  await expect(page.locator('.stage .question')).toBeVisible();
  await page.keyboard.press('Escape');
  await comeToProblems(page);

  for (const mood of ['silent', 'log-in page', 'sends elsewhere'] satisfies Mood[])
    await test.step(mood, async () => {
      moody.mood = mood;
      await page.goto(address + lessons[0]!.replace(/\/$/, '?stage=1'), { timeout: 5000 });
      await expect(page.locator('.stage .question')).toBeVisible();
      expect(page.url()).toContain(`${address}${lessons[0]}?stage=`);
      await page.goto(`${address}no/such/page/`, { timeout: 15_000 });
      if (mood === 'silent')
        await expect(page.getByRole('heading', { level: 1 })).toHaveText(/no page at this address/);
      await page.goto(`${address}glossary/`, { timeout: 5000 });
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    });

  await test.step('none at all: every page, and what is fetched only when it is asked for', async () => {
    await context.setOffline(true);
    expect(await missingOf(page, pages)).toEqual([]);
    for (const path of ['', 'bench/', lessons.at(-1)!]) {
      await page.goto(address + path);
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    }
    await page.goto(`${address}formulas/?formula=effective-f-number`);
    await expect(page.locator('#effective-f-number output')).toBeVisible();
    // An evening goes over the end of one lesson into the next.
    await page.goto(`${address}workshop/`);
    await page.getByRole('button', { name: '60 minutes:' }).click();
    await page.getByRole('button', { name: 'Start on this screen' }).click();
    await expect(page.locator('.stage .question')).toHaveText('Welcome');
    for (let press = 0; press < 7; press++) await page.keyboard.press('PageDown');
    await expect(page.locator('[data-lesson="on-the-barrel"]:not([data-away]) svg').first()).toBeVisible();
  });
});

test('a projected view that the network does not give is told, and the page goes on', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('ring-and-ruler.copy-unwanted', 'true'));
  await page.goto(address + lessons[0]);
  await expect(page.locator('.readings output').first()).toBeVisible();
  moody.mood = 'log-in page';
  await page.getByRole('button', { name: 'Project this lesson' }).click();
  await expect(page.locator('.notices')).toContainText('did not give the projected view');
  await page.locator('.controls .field').first().fill('20');
  await page.keyboard.press('Enter');
  await expect(page.locator('.controls .field').first()).toHaveValue(/20/);
  await expect(page.locator('.notices')).toContainText('did not give what keeps formulas and text in step');
  // No number stands there that is not the figure's, on paper neither.
  const numbers = page.locator('#formula [data-equation-numbers]').first();
  await expect(numbers).toHaveCSS('visibility', 'hidden');
  moody.mood = 'well';
  await page.locator('.controls .field').first().fill('25');
  await page.keyboard.press('Enter');
  await expect(numbers).toHaveCSS('visibility', 'visible');
  await expect(page.locator('.notices')).not.toContainText('formulas');
});

test('nothing that is not the workbook’s own gets into the copy', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('ring-and-ruler.copy-unwanted', 'true'));
  await page.goto(address);
  moody.mood = 'log-in page';
  moody.spared = `${base}worker.js`;
  const stored = await page.evaluate(async () => {
    const { installing } = await navigator.serviceWorker.register('worker.js');
    await new Promise<void>((done) =>
      installing!.addEventListener('statechange', () => installing!.state === 'redundant' && done()),
    );
    return caches.keys();
  });
  expect(stored).toEqual([]);
});

test('a newer edition is fetched behind, offered, and shown when it is asked for; a copy is removed and made again at a press', async ({
  page,
}) => {
  await visit(page);
  const newer = mkdtempSync(join(tmpdir(), 'edition-'));
  try {
    cpSync(join(root, 'dist'), newer, { recursive: true });
    const home = readFileSync(join(newer, 'index.html'), 'utf8');
    const changed = home.replace('</h1>', ' (second edition)</h1>');
    writeFileSync(join(newer, 'index.html'), changed);
    writeFileSync(join(newer, 'worker.js'), await workerOf(newer));
    moody.serve(newer);
    await page.getByRole('button', { name: 'Look for a newer edition' }).click();
    const offer = page.getByRole('button', { name: 'Show the newer edition' });
    await expect(offer).toBeVisible();
    await expect(page.getByRole('heading', { level: 1 })).not.toContainText('second edition');
    await offer.click();
    await expect(page.getByRole('heading', { level: 1 })).toContainText('second edition');
    expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(1);

    await page.getByRole('button', { name: 'Remove the copy' }).click();
    await expect(page.locator('[data-copy-words]')).toContainText('not kept on this device');
    await page.reload();
    await expect(page.locator('[data-copy-words]')).toContainText('not kept on this device');
    expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(0);
    await page.getByRole('button', { name: 'Keep the course on this device' }).click();
    await expect(page.locator('[data-copy-words]')).toContainText('kept on this device (');
  } finally {
    rmSync(newer, { recursive: true });
  }
});

/** Of these pages, and of the scripts and styles that they name, what a page is not given. All in one call: to be opened, each takes a third of a second. */
function missingOf(page: Page, paths: readonly string[]): Promise<string[]> {
  return page.evaluate(
    async ({ home, paths }) => {
      const missing = new Set<string>();
      const asked = new Map<string, Promise<string>>();
      const given = (url: string): Promise<string> => {
        const answer = asked.get(url) ?? fetch(url).then((one) => (one.ok ? one.text() : Promise.reject(one)));
        asked.set(url, answer);
        return answer.catch(() => (missing.add(url), ''));
      };
      await Promise.all(
        paths.map(async (path) => {
          const html = new DOMParser().parseFromString(await given(home + path), 'text/html');
          const named = html.querySelectorAll('script[src], link[rel=stylesheet], link[rel=modulepreload]');
          if (!html.querySelector('h1') || named.length === 0) missing.add(home + path);
          const urls = [...named].map((one) => one.getAttribute('src') ?? one.getAttribute('href')!);
          await Promise.all(urls.map((url) => given(new URL(url, home + path).href)));
        }),
      );
      return [...missing];
    },
    { home: address, paths },
  );
}

/** The worker that the build would write for what *folder* holds now. */
async function workerOf(folder: string): Promise<string> {
  const { editionOf } = await import('../../site/offline/edition.ts');
  const { workerSource } = await import('../../site/offline/worker-source.ts');
  return workerSource(await editionOf(folder, base));
}
