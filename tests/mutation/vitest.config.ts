import { defineConfig } from 'vitest/config';
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
  picture: [
    'core/picture/**/*.test.ts',
    'tests/physics/{picture,merging}*.test.ts',
    'tests/reference/{picture-convolution,scaled-picture}/*.test.ts',
  ],
};

/** The core's own tests and those that check it from outside: what a change of the core has to get past. */
export default defineConfig({
  root,
  test: {
    environment: 'node',
    include: [...(asked[topic] ?? [`core/${summing.includes(topic) ? topic : '*'}/**/*.test.ts`, ...fromOutside])],
    exclude: [...(topic in asked ? [] : ofPictures), ...(topic === 'wave' ? ofAnyNumbers : [])],
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
