/**
 * Mutation testing of the core: `npm run mutation -- gaussian …` changes the code of these topics in every small way there is and sees
 * whether a test notices. Without a name, all topics in turn: hours. `--again` takes over from the last run what neither a topic's code nor
 * its tests give reason to ask anew: quick, while one writes tests for what was not noticed.
 *
 * `picture:3/10` is the third of ten parts of a topic, functions drawn by chance: a sample where all of it would be hours. Parts that were run stand by
 * themselves in the results, and what is printed says how many of them there are.
 *
 * Words are left out of it: nobody tests that a message reads as it does, and TeX is held to its function by a test of its own.
 */
import { Stryker } from '@stryker-mutator/core';
import { existsSync, globSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { format } from 'prettier';
import { root } from '../support/run.ts';
import { liesIn, linesOfPart } from './parts.ts';
import { nameOf, partOf, scores, withResult, type Results } from './results.ts';
import { summing } from './summing.ts';

const topics = globSync('core/*/*.ts', { cwd: root }).map((file) => dirname(file).slice('core/'.length));
const all = [...new Set(topics)].sort();
const isAgain = process.argv.includes('--again');
const wanted = process.argv.slice(2).filter((word) => word !== '--again');
for (const one of wanted) {
  if (!all.includes(nameOf(one))) throw new Error(`core has no topic “${nameOf(one)}”; it has ${all.join(', ')}.`);
  partOf(one);
}

const resultsFile = join(root, 'tests/mutation/results.json');
let results: Results = existsSync(resultsFile) ? (JSON.parse(readFileSync(resultsFile, 'utf8')) as Results) : {};

/** What is under mutation in one go, several times where it has to be one file at a time. */
function piecesOf(one: string): readonly (readonly string[])[] {
  const topic = nameOf(one);
  const part = partOf(one);
  if (part) return [linesOfPart(topic, part.part, part.of)];
  return summing.includes(topic)
    ? globSync(`core/${topic}/**/*.ts`, { cwd: root })
        .filter((file) => !file.endsWith('.test.ts'))
        .map((file) => [file])
    : [[`core/${topic}/**/*.ts`]];
}

/** What of Stryker's report is read here. */
interface Kept {
  readonly files: Readonly<Record<string, { readonly mutants: readonly Change[] }>>;
}

interface Change {
  readonly status: string;
  readonly location: Readonly<Record<'start' | 'end', { readonly line: number }>>;
}

/** Changes *piece* and returns what became of each change; *keptAs* is where that is kept for `--again`. */
async function statesOf(piece: readonly string[], keptAs: string): Promise<readonly string[]> {
  if (!isAgain) rmSync(keptAs, { force: true });
  const stryker = new Stryker({
    packageManager: 'npm',
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner'],
    // Some tests find the files that they check by their names: what they import cannot be read off them.
    vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
    mutate: [...piece, '!**/*.test.ts', '!core/quantity/{vocabulary,glossary}.ts'],
    mutator: { excludedMutations: ['StringLiteral'] },
    coverageAnalysis: 'perTest',
    ignoreStatic: true,
    incremental: true,
    incrementalFile: keptAs,
    concurrency: Number(process.env.MUTATION_CONCURRENCY ?? 2),
    // A machine that has become busy is no change that a test noticed.
    timeoutMS: 10_000,
    timeoutFactor: 5,
    // The first run of all tests, instrumented, on a machine that does other things besides.
    dryRunTimeoutMinutes: 30,
    reporters: ['clear-text', 'progress-append-only'],
    clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
    tempDirName: '.mutation',
    allowConsoleColors: false,
    checkers: [],
  });
  await stryker.runMutationTest();
  // What is kept has changes of earlier runs in it, where code has moved from one part to another since.
  const { files } = JSON.parse(readFileSync(keptAs, 'utf8')) as Kept;
  return Object.entries(files).flatMap(([file, { mutants }]) =>
    mutants
      .filter(({ location: { start, end } }) => liesIn(piece, file, start.line, end.line))
      .map(({ status }) => status),
  );
}

process.chdir(root);
for (const one of wanted.length > 0 ? wanted : all) {
  process.env.MUTATED_TOPIC = nameOf(one);
  const states: string[] = [];
  for (const [index, piece] of piecesOf(one).entries()) {
    const name = `${one.replace(/\W/g, '-')}-${index}.json`;
    states.push(...(await statesOf(piece, `node_modules/.cache/mutation/${name}`)));
  }
  const count = (...of: string[]) => states.filter((state) => of.includes(state)).length;
  results = withResult(results, one, {
    killed: count('Killed', 'Timeout'),
    survived: count('Survived', 'NoCoverage'),
    at: new Date().toISOString().slice(0, 10),
  });
  writeFileSync(resultsFile, await format(JSON.stringify(results), { parser: 'json' }));
}

process.stdout.write(scores(results).join(''));
