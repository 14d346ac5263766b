import { expect, it } from 'vitest';
import { brightness, inStops, isGain } from './in-stops.ts';

it('says of nothing neither that it is lost nor that it is gained', () => {
  for (const stops of [-0.04, 0, 0.04]) {
    expect(isGain(stops)).toBe(false);
    expect(brightness(stops)).toBe('full light');
  }
});

it('says of a gain how large it is', () => {
  expect(isGain(-0.5)).toBe(true);
  expect(inStops(-0.5, ['lost', 'gained']).replace('\u202f', ' ')).toBe('0.5 stops gained');
  expect(brightness(-0.5).replace('\u202f', ' ')).toBe('0.5 stops brighter');
});
