import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readAddress, withParameter, writeAddress, type AddressPlan } from './address.ts';

const plan: AddressPlan = {
  inputs: { 'focal-length': { least: 4, most: 800 }, wavelength: { least: 0.00038, most: 0.00078 } },
  choices: {
    sensor: { label: 'Camera', options: { 'body-36': { label: '36 mm body' }, 'body-23': { label: '23.5 mm body' } } },
  },
};
const starts = { 'focal-length': 50, wavelength: 0.00055 };

describe('an address', () => {
  it('sets inputs in base units and choices by slug', () => {
    expect(readAddress('?focal-length=90&sensor=body-23', plan)).toEqual({
      inputs: { 'focal-length': 90 },
      choices: { sensor: 'body-23' },
      notices: [],
    });
  });

  it.each([
    ['garbage', '?focal-length=ninety'],
    ['an infinity', '?focal-length=Infinity'],
    ['a negative number', '?focal-length=-50'],
    ['a unit', '?focal-length=50%20mm'],
    ['a number out of range', '?focal-length=801'],
    ['nothing', '?focal-length='],
    ['hexadecimal', '?focal-length=0x32'],
  ])('with %s for a length sets nothing and says what is accepted', (_, search) => {
    const { inputs, notices } = readAddress(search, plan);
    expect(inputs).toEqual({});
    expect(notices).toHaveLength(1);
    expect(notices[0]).toMatchObject({ field: 'focal-length' });
    expect(notices[0]!.text).toMatch(/focal length.*from 4 to 800.*usual value is shown/s);
  });

  it.each(['body-99', '', 'constructor'])(
    'with the unknown choice “%s” names what there is, as the page does',
    (slug) => {
      const { choices, notices } = readAddress(`?sensor=${slug}`, plan);
      expect(choices).toEqual({});
      expect(notices[0]!.text).toBe(
        `The link sets “Camera” to “${slug}”, which this page cannot use. The choices are: 36 mm body, 23.5 mm body. Its usual value is shown.`,
      );
    },
  );

  it('ignores what is not the page’s own, names of object members among it', () => {
    expect(readAddress('?utm=x&constructor=1&__proto__=2', plan)).toEqual({ inputs: {}, choices: {}, notices: [] });
  });

  it('reads back whatever it wrote, and keeps what it does not know', () => {
    const length = fc.double({ min: 4, max: 800, noNaN: true });
    const wavelength = fc.double({ min: 0.00038, max: 0.00078, noNaN: true });
    fc.assert(
      fc.property(length, wavelength, (focalLength, lambda) => {
        const values = { 'focal-length': focalLength, wavelength: lambda };
        const search = writeAddress('?lang=en', values, starts);
        const { inputs, notices } = readAddress(search, plan);
        expect({ ...starts, ...inputs }).toEqual(values);
        expect(notices).toEqual([]);
        expect(new URLSearchParams(search).get('lang')).toBe('en');
      }),
    );
  });

  it('never throws and never lets anything but numbers in range through', () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom('focal-length', 'wavelength', 'sensor'), (text, name) => {
        const { inputs } = readAddress(`?${new URLSearchParams({ [name]: text }).toString()}`, plan);
        for (const [id, value] of Object.entries(inputs)) {
          expect(value).toBeGreaterThanOrEqual(plan.inputs[id]!.least);
          expect(value).toBeLessThanOrEqual(plan.inputs[id]!.most);
        }
      }),
    );
  });

  it('is empty where everything is at its start', () => {
    expect(writeAddress('', starts, starts)).toBe('');
    expect(withParameter('?stage=2', 'stage', undefined)).toBe('');
  });
});
