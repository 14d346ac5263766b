/**
 * Runs every check, two at a time, and ends with one line: `N passed, N failed`.
 *
 * What a step printed is shown whole when it ends. Every test counts as one, and so does each step that has no tests: lint, types, build.
 * A step that fails does not keep the others from running, unless one needs what it should have made.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { atLeastOneFailure, byExitCode, nothing, ofPlaywright, ofVitest, sum, type Counts } from './counts.ts';
import { inLanes } from './lanes.ts';
import { runQuietly } from './run.ts';

interface Step {
  /** The script of package.json that runs it. */
  readonly script: string;
  /** What must have ended before it, well or not. */
  readonly after?: readonly string[];
  /** What must have ended well: it makes what this step looks at. */
  readonly needs?: string;
  readonly environment?: Readonly<Record<string, string>>;
  /** How it writes its counts to a file and how they are read from it; without this the exit code is the count. */
  readonly report?: {
    readonly args: (file: string) => string[];
    readonly environment?: (file: string) => Record<string, string>;
    readonly counts: (report: never) => Counts;
  };
}

/** The workbook is tested where a club would put it, below a path: what finds its way there finds it at the root. */
const underPath = { BASE_PATH: '/club/workbook/' };

/** In the order in which they start as a place falls free: the longest first, and early what another waits for. */
const steps: readonly Step[] = [
  {
    script: 'unit',
    report: {
      args: (file) => ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`],
      counts: ofVitest,
    },
  },
  { script: 'build', environment: underPath },
  // Both write the types of what the lessons' front matter holds.
  { script: 'types', after: ['build'] },
  { script: 'lint' },
  {
    script: 'browser',
    needs: 'build',
    // It has two workers of its own, which the last of the unit tests may stand beside.
    after: ['types', 'lint'],
    environment: underPath,
    report: {
      args: () => ['--reporter=list,json'],
      environment: (file) => ({ PLAYWRIGHT_JSON_OUTPUT_FILE: file }),
      counts: ofPlaywright,
    },
  },
];

const reports = mkdtempSync(join(tmpdir(), 'ring-and-ruler-'));
const results = new Map<string, Counts & { readonly seconds: number }>();

async function countsOf({ script, needs, environment, report }: Step): Promise<{ counts: Counts; output: string }> {
  if (needs !== undefined && results.get(needs)?.failed !== 0) {
    return { counts: { passed: 0, failed: 1 }, output: `Not run, because "${needs}" failed.\n` };
  }
  const file = join(reports, `${script}.json`);
  const args = ['run', '--silent', script, ...(report ? ['--', ...report.args(file)] : [])];
  const { code, output } = await runQuietly('npm', args, { ...environment, ...report?.environment?.(file) });
  if (!report) return { counts: byExitCode(code), output };
  try {
    return { counts: atLeastOneFailure(report.counts(JSON.parse(readFileSync(file, 'utf8')) as never), code), output };
  } catch {
    const words = `${output}\n"${script}" ended without a report of its tests.\n`;
    return { counts: { passed: 0, failed: 1 }, output: words };
  }
}

await inLanes(
  2,
  steps.map((step) => ({
    ...step,
    name: step.script,
    after: [...(step.after ?? []), ...(step.needs ? [step.needs] : [])],
  })),
  async (step) => {
    const start = performance.now();
    const { counts, output } = await countsOf(step);
    const seconds = Math.round((performance.now() - start) / 1000);
    results.set(step.script, { ...counts, seconds });
    process.stdout.write(`\n=== ${step.script}, ${seconds} s ===\n${output}`);
  },
);
rmSync(reports, { recursive: true, force: true });

process.stdout.write('\n');
for (const { script } of steps) {
  const { passed, failed, seconds } = results.get(script)!;
  process.stdout.write(`${script.padEnd(8)} ${`${seconds} s`.padStart(6)}  ${passed} passed, ${failed} failed\n`);
}
const { passed, failed } = [...results.values()].reduce<Counts>(sum, nothing);
process.exitCode = failed === 0 ? 0 : 1;
process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
