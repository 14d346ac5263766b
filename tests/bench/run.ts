/**
 * Measures the built pages and writes what they cost: `npm run bench [-- part-of-a-page's-path …]`.
 *
 * Build first. The tables go to the screen and to tests/bench/results/, as Markdown to read and as JSON to compare.
 */
import { chromium } from '@playwright/test';
import { mkdirSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { join } from 'node:path';
import { format } from 'prettier';
import { browserFlags, findBrowser } from '../support/find-browser.ts';
import { listen } from '../support/listen.ts';
import { root } from '../support/run.ts';
import { normalBase, staticServer } from '../support/static-server.ts';
import { builtPages, dist, lessonPages } from './built.ts';
import { firstVisit } from './first-visit.ts';
import { report, type LessonResult, type PageResult, type Results } from './report.ts';
import { responsivenessOf } from './responsiveness.ts';
import { weightOf } from './weight.ts';

const wanted = process.argv.slice(2);
const all = builtPages();
const pages = wanted.length === 0 ? all : all.filter((page) => wanted.some((part) => page.includes(part)));
const lessons = lessonPages(pages);

const base = normalBase(process.env.BASE_PATH ?? '/');
const server = staticServer(dist, base);
const address = `http://localhost:${await listen(server, 0)}${base}`;
const browser = await chromium.launch({ executablePath: await findBrowser(), args: [...browserFlags] });

const load = loadavg()[0] ?? 0;
if (load > cpus().length / 2)
  process.stdout.write('This machine is busy with something else: the times below will mean little.\n');

const pageResults: PageResult[] = [];
for (const page of pages) {
  process.stdout.write(`bytes of /${page}\n`);
  const result = {
    page,
    lesson: lessons.includes(page),
    weight: weightOf(page),
    firstVisit: await firstVisit(browser, address + page),
  };
  pageResults.push(result);
}
const lessonResults: LessonResult[] = [];
for (const page of lessons) {
  process.stdout.write(`dragging on /${page}\n`);
  lessonResults.push({ page, handles: await responsivenessOf(browser, address + page) });
}

const results: Results = {
  machine: `${cpus().length} × ${cpus()[0]?.model.trim() ?? 'unknown processor'}`,
  browser: `Chromium ${browser.version()}`,
  load,
  pages: pageResults,
  lessons: lessonResults,
};
await browser.close();
server.close();

const text = report(results);
process.stdout.write(`\n${text}`);
if (wanted.length === 0) {
  const folder = join(root, 'tests', 'bench', 'results');
  mkdirSync(folder, { recursive: true });
  const options = { printWidth: 120, singleQuote: true };
  writeFileSync(join(folder, 'bench.md'), await format(text, { ...options, parser: 'markdown' }));
  writeFileSync(join(folder, 'bench.json'), await format(JSON.stringify(results), { ...options, parser: 'json' }));
  process.stdout.write('\nWritten to tests/bench/results/.\n');
} else {
  process.stdout.write('\nOnly part of the pages was measured, so nothing was written.\n');
}
