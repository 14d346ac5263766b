/**
 * Mutation testing of the core: `npm run mutation -- gaussian …` changes the code of these topics in every small way there is and sees
 * whether a test notices. Without a name, all topics in turn: hours.
 *
 * Words are left out of it: nobody tests that a message reads as it does, and TeX is held to its function by a test of its own.
 */
import { Stryker } from '@stryker-mutator/core';
import { existsSync, globSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { format } from 'prettier';
import { root } from '../support/run.ts';
import { summing } from './summing.ts';

interface Tally {
  readonly killed: number;
  readonly survived: number;
  readonly at: string;
}

const topics = globSync('core/*/*.ts', { cwd: root }).map((file) => dirname(file).slice('core/'.length));
const all = [...new Set(topics)].sort();
const wanted = process.argv.slice(2);
for (const name of wanted) {
  if (!all.includes(name)) throw new Error(`core has no topic “${name}”; it has ${all.join(', ')}.`);
}

const resultsFile = join(root, 'tests/mutation/results.json');
const results: Record<string, Tally> = existsSync(resultsFile)
  ? (JSON.parse(readFileSync(resultsFile, 'utf8')) as Record<string, Tally>)
  : {};

const piecesOf = (topic: string) =>
  summing.includes(topic)
    ? globSync(`core/${topic}/**/*.ts`, { cwd: root }).filter((file) => !file.endsWith('.test.ts'))
    : [`core/${topic}/**/*.ts`];

async function mutantsOf(piece: string) {
  const stryker = new Stryker({
    packageManager: 'npm',
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner'],
    // Some tests find the files that they check by their names: what they import cannot be read off them.
    vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
    mutate: [piece, '!**/*.test.ts', '!core/quantity/{vocabulary,glossary}.ts'],
    mutator: { excludedMutations: ['StringLiteral'] },
    coverageAnalysis: 'perTest',
    ignoreStatic: true,
    concurrency: Number(process.env.MUTATION_CONCURRENCY ?? 2),
    timeoutMS: 10_000,
    // The first run of all tests, instrumented, on a machine that does other things besides.
    dryRunTimeoutMinutes: 30,
    reporters: ['clear-text', 'progress-append-only'],
    clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
    tempDirName: '.mutation',
    allowConsoleColors: false,
    checkers: [],
  });
  return stryker.runMutationTest();
}

process.chdir(root);
for (const topic of wanted.length > 0 ? wanted : all) {
  process.env.MUTATED_TOPIC = topic;
  const mutants: Awaited<ReturnType<typeof mutantsOf>> = [];
  for (const piece of piecesOf(topic)) mutants.push(...(await mutantsOf(piece)));
  const count = (...states: string[]) => mutants.filter(({ status }) => states.includes(status)).length;
  results[topic] = {
    killed: count('Killed', 'Timeout'),
    survived: count('Survived', 'NoCoverage'),
    at: new Date().toISOString().slice(0, 10),
  };
  writeFileSync(resultsFile, await format(JSON.stringify(results), { parser: 'json' }));
}

for (const [topic, { killed, survived, at }] of Object.entries(results)) {
  const score = (100 * killed) / Math.max(1, killed + survived);
  process.stdout.write(`${topic}: ${score.toFixed(1)} % of ${killed + survived} changes noticed (${at})\n`);
}
