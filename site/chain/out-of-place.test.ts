import { describe, expect, it } from 'vitest';
import { placedChain } from '#site/bench/placed.ts';
import { readChain } from './chain-text.ts';
import { outOfPlace } from './out-of-place.ts';

/** Register 44 mm, as the crate's camera has. */
const camera = 'my-camera:sensor-width=36:sensor-height=24:register-distance=44';
const ring = (length: number) => `my-ring:extension=${length}:contacts=no`;
const tube = 'my-tube-lens:tube-focal-length=200';
const objective = (length = 160) =>
  `my-finite-objective:name=old_ten:objective-magnification=10:numerical-aperture=0.25:working-distance=6.5:tube-length=${length}`;

function said(text: string): readonly string[] {
  const { chain } = readChain(text);
  const placed = placedChain(chain);
  if (placed.kind !== 'built') throw new Error(placed.why);
  return outOfPlace(chain, placed.positions, placed.linkOf).map(({ at, words }) =>
    `${at} ${words}`.replaceAll('\u202f', ' '),
  );
}

describe('an objective', () => {
  // Its image is 10 mm before the end of its tube: 150 mm, and 135 to 165 mm are near enough.
  it.each([
    'body-36,lens-200:far,objective-4',
    'body-36,lens-200:m0.09,objective-4',
    `${camera},${ring(156)},${tube},objective-4`,
    `${camera},${ring(137)},${tube},objective-4`,
    `${camera},${ring(175)},${tube},objective-4`,
    `${camera},${ring(106)},${objective()}`,
    `${camera},${ring(92)},${objective()}`,
    `${camera},${ring(120)},${objective()}`,
    'body-36,ring-24,lens-50',
  ])('in its place is not spoken of: %s', (text) => {
    expect(said(text)).toEqual([]);
  });

  it.each([
    [
      `${camera},${tube},objective-4`,
      '2 4×/0.10 objective is made for parallel light: the tube lens behind it has to stand its focal length, 200 mm, before the sensor. Here it is 44 mm.',
    ],
    [`${camera},${ring(135)},${tube},objective-4`, /Here it is 179 mm\.$/],
    [`${camera},${ring(177)},${tube},objective-4`, /Here it is 221 mm\.$/],
    ['body-36,lens-200:m0.12,objective-4', /parallel light: what is behind it has to be focused at infinity\.$/],
    ['body-36,ring-24,lens-100:far,objective-4', /has to be focused at infinity\.$/],
    [
      `${camera},${objective()}`,
      '1 old ten is made for a tube of 160 mm, its image 150 mm behind it: here the sensor lies 44 mm behind it.',
    ],
    [`${camera},${ring(90)},${objective()}`, /here the sensor lies 134 mm behind it\.$/],
    [`${camera},${ring(122)},${objective()}`, /here the sensor lies 166 mm behind it\.$/],
    [`${camera},${ring(106)},${objective(200)}`, /a tube of 200 mm, its image 190 mm behind it/],
  ])('out of its place is: %s', (text, words) => {
    expect(said(text)).toEqual([expect.stringMatching(words)]);
  });
});

describe('a tube lens alone', () => {
  it.each([`${camera},${tube}`, `${camera},${ring(156)},${tube}`])('is told what it lacks: %s', (text) => {
    expect(placedChain(readChain(text).chain)).toMatchObject({
      kind: 'impossible',
      at: text.split(',').length - 1,
      why: 'put an infinity objective in front of it.',
    });
  });
});
