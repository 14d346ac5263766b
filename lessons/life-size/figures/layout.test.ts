import { describe, expect, it } from 'vitest';
import { isWide, sensorLayout, type Frame, type Place } from './layout.ts';

const frame = (sensorWidth: number, sensorHeight: number): Frame => ({
  sensorWidth,
  sensorHeight,
  pitch: 0.006,
  name: '',
  field: '',
  pixelsPerMillimetre: 83,
});
const large = frame(36, 24);
const small = frame(23.5, 15.6);

/** Sheets as they come: a desk, a hall, a phone upright, a phone on its side, a narrow phone. */
const boxes = [
  { width: 694, height: 406, text: 14.5, small: 12.3 },
  { width: 1230, height: 550, text: 29, small: 29 },
  { width: 390, height: 330, text: 12.5, small: 10.6 },
  { width: 590, height: 360, text: 14.5, small: 12.3 },
  { width: 360, height: 290, text: 12.5, small: 10.6 },
];

const isInside = ({ left, top, width, height }: Place, box: { width: number; height: number }) =>
  left >= 0 && top >= 0 && left + width <= box.width && top + height <= box.height && width > 0 && height > 0;

describe.each(boxes)('on a sheet of $width by $height', (box) => {
  it.each([
    [large, small],
    [small, large],
    [frame(1, 1), large],
    [frame(70, 60), large],
  ])('both sensors and both strips of pixels lie on the sheet', (...frames) => {
    const { outer, places, strips } = sensorLayout(box, frames, true);
    for (const place of [outer, ...places, ...strips]) expect(isInside(place, box)).toBe(true);
  });

  it('strips and picture keep apart', () => {
    const { outer, strips } = sensorLayout(box, [large, small], true);
    for (const strip of strips) {
      if (isWide(box)) expect(strip.left).toBeGreaterThan(outer.left + outer.width);
      else expect(strip.top).toBeGreaterThan(outer.top + outer.height);
    }
  });

  it('without strips nothing is smaller, and the image goes on beyond the sensors as far on either side', () => {
    const { outer, image, strips, pixels } = sensorLayout(box, [small, large], false);
    expect(strips).toEqual([]);
    expect(pixels).toBeGreaterThanOrEqual(sensorLayout(box, [small, large], true).pixels);
    for (const place of [outer, image]) expect(isInside(place, box)).toBe(true);
    expect(image.left).toBeLessThanOrEqual(outer.left);
    expect(image.left + image.width / 2).toBeCloseTo(outer.left + outer.width / 2, 9);
  });

  it('sensors are drawn to one scale about one middle', () => {
    const { places, pixels } = sensorLayout(box, [small, large], true);
    for (const place of places) {
      expect(place.width / place.sensorWidth).toBeCloseTo(pixels, 9);
      expect(place.height / place.sensorHeight).toBeCloseTo(pixels, 9);
    }
    expect(places[0]!.left + places[0]!.width / 2).toBeCloseTo(places[1]!.left + places[1]!.width / 2, 9);
  });
});
