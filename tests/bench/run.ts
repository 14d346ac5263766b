/**
 * Measures what the workbook costs: `npm run bench`, the core's speed, then the built pages (build first).
 *
 * `npm run bench -- core` measures the core alone, `-- pages` the pages alone, `-- part-of-a-path …` only such pages, which writes nothing.
 * `npm run bench -- visits` says what the first visit of each lesson brings, `-- visits part-of-a-path …` every request of such pages; nothing is written.
 * The tables go to the screen and to tests/bench/results/, as Markdown to read and for the pages as JSON to compare.
 */
import { cpus, loadavg } from 'node:os';
import { coreReport } from './core-report.ts';
import { measurePages } from './measure-pages.ts';
import { report } from './report.ts';
import { visits } from './visits.ts';
import { writeResult } from './write-result.ts';

const wanted = new Set(process.argv.slice(2));
const [core, pages] = wanted.size === 0 ? [true, true] : [wanted.delete('core'), wanted.delete('pages')];
const visitsAlone = wanted.delete('visits');
const paths = [...wanted];

if (visitsAlone) {
  process.stdout.write(`\n${await visits(paths)}`);
  process.exit();
}

const load = loadavg()[0] ?? 0;
if (load > cpus().length / 2)
  process.stdout.write('This machine is busy with something else: the times below will mean little.\n');
const machine = `${cpus().length} processors, load ${load.toFixed(1)} at the start`;

if (core) {
  const text = coreReport(machine);
  process.stdout.write(`\n${text}\n`);
  await writeResult('core.md', text);
}

if (pages || paths.length > 0) {
  const results = { machine, ...(await measurePages(paths)) };
  // First what took a quarter of an hour to measure, whatever becomes of the words about it.
  if (paths.length === 0) await writeResult('pages.json', JSON.stringify(results));
  const text = report(results);
  process.stdout.write(`\n${text}`);
  if (paths.length === 0) {
    await writeResult('pages.md', text);
  } else process.stdout.write('\nOnly part of the pages was measured, so nothing was written.\n');
}
