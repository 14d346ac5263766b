import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { focalLengthInContact, powerInContact } from './powers-in-contact.ts';

describe('powerInContact', () => {
  it('is the sum: +2 and +4 make +6', () => {
    expect(powerInContact([2, 4])).toBe(6);
  });

  it('is none for opposite lenses, and for no lens', () => {
    expect(powerInContact([4, -4])).toBe(0);
    expect(powerInContact([])).toBe(0);
  });

  it('refuses an infinite power by name', () => {
    expect(() => powerInContact([2, Infinity])).toThrow(/close-up-power is Infinity/);
  });
});

describe('focalLengthInContact', () => {
  it('is half for two equal lenses', () => {
    expect(focalLengthInContact([100, 100])).toBe(50);
  });

  it('says of focal lengths what the sum says of powers', () => {
    const power = powerInContact([1 / 250, 1 / 90, -1 / 400]);
    expect(1 / focalLengthInContact([250, 90, -400])).toEqual(
      closeTo(power, { relative: 1e-15, because: 'two roundings' }),
    );
  });

  it('hardly changes when a very weak lens is added', () => {
    expect(focalLengthInContact([50, 1e12])).toEqual(
      closeTo(50, { relative: 1e-10, because: 'the added power is 5e-11 of it' }),
    );
  });

  it('refuses lenses that cancel, none at all, and a focal length of zero', () => {
    expect(() => focalLengthInContact([100, -100])).toThrow(OutOfRange);
    expect(() => focalLengthInContact([])).toThrow(OutOfRange);
    expect(() => focalLengthInContact([0])).toThrow(/focal-length is 0/);
  });
});
