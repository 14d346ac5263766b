import { defineConfig, devices } from '@playwright/test';
import { builtBase } from '../support/built-base.ts';
import { browserFlags, findBrowser } from '../support/find-browser.ts';
import { freePort } from '../support/listen.ts';
import { root } from '../support/run.ts';

const executablePath = await findBrowser();

// Each worker reads this file again and must see the port that the first reading chose.
const port = (process.env.BROWSER_TEST_PORT ??= String(await freePort()));
const base = builtBase();
const baseURL = `http://localhost:${port}${base}`;

export default defineConfig({
  testDir: '.',
  testMatch: '**/*.spec.ts',
  outputDir: `${root}/test-results`,
  forbidOnly: Boolean(process.env.CI),
  fullyParallel: true,
  workers: 2,
  // No test is a race: a busy machine must not fail one. A walk takes 10 s of a processor, which with five others at it is minutes.
  timeout: 240_000,
  expect: { timeout: 20_000 },
  reporter: 'list',
  use: {
    ...devices['Desktop Chrome'],
    viewport: { width: 1280, height: 720 },
    baseURL,
    // A new context costs as much as a page: the last one's is taken, emptied. What is emptied only in part has its own, where `reuseContext` says so.
    reuseContext: true,
    // Only the dead-network spec wants a worker between it and the pages.
    serviceWorkers: 'block',
    launchOptions: { executablePath, args: [...browserFlags] },
    // A trace costs as much again as the test: it is asked for where a failure is not understood, by TRACE=1.
    trace: process.env.TRACE ? 'retain-on-failure' : 'off',
    screenshot: 'only-on-failure',
  },
  webServer: {
    command: 'node tests/support/serve.ts',
    cwd: root,
    url: baseURL,
    env: { PORT: port, BASE_PATH: base },
    stdout: 'ignore',
    stderr: 'pipe',
    timeout: 60_000,
  },
  projects: [{ name: 'chromium' }],
});
