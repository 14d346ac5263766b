import { beforeEach, describe, expect, it } from 'vitest';
import type { AnyBench } from '#site/controls/workbench/workbench.ts';
import { byBody, circleChoice } from '#site/state/body-circle.ts';
import { bodies } from '#site/state/crate.ts';
import { everyLessonFile } from '#tests/support/lessons.ts';

/** The lessons that ask for a circle of confusion. */
const asking = (await everyLessonFile('bench.svelte.ts'))
  .map(({ slug, exports }) => [slug, exports['bench'] as AnyBench] as const)
  .filter(([, bench]) => 'circle-of-confusion' in bench.starts);

it('finds lessons that ask for a circle of confusion, and none that has one of its own making', async () => {
  expect(asking.length).toBeGreaterThan(2);
  const answering = (await everyLessonFile('bench.svelte.ts')).filter(({ exports }) =>
    (exports['bench'] as AnyBench).formulas.some(({ gives }) => gives === 'circle-of-confusion'),
  );
  expect(answering.map(({ slug }) => slug)).toEqual([]);
});

describe.each(asking)('the circle of confusion of %s', (_, bench) => {
  const circle = () => bench.inputs['circle-of-confusion'];

  beforeEach(() => void bench.read(''));

  it('is that of the crate’s larger body at the start, and of whichever is chosen', () => {
    expect(circle()).toBe(bodies['body-36']['circle-of-confusion']);
    expect(bench.chosen(circleChoice)).toBe(byBody);
    bench.choose('sensor', 'body-23');
    expect(circle()).toBe(bodies['body-23']['circle-of-confusion']);
    expect(bench.chosen('sensor')).toBe('body-23');
  });

  it('is an 1800th of the width of a sensor of the reader’s own, however many pixels that has', () => {
    bench.set('sensor-width', 48);
    expect(circle()).toBeCloseTo(48 / 1800, 12);
    if ('pixel-pitch' in bench.starts) bench.set('pixel-pitch', 0.004);
    expect(circle()).toBeCloseTo(48 / 1800, 12);
    expect(bench.chosen(circleChoice)).toBe(byBody);
  });

  it('stays the reader’s own through any change of body, and goes back to the body’s when asked', () => {
    bench.set('circle-of-confusion', 0.025);
    bench.choose('sensor', 'body-23');
    expect(circle()).toBe(0.025);
    expect(bench.chosen('sensor')).toBe('body-23');
    bench.choose(circleChoice, byBody);
    expect(circle()).toBe(bodies['body-23']['circle-of-confusion']);
  });
});

it('is an 1800th of the width of the crate’s bodies', () => {
  expect(bodies['body-36']['circle-of-confusion']).toBe(0.02);
  expect(bodies['body-23']['circle-of-confusion']).toBeCloseTo(0.01306, 5);
});
