import { afterEach, expect, it } from 'vitest';
import { Bench, choiceOf, startsOf } from './bench.svelte.ts';
import { byBody, circleByBody, circleChoice } from './body-circle.ts';
import { bodies } from './crate.ts';
import { ownCircle } from './kept-circle.ts';
import { bringOwnCircle, circleOf, keepCircle } from './own-circle.ts';

const newBench = () =>
  new Bench({
    inputs: startsOf(bodies['body-36'], ['circle-of-confusion', 'sensor-width']),
    choices: { sensor: choiceOf('Camera', bodies, ['sensor-width']), [circleChoice]: circleByBody },
    formulas: [],
  });

/** What the controls do. */
function act(bench: ReturnType<typeof newBench>, name: string, what: () => void) {
  const before = circleOf(bench);
  what();
  return keepCircle(bench, name, before);
}

afterEach(() => localStorage.clear());

it('goes with the reader to another lesson, unless its address says which', () => {
  const [here, there] = [newBench(), newBench()];
  expect(act(here, 'circle-of-confusion', () => here.set('circle-of-confusion', 0.025))).toBe(0.025);
  for (const search of ['?circle-of-confusion=0.03', `?${circleChoice}=${byBody}`, '?stage=2']) {
    bringOwnCircle(there, search);
    expect(circleOf(there), search).toBe(bodies['body-36']['circle-of-confusion']);
  }
  bringOwnCircle(there, '?sensor=body-36');
  expect(circleOf(there)).toBe(0.025);
});

it('is forgotten when the reader goes back to the body’s', () => {
  const bench = newBench();
  act(bench, 'circle-of-confusion', () => bench.set('circle-of-confusion', 0.025));
  expect(act(bench, circleChoice, () => bench.choose(circleChoice, byBody))).toBeNull();
  expect(ownCircle.read().value).toBeNull();
});

it('is not touched by a body that brings its own, nor by a circle that only a link has set', () => {
  const bench = newBench();
  ownCircle.write(0.025);
  bench.read(`?${circleChoice}=${byBody}`);
  expect(act(bench, 'sensor', () => bench.choose('sensor', 'body-23'))).toBe(0.025);
  bench.read('?circle-of-confusion=0.05');
  expect(act(bench, 'sensor', () => bench.choose('sensor', 'body-23'))).toBe(0.025);
});
