import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { greyOfLight, lightOfCode, writeGrey, type GreyPhotograph } from './photograph.ts';
import { profileOf, stripAlong } from './strip.ts';

/** Grey rises by one code a pixel to the right and by two downwards. */
const slope: GreyPhotograph = {
  columns: 60,
  rows: 40,
  grey: Uint8Array.from({ length: 2400 }, (_, at) => (at % 60) + 2 * Math.floor(at / 60)),
};

describe('stripAlong', () => {
  it('has the pixels themselves along a row, from the middle of the first to the middle of the last', () => {
    const strip = stripAlong(slope, { from: { x: 10.5, y: 20.5 }, to: { x: 30.5, y: 20.5 } }, 1);
    expect([strip.columns, strip.rows, strip.spacing]).toEqual([21, 3, 1]);
    expect(strip.light[0]).toBe(lightOfCode[10 + 2 * 19]);
    expect(strip.light[21]).toBe(lightOfCode[10 + 2 * 20]);
    expect(strip.light[21 + 20]).toBe(lightOfCode[30 + 2 * 20]);
  });

  it('turns with the line: along a column, rows lie to its left', () => {
    const strip = stripAlong(slope, { from: { x: 30.5, y: 5.5 }, to: { x: 30.5, y: 25.5 } }, 1);
    expect(strip.light[strip.columns]).toBe(lightOfCode[30 + 2 * 5]);
    expect(strip.light[0]).toBe(lightOfCode[31 + 2 * 5]);
  });

  it('goes on as the photograph ends beyond its edge', () => {
    const strip = stripAlong(slope, { from: { x: 0, y: 0 }, to: { x: 20, y: 0 } }, 3);
    expect(strip.light[0]).toBe(lightOfCode[0]);
  });

  it('refuses a line of no length and a strip without end', () => {
    const place = { x: 5, y: 5 };
    expect(() => stripAlong(slope, { from: place, to: place }, 1)).toThrow(/0 pixels long/);
    expect(() => stripAlong(slope, { from: place, to: { x: 20, y: 5 } }, NaN)).toThrow(/reaches NaN/);
  });
});

describe('profileOf', () => {
  it('shifts rows by their lean before it takes their mean', () => {
    const columns = 20;
    const light = new Float32Array(3 * columns);
    for (const row of [0, 1, 2]) light[row * columns + 10 + 2 * (row - 1)] = 3;
    const profile = profileOf({ columns, rows: 3, spacing: 1, light }, 2);
    expect(profile[10]).toBe(3);
    expect(profile[9]).toBe(0);
  });
});

describe('grey', () => {
  it('codes light and decodes it within half a code, as sRGB does', () => {
    for (const code of [0, 1, 12, 118, 200, 255]) expect(greyOfLight(lightOfCode[code]!)).toBe(code);
    expect(lightOfCode[118]).toEqual(closeTo(0.18116, { relative: 1e-4, because: 'five figures' }));
    expect([greyOfLight(-1), greyOfLight(7)]).toEqual([0, 255]);
  });

  it('writes a piece of a picture where it belongs, by its luminance', () => {
    const whole = { columns: 4, grey: new Uint8Array(12) };
    const white = [255, 255, 255, 255];
    const green = [0, 255, 0, 255];
    writeGrey(Uint8ClampedArray.from([...white, ...green]), 1, whole, { x: 2, y: 1 });
    expect(whole.grey[6]).toBe(255);
    expect(whole.grey[10]).toBe(greyOfLight(0.7152));
  });
});
