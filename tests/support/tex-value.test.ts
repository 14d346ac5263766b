import { describe, expect, it } from 'vitest';
import { texValue } from './tex-value.ts';

const two = String.raw`\q{focal-length}`;
const three = String.raw`\q{main-lens.f-number}`;
const values = { 'focal-length': 2, 'main-lens.f-number': 3 };

describe('texValue', () => {
  it('reads a quantity before a bracket as a factor, not as a function', () => {
    expect(texValue(String.raw`${two}\left(1 + ${three}\right)`)(values)).toBe(8);
    expect(texValue(`${two}(1 + ${three})`)(values)).toBe(8);
  });

  it('reads fractions, powers, roots, logarithms and absolute values', () => {
    const tex = String.raw`\frac{${two}^2}{\sqrt{4}} + \log_2 8 + \left|${two} - ${three}\right|`;
    expect(texValue(tex)(values)).toBe(6);
  });

  it('reads anew for each set of values', () => {
    const value = texValue(String.raw`${two}\,${three}`);
    expect(value(values)).toBe(6);
    expect(value({ ...values, 'focal-length': 5 })).toBe(15);
  });

  it.each(['e', 'i', 'f', "s'"])('refuses a bare %s', (letter) => {
    expect(() => texValue(`${two} ${letter}`)).toThrow(/a bare/);
  });

  it('refuses what does not parse', () => {
    expect(() => texValue(String.raw`${two}\nonsense`)).toThrow(/cannot read/);
    expect(() => texValue(String.raw`\frac{1}{`)).toThrow(/cannot read/);
  });

  it('refuses to answer where no real number is the answer', () => {
    expect(() => texValue(String.raw`\sqrt{${two} - ${three}}`)(values)).toThrow(/i at/);
    expect(() => texValue(String.raw`\frac{1}{${two} - 2}`)(values)).toThrow(/at/);
  });
});
