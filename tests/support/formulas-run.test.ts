import { afterAll, expect, it } from 'vitest';
import { depthOfField } from '#core/depth/depth-of-field.formula.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { CallCounter } from './formulas-run.ts';

const counter = new CallCounter();
afterAll(() => counter.stop());

const lens = { circleOfConfusion: 0.03, entrancePupilDistance: 150, magnification: 0.5, entrancePupil: 6 };

it('sees the formula that ran, and no other', () => {
  expect([...counter.formulasRun(() => nearLimit(lens))]).toEqual(['core/depth/near-limit.formula.ts']);
});

it('sees what a formula runs in its turn', () => {
  const ran = counter.formulasRun(() => depthOfField(lens));
  expect([...ran].sort()).toEqual(
    ['depth-of-field', 'far-limit', 'near-limit'].map((id) => `core/depth/${id}.formula.ts`),
  );
});

it('sees nothing where nothing ran, whatever ran before', () => {
  nearLimit(lens);
  expect([...counter.formulasRun(() => undefined)]).toEqual([]);
});

it('sees of one after another what each ran', () => {
  const ran = counter.formulasRunBy([() => nearLimit(lens), () => undefined, () => depthOfField(lens)]);
  expect(ran.map(({ size }) => size)).toEqual([1, 0, 3]);
});
