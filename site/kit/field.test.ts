import { describe, expect, it } from 'vitest';
import { crateKit } from './crate-kit.ts';
import { printField, readField, typedField } from './field.ts';
import first from './first-version.json' with { type: 'json' };
import { kindNames, planOf, type Field } from './kinds.ts';
import type { KitPart, KitValue } from './part.ts';
import second from './second-version.json' with { type: 'json' };

const plain = (text: string) => text.replaceAll('\u202f', ' ');
const fieldOf = (kind: 'lens' | 'camera' | 'ring' | 'finite-objective', key: string) =>
  planOf(kind).fields.find((one) => one.key === key)!;
const focal = fieldOf('lens', 'focal-length');

describe('what is typed into a field', () => {
  it.each([
    ['50', focal, 50],
    ['5 cm', focal, 50],
    ['2 in', focal, 50.8],
    ['51.3 ± 0.4', focal, { value: 51.3, error: 0.4 }],
    ['51.3 mm ± 0.4 mm', focal, { value: 51.3, error: 0.4 }],
    ['51.3 ± 0.4 mm', focal, { value: 51.3, error: 0.4 }],
    ['5.13 +/- 0.04 cm', focal, { value: 51.3, error: 0.4 }],
    ['1:1.8', fieldOf('lens', 'max-aperture'), 1.8],
    ['1:4', fieldOf('lens', 'focus-magnification'), 0.25],
    ['0,45 m', fieldOf('lens', 'focus-distance'), 450],
    ['6000', fieldOf('camera', 'pixels-across'), 6000],
    ['6000 x 4000', fieldOf('camera', 'pixels-across'), 6000],
    ['⌀62', fieldOf('lens', 'thread'), 62],
    ['Ø 62 mm', fieldOf('lens', 'thread'), 62],
    ['62', fieldOf('lens', 'rim-diameter'), 62],
    [' my  mount ', fieldOf('camera', 'mount'), 'my mount'],
    ['whole', fieldOf('lens', 'focusing'), 'whole'],
    ['160/0.17', fieldOf('finite-objective', 'tube-length'), 160],
    ['160 mm/-', fieldOf('finite-objective', 'tube-length'), 160],
    ['4x/0.10', fieldOf('finite-objective', 'objective-magnification'), 4],
    ['10 / 0.25', fieldOf('finite-objective', 'objective-magnification'), 10],
    ['4×/0,10', fieldOf('finite-objective', 'numerical-aperture'), 0.1],
  ] as const)('“%s” is read', (text, field, value) => {
    expect(readField(field, text)).toEqual({ kind: 'value', value });
  });

  it.each([
    ['banana', focal, /^“banana” cannot be used: it is not a number\. Focal length takes a length from 4 mm to 800 mm/],
    ['50 kg', focal, /Focal length takes/],
    ['18-55', focal, /enter a zoom twice, once for each of its ends\. Focal length takes/],
    ['3.5-5.6', fieldOf('lens', 'max-aperture'), /enter a zoom twice/],
    ['0.35', fieldOf('lens', 'focus-distance'), /Did you mean 0\.35 m\? Then write the m\./],
    ['', focal, /^This is needed\. Focal length takes/],
    [
      '-12',
      fieldOf('ring', 'extension'),
      /is less than the page allows\. Length takes a length from 0\.1 mm to 400 mm/,
    ],
    ['0', fieldOf('ring', 'extension'), /Length takes/],
    ['-44', fieldOf('camera', 'register-distance'), /Register takes a length from 5 mm to 120 mm/],
    ['50 ± x', focal, /“x” is no error|Focal length takes/],
    ['12.5', fieldOf('camera', 'pixels-across'), /Pixels side by side takes a whole number/],
    ['x'.repeat(90), fieldOf('camera', 'mount'), /That is too long/],
    ['⌀', fieldOf('lens', 'thread'), /Thread takes a length/],
    ['1.5', fieldOf('finite-objective', 'numerical-aperture'), /for example 0\.1\.$/],
    ['both', fieldOf('lens', 'focusing'), /Focused close takes/],
  ] as const)('“%s” is refused with the field’s name', (text, field, words) => {
    const reading = readField(field, text);
    expect(reading.kind).toBe('refused');
    expect(plain((reading as { message: string }).message)).toMatch(words);
    expect((reading as { message: string }).message).not.toMatch(/undefined|NaN/);
  });

  it('may be left out where the part does without it', () => {
    expect(readField(fieldOf('lens', 'thread'), '  ')).toEqual({ kind: 'blank' });
  });
});

it('reads back every value that it shows to be typed over', () => {
  const parts = [...crateKit().parts, ...([...first.parts, ...second.parts] as unknown as KitPart[])];
  for (const part of parts) {
    for (const field of planOf(part.kind).fields as readonly Field[]) {
      const value = part[field.key];
      if (value === undefined) continue;
      expect(readField(field, typedField(field, value)), `${part.kind} ${field.key}`).toEqual({ kind: 'value', value });
      expect(printField(field, value as KitValue)).not.toMatch(/^$|NaN|undefined/);
    }
  }
  expect(new Set(parts.map(({ kind }) => kind)).size).toBe(kindNames.length);
});
