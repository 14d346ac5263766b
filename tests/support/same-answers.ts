/**
 * Whether every bench answers as it did at an earlier commit: `node tests/support/same-answers.ts <commit>`.
 *
 * Both editions get the same inputs, drawn by seed over the whole range of each, and the same choices. Numbers must agree to 1e-12 of
 * themselves and words to the letter; what the earlier edition did not answer may be new. For changes that are to leave all answers alone.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { createServer } from 'vite';
import type { AnyBench } from '#site/controls/workbench/workbench.ts';
import type { Answer } from '#site/state/answer.ts';
import { lessonSlugs } from './lessons.ts';
import { root } from './run.ts';

const draws = 3000;
const closeness = 1e-12;

type Step = Readonly<Record<string, number | string>>;

/** A stream of numbers from 0 to 1, the same every time. */
function* shares(): Generator<number, never> {
  for (let state = 1; ;) {
    state = (state * 48271) % 2147483647;
    yield state / 2147483647;
  }
}

/** Inputs over their whole ranges, ends and starts among them, each third time with choices too. */
function* stepsFor(bench: AnyBench): Generator<Step> {
  const stream = shares();
  const next = () => stream.next().value;
  const pick = <T>(all: readonly T[]) => all[Math.floor(next() * all.length)]!;
  for (const [choice, { options }] of Object.entries(bench.choices)) {
    for (const slug of Object.keys(options)) yield { [choice]: slug };
  }
  for (let drawn = 0; drawn < draws; drawn++) {
    const step: Record<string, number | string> = {};
    for (const name of Object.keys(bench.starts) as (keyof typeof bench.starts)[]) {
      const { least, most } = bench.range(name);
      const share = next();
      const between = least > 0 ? least * (most / least) ** share : least + share * (most - least);
      const end = pick([least, most, bench.starts[name]]);
      step[name] = next() < 0.85 ? Math.min(most, Math.max(least, between)) : end;
    }
    if (drawn % 3 === 0) {
      for (const [choice, { options }] of Object.entries(bench.choices)) step[choice] = pick(Object.keys(options));
    }
    yield step;
  }
}

/** The benches of the edition in *folder*, by lesson. */
async function benchesIn(folder: string, slugs: readonly string[]) {
  const server = await createServer({
    root: folder,
    configFile: false,
    logLevel: 'error',
    plugins: [svelte({ configFile: false })],
    server: { middlewareMode: true, hmr: false, ws: false, watch: null },
    optimizeDeps: { noDiscovery: true },
  });
  const benches = new Map<string, AnyBench>();
  for (const slug of slugs) {
    const { bench } = await server.ssrLoadModule(`/lessons/${slug}/bench.svelte.ts`);
    benches.set(slug, bench as AnyBench);
  }
  return { benches, close: () => server.close() };
}

const parts = (answer: Answer) => (typeof answer === 'number' ? { value: answer, words: undefined } : answer);

function areSame(before: Answer, now: Answer | undefined): boolean {
  if (now === undefined) return false;
  const [one, other] = [parts(before), parts(now)];
  if (one.words !== other.words || (one.value === undefined) !== (other.value === undefined)) return false;
  const [a = 0, b = 0] = [one.value, other.value];
  return a === b || Math.abs(a - b) <= closeness * Math.max(Math.abs(a), Math.abs(b));
}

const [commit = 'HEAD'] = process.argv.slice(2);
const earlier = mkdtempSync(join(tmpdir(), 'earlier-'));
execFileSync(
  'sh',
  ['-c', `git archive ${JSON.stringify(commit)} core lessons site tests package.json | tar x -C ${earlier}`],
  {
    cwd: root,
  },
);
symlinkSync(join(root, 'node_modules'), join(earlier, 'node_modules'));

const slugs = lessonSlugs();
const [then, now] = [await benchesIn(earlier, slugs), await benchesIn(root, slugs)];
let differences = 0;
for (const slug of slugs) {
  const [before, after] = [then.benches.get(slug)!, now.benches.get(slug)!];
  let [compared, differing] = [0, 0];
  const worded = new Set<string>();
  for (const step of stepsFor(before)) {
    const answers = after.atStep(step);
    for (const [name, answer] of Object.entries(before.atStep(step))) {
      compared++;
      if (typeof answer !== 'number') worded.add(answer.words.replaceAll(/[\d.,]+/g, '#'));
      if (areSame(answer, answers[name])) continue;
      differing++;
      if (differing <= 5) console.log(`${slug}: ${name} was`, answer, 'is', answers[name], 'at', JSON.stringify(step));
    }
  }
  differences += differing;
  console.log(`${slug}: ${compared} answers compared, ${worded.size} ways of wording met, ${differing} differ`);
}
await Promise.all([then.close(), now.close()]);
rmSync(earlier, { recursive: true });
process.exitCode = differences > 0 ? 1 : 0;
