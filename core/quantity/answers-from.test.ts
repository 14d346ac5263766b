import { describe, expect, it } from 'vitest';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { fieldWidthFormula } from '#core/gaussian/field-width.formula.ts';
import { contrastFormula } from '#core/wave/contrast.formula.ts';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { answersFrom, step, stepsInOrder, stepsTo, under } from './answers-from.ts';
import type { Step } from './answer-step.ts';
import { OutOfRange } from './errors.ts';

const given = { 'focal-length': 50, magnification: 1, 'front-principal-depth': 20, 'sensor-width': 36 };

/** Whole and half of a field, or nothing of one too wide. */
const halves = step({
  from: ['field-width'],
  gives: ['image-width', 'subject-width'],
  evaluate({ fieldWidth }) {
    if (fieldWidth > 1000) throw new OutOfRange('field-width', fieldWidth, 'at most a metre');
    return { imageWidth: fieldWidth, subjectWidth: fieldWidth > 100 ? undefined : fieldWidth / 2 };
  },
});

function found(
  steps: readonly Step[],
  numbers: Readonly<Record<string, number>> = given,
  edge?: Parameters<typeof answersFrom>[3],
) {
  return answersFrom(stepsInOrder(steps, Object.keys(numbers)), numbers, {}, edge);
}

describe('answers from a list of formulas', () => {
  it('follow in order, each from what is given and what went before', () => {
    const { numbers, lacks } = found([subjectDistanceFormula, workingDistanceFormula]);
    expect(numbers).toEqual({ ...given, 'subject-distance': 100, 'working-distance': 80 });
    expect(lacks).toEqual({});
  });

  it('have no number where the core refuses, and neither has what leans on them: it lacks what that lacks', () => {
    const { numbers, lacks } = found([subjectDistanceFormula, workingDistanceFormula], { ...given, magnification: 0 });
    expect(numbers).not.toHaveProperty('working-distance');
    expect(lacks['subject-distance']).toMatchObject({ of: 'subject-distance', refused: { quantity: 'magnification' } });
    expect(lacks['working-distance']).toBe(lacks['subject-distance']);
  });

  it('let faults pass', () => {
    const fault = step({
      from: [],
      gives: ['magnification'],
      evaluate: () => {
        throw new TypeError('a fault');
      },
    });
    expect(() => found([fault], {})).toThrow('a fault');
  });

  it('are several from a plan; what it leaves out has no number, and what it refuses lacks its first', () => {
    const of = (width: number) => found([fieldWidthFormula, halves], { 'sensor-width': width, magnification: 1 });
    expect(of(36).numbers).toMatchObject({ 'image-width': 36, 'subject-width': 18 });
    expect(of(200).numbers).toMatchObject({ 'image-width': 200 });
    expect(of(200).lacks).toEqual({ 'subject-width': { of: 'subject-width' } });
    for (const name of ['image-width', 'subject-width'])
      expect(of(2000).lacks[name]).toMatchObject({ of: 'image-width' });
  });

  it('are told what is chosen', () => {
    const chosen = step({
      from: [],
      gives: ['overlap'],
      evaluate: (_, { by }) => ({ overlap: by === 'rail' ? 1 : 2 }),
    });
    expect(answersFrom(stepsInOrder([chosen], []), {}, { by: 'rail' }).numbers).toEqual({ overlap: 1 });
  });

  it('are those of the limit once it is reached, in place of what was known and of what follows', () => {
    const limit = { 'subject-distance': Infinity, magnification: 0, 'working-distance': 7 };
    const edge = (known: Readonly<Record<string, number>>) => (known['subject-distance']! > 1e6 ? limit : undefined);
    const at = (magnification: number) =>
      found([subjectDistanceFormula, workingDistanceFormula], { ...given, magnification }, edge).numbers;
    expect(at(1)).toMatchObject({ magnification: 1, 'working-distance': 80 });
    expect(at(1e-6)).toMatchObject(limit);
  });
});

describe('steps under a prefix', () => {
  it('give answers of that name, and take each other’s before the plain ones', () => {
    const again = under('other', [subjectDistanceFormula, workingDistanceFormula]);
    const { numbers } = found([subjectDistanceFormula, workingDistanceFormula, ...again]);
    expect(numbers).toMatchObject({ 'other.subject-distance': 100, 'other.working-distance': 80 });
  });

  it('take what is put in a quantity’s place', () => {
    const twice = under('double', [fieldWidthFormula], { magnification: 'double.magnification' });
    const { numbers } = found([fieldWidthFormula, ...twice], { ...given, 'double.magnification': 2 });
    expect(numbers).toMatchObject({ 'field-width': 36, 'double.field-width': 18 });
  });

  it('write formulas with the names that they go by', () => {
    const [again] = under('closest', [subjectDistanceFormula], { magnification: 'closest.magnification' });
    const { tex, from, evaluate } = again as unknown as typeof subjectDistanceFormula;
    expect(from).toEqual(['focal-length', 'closest.magnification']);
    expect(tex).toBe(
      String.raw`\q{closest.subject-distance} = \q{focal-length}\left(1 + \frac{1}{\q{closest.magnification}}\right)`,
    );
    expect(evaluate({ focalLength: 50, closestMagnification: 1 } as never)).toBe(100);
  });

  it('hold where the formula holds', () => {
    const [again] = under('far', [contrastFormula]);
    const { holds } = again as unknown as { holds: (given: object) => boolean };
    expect(holds({ spatialFrequency: 25, cutoffFrequency: 200 })).toBe(true);
    expect(holds({ spatialFrequency: 25, cutoffFrequency: 20 })).toBe(false);
  });

  it('can stand under another, plans too', () => {
    const { numbers } = found(under('far', under('near', [fieldWidthFormula, halves])));
    expect(numbers).toMatchObject({ 'far.near.field-width': 36, 'far.near.subject-width': 18 });
  });
});

describe('a list of steps', () => {
  it('has those that one answer leans on, in order', () => {
    const all = stepsInOrder([subjectDistanceFormula, fieldWidthFormula, workingDistanceFormula], Object.keys(given));
    expect(stepsTo('working-distance', all)).toEqual([all[0], all[2]]);
    expect(answersFrom(stepsTo('working-distance', all), given).numbers['working-distance']).toBe(80);
    expect(stepsTo('magnification', all)).toEqual([]);
  });

  it('is refused where one needs what is not known yet, in words for its author', () => {
    expect(() => found([workingDistanceFormula, subjectDistanceFormula])).toThrow(
      'The step that gives working-distance needs subject-distance: make it an input, or give it by a step before.',
    );
    expect(() => found([effectiveFNumberFormula])).toThrow(/needs f-number/);
  });

  it('is refused where one gives what is known already', () => {
    expect(() => found([subjectDistanceFormula], { ...given, 'subject-distance': 1 })).toThrow(/known already/);
  });
});
