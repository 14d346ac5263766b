import { defineConfig, type Plugin } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { root } from '../support/run.ts';
import { summing } from './summing.ts';

const topic = process.env.MUTATED_TOPIC ?? '*';

/** Pictures take every other topic through thousands of steps: for those they would be hours of the same question asked again. */
const ofPictures = [
  'core/{fourier,picture}/**',
  'tests/physics/{picture,merging}*',
  'tests/reference/{picture-convolution,scaled-picture}/**',
];

/** Takes minutes once every branch is counted, to notice what tests of values notice: for any numbers, answers are finite or refused. */
const ofAnyNumbers = ['core/wave/any-number.test.ts'];

const fromOutside = ['tests/{physics,reference}/**/*.test.ts'];

/** What a topic is asked by where that is less than everything from outside: of the rest nothing comes to it. */
const asked: Readonly<Record<string, readonly string[]>> = {
  fourier: ['core/fourier/**/*.test.ts', 'tests/reference/picture-convolution/*.test.ts'],
  // What takes many seconds is not asked: a change that only those would notice counts as not noticed.
  picture: [
    'core/picture/**/*.test.ts',
    'tests/physics/picture-{energy,kept,occlusion,slices}.test.ts',
    'tests/reference/{picture-convolution,scaled-picture}/*.test.ts',
  ],
  ruler: ['core/ruler/!(no-comb|rendered-rulers).test.ts', 'tests/reference/even-marks/*.test.ts'],
  diagnosis: ['core/diagnosis/**/*.test.ts'],
};

/** Asked after all others, for most changes are noticed sooner: what renders or measures whole pictures, the slowest last. */
const slow = [
  'tests/reference/',
  'core/picture/subjects/depths',
  'core/picture/render.',
  'tests/physics/',
  'core/picture/merge/estimate-scale',
  'core/picture/subjects/subjects',
  'core/ruler/depth-by-contrast',
  'core/ruler/find-comb',
  'core/ruler/measure-marks',
];

const slowness = ({ moduleId }: TestSpecification): number => slow.findIndex((part) => moduleId.includes(`/${part}`));

class QuickOnesFirst extends BaseSequencer {
  override sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const byName = files.toSorted((one, other) => (one.moduleId < other.moduleId ? -1 : 1));
    return Promise.resolve(byName.sort((one, other) => slowness(one) - slowness(other)));
  }
}

/** Which test comes to which change is found out in the first run: counting on in all others would be most of their time. */
const countedOnce: Plugin = {
  name: 'counted-once',
  enforce: 'pre',
  transform: (code) =>
    code.includes('function stryCov_9fa48()')
      ? { code: code.replace('function cover() {', 'function cover() { if (ns.activeMutant) return;'), map: null }
      : undefined,
};

/** The core's own tests and those that check it from outside: what a change of the core has to get past. */
export default defineConfig({
  root,
  plugins: [countedOnce],
  test: {
    environment: 'node',
    include: [...(asked[topic] ?? [`core/${summing.includes(topic) ? topic : '*'}/**/*.test.ts`, ...fromOutside])],
    exclude: [...(topic in asked ? [] : ofPictures), ...(topic === 'wave' ? ofAnyNumbers : [])],
    setupFiles: ['tests/mutation/setup.ts'],
    sequence: { sequencer: QuickOnesFirst },
    isolate: false,
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
