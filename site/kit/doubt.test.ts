import { describe, expect, it } from 'vitest';
import { lenses } from '#site/state/crate.ts';
import { doubtOf } from './doubt.ts';
import { faultOf } from './fault.ts';
import type { NewPart } from './part.ts';

const lens = (set: Omit<NewPart, 'kind' | 'name'>): NewPart => ({
  kind: 'lens',
  name: 'lens',
  'focal-length': 105,
  'max-aperture': 2.8,
  'focus-distance': 310,
  'focus-magnification': 1,
  focusing: 'whole',
  iris: 'camera',
  ...set,
});

describe('what a lens says of its nearest focus', () => {
  it('is doubted where one that moves as a whole would not be so near: f (2 + m + 1/m) is 420 mm', () => {
    const macro = lens({});
    expect(faultOf(macro)).toBeUndefined();
    expect(doubtOf(macro)).toMatchObject({
      key: 'focusing',
      message: expect.stringMatching(
        /it is 4\d\d\u202fmm from the sensor at 1×, not 310\u202fmm\..*moves glass inside/,
      ),
    });
    expect(doubtOf({ ...macro, 'focal-length': 60, 'focus-distance': 200 })).toMatchObject({ key: 'focusing' });
  });

  it('is doubted where it would not be so far', () => {
    expect(doubtOf(lens({ 'focus-distance': 900 }))).toMatchObject({ key: 'focus-distance' });
  });

  it.each([
    ['glass moves inside', { focusing: 'inside' }],
    ['it is as near as it would be', { 'focus-distance': 420 }],
    [
      'plain numbers of a plain lens are rounded',
      { 'focal-length': 50, 'focus-distance': 450, 'focus-magnification': 0.15 },
    ],
    ['only the distance is known', { 'focus-magnification': undefined }],
  ])('is not doubted where %s', (_, set) => {
    expect(doubtOf(lens(set as Omit<NewPart, 'kind' | 'name'>))).toBeUndefined();
  });

  it('is not doubted of the crate’s lenses that move as a whole', () => {
    const { 'focal-length': focalLength, 'focus-magnification': magnification } = lenses['lens-50'];
    const whole = lens({ 'focal-length': focalLength, 'focus-magnification': magnification, 'focus-distance': 440 });
    expect(doubtOf(whole)).toBeUndefined();
  });
});
