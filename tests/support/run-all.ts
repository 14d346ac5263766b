/**
 * Runs every check in turn, their output going straight through, and ends with one line: `N passed, N failed`.
 *
 * Every test counts as one, and so does each step that has no tests: lint, types, build. A step that fails does not keep the
 * next from running, unless the next needs what it should have made.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { atLeastOneFailure, byExitCode, nothing, ofPlaywright, ofVitest, sum, type Counts } from './counts.ts';
import { run } from './run.ts';

interface Step {
  /** The script of package.json that runs it. */
  readonly script: string;
  readonly needs?: string;
  /** How it writes its counts to a file and how they are read from it; without this the exit code is the count. */
  readonly report?: {
    readonly args: (file: string) => string[];
    readonly environment?: (file: string) => Record<string, string>;
    readonly counts: (report: never) => Counts;
  };
}

const steps: readonly Step[] = [
  { script: 'lint' },
  { script: 'types' },
  {
    script: 'unit',
    report: {
      args: (file) => ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`],
      counts: ofVitest,
    },
  },
  { script: 'build' },
  {
    script: 'browser',
    needs: 'build',
    report: {
      args: () => ['--reporter=list,json'],
      environment: (file) => ({ PLAYWRIGHT_JSON_OUTPUT_FILE: file }),
      counts: ofPlaywright,
    },
  },
];

const reports = mkdtempSync(join(tmpdir(), 'ring-and-ruler-'));

async function countsOf({ script, report }: Step): Promise<Counts> {
  if (!report) return byExitCode(await run('npm', ['run', '--silent', script]));
  const file = join(reports, `${script}.json`);
  const code = await run('npm', ['run', '--silent', script, '--', ...report.args(file)], report.environment?.(file));
  try {
    return atLeastOneFailure(report.counts(JSON.parse(readFileSync(file, 'utf8')) as never), code);
  } catch {
    process.stderr.write(`"${script}" ended without a report of its tests.\n`);
    return { passed: 0, failed: 1 };
  }
}

const results = new Map<string, Counts>();
for (const step of steps) {
  process.stdout.write(`\n=== ${step.script} ===\n`);
  if (step.needs !== undefined && results.get(step.needs)?.failed !== 0) {
    process.stdout.write(`Not run, because "${step.needs}" failed.\n`);
    results.set(step.script, { passed: 0, failed: 1 });
  } else {
    results.set(step.script, await countsOf(step));
  }
}
rmSync(reports, { recursive: true, force: true });

process.stdout.write('\n');
for (const [script, { passed, failed }] of results) {
  process.stdout.write(`${script.padEnd(8)} ${passed} passed, ${failed} failed\n`);
}
const { passed, failed } = [...results.values()].reduce(sum, nothing);
process.exitCode = failed === 0 ? 0 : 1;
process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
