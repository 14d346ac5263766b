import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { arcminute, circleOfConfusionByViewing } from './circle-of-confusion-by-viewing.formula.ts';

const seen = { viewingDistance: 300, printWidth: 300, sensorWidth: 36 };

describe('circleOfConfusionByViewing', () => {
  it('is 10.5 µm for a 36 mm sensor printed 300 mm wide and seen from 300 mm', () => {
    // 300 mm × 0.00029089 = 0.0873 mm on the print, 36/300 of it on the sensor.
    expect(circleOfConfusionByViewing(seen)).toEqual(
      closeTo(0.01047, { absolute: 5e-6, because: 'worked to four figures' }),
    );
  });

  it('takes a sixtieth of a degree for the line that the eye just sees', () => {
    expect(arcminute).toEqual(closeTo(((1 / 60) * Math.PI) / 180, { relative: 1e-15, because: 'a few roundings' }));
  });

  it('halves when the print is twice as wide or seen from half as far', () => {
    const once = circleOfConfusionByViewing(seen);
    const half = closeTo(once / 2, { relative: 1e-15, because: 'a few roundings' });
    expect(circleOfConfusionByViewing({ ...seen, printWidth: 600 })).toEqual(half);
    expect(circleOfConfusionByViewing({ ...seen, viewingDistance: 150 })).toEqual(half);
  });

  it('is the arcminute at the print itself where the print is a contact copy', () => {
    expect(circleOfConfusionByViewing({ viewingDistance: 250, printWidth: 36, sensorWidth: 36 })).toEqual(
      closeTo(250 * arcminute, { relative: 1e-15, because: 'two roundings' }),
    );
  });

  it('refuses a print without width by name', () => {
    expect(() => circleOfConfusionByViewing({ ...seen, printWidth: 0 })).toThrow(OutOfRange);
    expect(() => circleOfConfusionByViewing({ ...seen, printWidth: 0 })).toThrow(/print-width is 0/);
  });
});
