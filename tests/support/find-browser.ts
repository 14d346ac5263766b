/**
 * Finds a Chromium for the browser tests and the bench, and fetches one where there is none.
 *
 * In order: CHROMIUM_PATH, what is installed, what Playwright fetched earlier; failing these Playwright's download, and on
 * Debian as root the distribution's own package, which brings the system libraries along.
 */
import { chromium } from '@playwright/test';
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run } from './run.ts';

/** Quiet and alike on every machine: software drawing, no background traffic, and the sandbox off as containers need. */
export const browserFlags: readonly string[] = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome', 'microsoft-edge'];

const macPaths = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];

const windowsPaths = ['Google\\Chrome\\Application\\chrome.exe', 'Microsoft\\Edge\\Application\\msedge.exe'];

function installedPaths(): string[] {
  if (process.platform === 'darwin') return macPaths;
  if (process.platform === 'win32') {
    const folders = [process.env.ProgramFiles, process.env['ProgramFiles(x86)'], process.env.LOCALAPPDATA];
    return folders.flatMap((folder) => (folder ? windowsPaths.map((path) => join(folder, path)) : []));
  }
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return names.flatMap((name) => folders.map((folder) => join(folder, name)));
}

/** Some distributions install a stub that only asks for another package; a download may lack system libraries. */
function starts(path: string): boolean {
  if (!existsSync(path)) return false;
  // Elsewhere than on Linux an installed browser is whole, and asking it for its version may open a window.
  if (process.platform !== 'linux') return true;
  return spawnSync(path, ['--version'], { stdio: 'ignore', timeout: 30_000 }).status === 0;
}

function present(): string | undefined {
  return [...installedPaths(), chromium.executablePath()].find(starts);
}

function isDebianRoot(): boolean {
  const release = '/etc/os-release';
  return process.getuid?.() === 0 && existsSync(release) && /^ID=debian$/m.test(readFileSync(release, 'utf8'));
}

async function fetchWithApt(): Promise<void> {
  process.stdout.write('No browser here yet: installing the chromium package.\n');
  const quietly = { DEBIAN_FRONTEND: 'noninteractive' };
  if ((await run('apt-get', ['update', '-qq'], quietly)) !== 0) return;
  await run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], quietly);
}

async function fetchWithPlaywright(): Promise<void> {
  process.stdout.write('No browser here yet: downloading Chromium.\n');
  await run('playwright', ['install', '--no-shell', 'chromium']);
}

/**
 * The path of a Chromium that starts, fetched if need be; throws in words where that cannot be done.
 * The answer is kept in CHROMIUM_PATH, so that child processes need not look again.
 */
export async function findBrowser(): Promise<string> {
  const asked = process.env.CHROMIUM_PATH;
  if (asked) {
    if (existsSync(asked)) return asked;
    throw new Error(`CHROMIUM_PATH is "${asked}", where there is no file.`);
  }
  let found = present();
  // Debian's package first where we may install it: it brings the libraries that a bare container lacks.
  const ways = isDebianRoot() ? [fetchWithApt, fetchWithPlaywright] : [fetchWithPlaywright];
  for (const fetchOne of ways) {
    if (found !== undefined) break;
    await fetchOne();
    found = present();
  }
  if (found === undefined) {
    throw new Error(
      'No Chromium was found or could be fetched. Install one and name it: CHROMIUM_PATH=/path/to/chromium',
    );
  }
  process.env.CHROMIUM_PATH = found;
  return found;
}
