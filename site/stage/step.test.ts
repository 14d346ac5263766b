import { describe, expect, it } from 'vitest';
import { namesPlaceOnly, placeAfter, placeIn, settingAt, stepAddress, unknownStepIn, type StageStep } from './step.ts';

const hands = { options: ['Yes', 'No'], holds: 0 } as const;
const stage: readonly StageStep[] = [
  { id: 'one', question: 'One?', ...hands, caption: 'One.', set: { extension: 12 } },
  { id: 'two', question: 'Two?', ...hands, caption: 'Two.', set: { extension: 36, lens: 'lens-50' }, sheet: 'side' },
  { id: 'three', question: 'Three?', ...hands, caption: 'Three.', set: { extension: 72 }, from: { extension: 1 } },
];
/** The second has come later. */
const names = [['one', '1'], ['two'], ['three', '2']];

describe('a step of the projected view', () => {
  it('is asked with the figure as the step before left it, the first with the lesson’s start', () => {
    expect(settingAt(stage, { step: 1, answered: false })).toEqual({});
    expect(settingAt(stage, { step: 2, answered: false })).toEqual({ extension: 12 });
    expect(settingAt(stage, { step: 2, answered: true })).toEqual({ extension: 36, lens: 'lens-50' });
  });

  it('may say itself what it is asked with', () => {
    expect(settingAt(stage, { step: 3, answered: false })).toEqual({ extension: 1 });
  });

  it('has an address for its question and one for its answer', () => {
    expect(stepAddress(stage, { step: 2, answered: false })).toBe('?stage=two&sheet=side&extension=12');
    expect(stepAddress(stage, { step: 2, answered: true })).toBe(
      '?stage=two&answered=&sheet=side&extension=36&lens=lens-50',
    );
  });

  it('says how its picture is arranged, for question and answer alike or each its own way', () => {
    const arranged = (how: StageStep['arranged'], answered: boolean) =>
      new URLSearchParams(stepAddress([{ ...stage[0]!, arranged: how! }], { step: 1, answered })).get('arranged');
    expect([false, true].map((answered) => arranged('divided', answered))).toEqual(['divided', 'divided']);
    const each = { asked: 'side-by-side', answered: 'enlarged' };
    expect([false, true].map((answered) => arranged(each, answered))).toEqual(['side-by-side', 'enlarged']);
  });

  it('is found again in its own address', () => {
    for (const step of [1, 2, 3])
      for (const answered of [false, true])
        expect(placeIn(stepAddress(stage, { step, answered }), names)).toEqual({ step, answered });
  });

  it('is found by the place that it had when addresses counted places', () => {
    expect(placeIn('?stage=2&answered', names)).toEqual({ step: 3, answered: true });
    expect(placeIn('?stage=3', names)).toBeUndefined();
  });

  it.each(['', '?stage=', '?stage=0', '?stage=4', '?stage=1.5', '?stage=x', '?stage=One', '?answered'])(
    'is not named by “%s”',
    (search) => {
      expect(placeIn(search, names)).toBeUndefined();
    },
  );

  it('knows an address that names the place alone', () => {
    expect(['?stage=2', '?stage=2&answered', '?stage=2&answered='].map(namesPlaceOnly)).toEqual([true, true, true]);
    expect(['', '?answered', '?stage=2&extension=3', '?stage=2&sheet=side'].map(namesPlaceOnly)).not.toContain(true);
  });
});

describe('a press of the clicker', () => {
  it('takes two to go through a step, and back the same way', () => {
    let place = { step: 1, answered: false };
    const seen = [place];
    for (let press = 0; press < 5; press++) seen.push((place = placeAfter(place, 1, 3)));
    expect(seen.map(({ step, answered }) => `${step}${answered ? 'a' : 'q'}`)).toEqual([
      '1q',
      '1a',
      '2q',
      '2a',
      '3q',
      '3a',
    ]);
    for (const before of seen.slice(0, -1).reverse()) expect((place = placeAfter(place, -1, 3))).toEqual(before);
  });

  it('ends at the first question and at the last answer', () => {
    expect(placeAfter({ step: 1, answered: false }, -1, 3)).toEqual({ step: 1, answered: false });
    expect(placeAfter({ step: 3, answered: true }, 1, 3)).toEqual({ step: 3, answered: true });
    expect(placeAfter({ step: 2, answered: true }, -Infinity, 3)).toEqual({ step: 1, answered: false });
    expect(placeAfter({ step: 2, answered: true }, Infinity, 3)).toEqual({ step: 3, answered: true });
  });
});

it('quotes what a link calls a step and none is called, and no more of it than is needed', () => {
  const names = [['no-ring', 'first'], ['one-ring']];
  const unknown = (search: string) => unknownStepIn(search, names);
  expect(['', '?extension=3', '?stage=no-ring', '?stage=first&answered='].map(unknown)).toEqual([
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
  expect(unknown('?stage=no-such&extension=3')).toBe('no-such');
  expect(unknown('?stage=')).toBe('');
  expect(unknown(`?stage=${'x'.repeat(90)}`)).toBe('x'.repeat(24));
});
