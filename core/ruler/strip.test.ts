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
    const corner = stripAlong(slope, { from: { x: 40, y: 40 }, to: { x: 60, y: 40 } }, 3);
    // Its last place is in the corner, and so is what lies beyond it.
    for (const row of [3, 4, 5, 6]) expect(corner.light[row * 21 + 20]).toBe(lightOfCode[59 + 2 * 39]);
    expect(corner.light[20]).toEqual(
      closeTo((lightOfCode[59 + 2 * 36]! + lightOfCode[59 + 2 * 37]!) / 2, { relative: 1e-6, because: '32 bits' }),
    );
    const left = stripAlong(slope, { from: { x: 0, y: 40 }, to: { x: 0, y: 20 } }, 4);
    for (const row of [0, 1, 2, 3, 4]) expect(left.light[row * 21]).toBe(lightOfCode[2 * 39]);
  });

  it('reads between pixels by how near each is', () => {
    const strip = stripAlong(slope, { from: { x: 10.75, y: 20.9 }, to: { x: 20.75, y: 20.9 } }, 0);
    const light = (x: number, y: number) => lightOfCode[x + 2 * y]!;
    const above = 0.75 * light(10, 20) + 0.25 * light(11, 20);
    const below = 0.75 * light(10, 21) + 0.25 * light(11, 21);
    expect(strip.light[0]).toEqual(closeTo(0.6 * above + 0.4 * below, { relative: 1e-6, because: '32 bits' }));
  });

  it('has its columns a pixel apart, or so near that they end with the line', () => {
    const strip = stripAlong(slope, { from: { x: 10, y: 10 }, to: { x: 16, y: 18.2 } }, 2.4);
    const length = Math.hypot(6, 8.2);
    expect([strip.columns, strip.rows, strip.light.length]).toEqual([11, 5, 55]);
    expect(strip.spacing).toEqual(closeTo(length / 10, { relative: 1e-12, because: 'rounding' }));
  });

  it('refuses a line of no length and a strip without end', () => {
    const place = { x: 5, y: 5 };
    expect(() => stripAlong(slope, { from: place, to: place }, 1)).toThrow(/0 pixels long/);
    expect(() => stripAlong(slope, { from: place, to: { x: 20, y: 5 } }, NaN)).toThrow(/reaches NaN/);
    expect(() => stripAlong(slope, { from: place, to: { x: 20, y: 5 } }, -1)).toThrow(/reaches -1/);
    expect(() => stripAlong(slope, { from: place, to: { x: 20, y: 5 } }, 1001)).toThrow(/reaches 1001/);
    expect(stripAlong(slope, { from: place, to: { x: 7, y: 5 } }, 1000).rows).toBe(2001);
    for (const to of [
      { x: -1, y: 5 },
      { x: 61, y: 5 },
      { x: 5, y: -1 },
      { x: 5, y: 41 },
      { x: NaN, y: 5 },
    ]) {
      expect(() => stripAlong(slope, { from: place, to }, 1)).toThrow(/accepted: a place in the photograph/);
      expect(() => stripAlong(slope, { from: to, to: place }, 1)).toThrow(/accepted: a place in the photograph/);
    }
    const whole = { from: { x: 0, y: 0 }, to: { x: 60, y: 40 } };
    expect(stripAlong(slope, whole, 0).columns).toBe(73);
    for (const bad of [{ columns: 0, grey: new Uint8Array(0) }, { columns: 59 }, { columns: 60.5 }, { rows: 39.5 }])
      expect(() => stripAlong({ ...slope, ...bad }, whole, 0)).toThrow(/pixels has/);
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

  it('puts marks that lean one above the other, between columns as well, and goes on as rows end', () => {
    const [columns, rows, lean] = [30, 5, 0.3];
    const light = Float32Array.from({ length: columns * rows }, (_, at) => {
      const row = Math.floor(at / columns);
      return (at % columns) - lean * (row - 2);
    });
    const profile = profileOf({ columns, rows, spacing: 1, light }, lean);
    for (let column = 1; column < columns - 1; column++)
      expect(profile[column]).toEqual(closeTo(column, { absolute: 1e-5, because: '32 bits' }));
    // By hand: rows two and one above the middle ask for −0.6 and −0.3, and have 0.6 and 0.3; then 0, and 0.3 − 0.3, 0.6 − 0.6.
    expect(profile[0]).toEqual(closeTo((0.6 + 0.3) / rows, { absolute: 1e-6, because: '32 bits' }));
    expect(profile[29]).toEqual(closeTo(29 - (0.6 + 0.3) / rows, { absolute: 1e-5, because: '32 bits' }));
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
    expect([...whole.grey].filter((code) => code > 0)).toHaveLength(2);
    expect(whole.grey[6]).toBe(255);
    expect(whole.grey[10]).toBe(greyOfLight(0.7152));
    writeGrey(Uint8ClampedArray.from([255, 0, 0, 255, 0, 0, 255, 255]), 2, whole, { x: 1, y: 0 });
    expect([...whole.grey.subarray(0, 4)]).toEqual([0, greyOfLight(0.2126), greyOfLight(0.0722), 0]);
  });
});
