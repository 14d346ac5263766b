import { beforeEach, describe, expect, it } from 'vitest';
import { fieldWidthFormula } from '#core/gaussian/field-width.formula.ts';
import { focusDistanceFormula } from '#core/gaussian/focus-distance.formula.ts';
import { magnificationFromFieldFormula } from '#core/gaussian/magnification-from-field.formula.ts';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { Bench } from './bench.svelte.ts';

/** A bench of one field: what a sensor sees, set by magnification or by typing the field itself. */
function fieldBench() {
  return new Bench({
    inputs: { magnification: 0.5, 'sensor-width': { start: 36, most: 40 } },
    choices: { sensor: { label: 'Camera', options: { small: { label: 'small', fills: { 'sensor-width': 23.5 } } } } },
    handles: { 'field-width': magnificationFromFieldFormula },
    formulas: [fieldWidthFormula],
  });
}

describe('a bench', () => {
  let bench = fieldBench();
  beforeEach(() => {
    bench = fieldBench();
  });

  it('answers from its inputs', () => {
    expect(bench.answers['field-width']).toBe(72);
    bench.set('magnification', 1);
    expect(bench.answers['field-width']).toBe(36);
  });

  it('prints, gives bare numbers by name, and says what other inputs would give, all without moving', () => {
    expect(bench.words('field-width').replace('\u202f', ' ')).toBe('72 mm');
    expect(bench.named('field-width', 'magnification')).toEqual({ fieldWidth: 72, magnification: 0.5 });
    bench.set('sensor-width', 24);
    expect(bench.would('field-width', { magnification: 2 })).toBe(12);
    expect(bench.number('field-width')).toBe(48);
  });

  it('knows which answers follow from an input', () => {
    expect(bench.leansOn('field-width', 'sensor-width')).toBe(true);
    expect(bench.leansOn('field-width', 'focal-length')).toBe(false);
    expect(bench.leansOn('magnification', 'sensor-width')).toBe(false);
  });

  it('has its controls in the order of its inputs, a handle behind what it sets', () => {
    expect(bench.controls).toEqual(['magnification', 'field-width', 'sensor-width']);
  });

  it('moves to the rung nearest to what a hand pulled', () => {
    bench.toRung('magnification', 0.4961);
    expect(bench.inputs.magnification).toBe(0.5);
  });

  it('keeps a drag inside the range', () => {
    bench.set('magnification', 1e6);
    expect(bench.inputs.magnification).toBe(20);
    bench.set('sensor-width', 99);
    expect(bench.inputs['sensor-width']).toBe(40);
  });

  it('moves the input behind a handle', () => {
    expect(bench.type('field-width', '36 mm')).toBe(true);
    expect(bench.inputs.magnification).toBe(1);
  });

  it('lets a handle be pulled as far as the input behind it goes, with the other inputs as they are', () => {
    expect(bench.range('field-width')).toEqual({ least: 1.8, most: 1800 });
    bench.choose('sensor', 'small');
    expect(bench.range('field-width')).toEqual({ least: 1.175, most: 1175 });
    for (const { end, magnification } of [
      { end: 1.175, magnification: 20 },
      { end: 1175, magnification: 0.02 },
    ]) {
      expect(bench.type('field-width', `${end} mm`)).toBe(true);
      expect(bench.inputs.magnification).toBe(magnification);
    }
  });

  it('gives the same object while a handle’s range stays the same', () => {
    const range = bench.range('field-width');
    bench.set('magnification', 3);
    expect(bench.range('field-width')).toBe(range);
  });

  it('refuses what a handle cannot reach by its own name, and changes nothing', () => {
    bench.set('sensor-width', 1);
    expect(bench.type('field-width', '3 m')).toBe(false);
    expect(bench.notices).toHaveLength(1);
    expect(bench.notices[0]!.text).toMatch(/Field width.*to 50\smm.*The setting is unchanged/);
    expect(bench.inputs.magnification).toBe(0.5);
  });

  it('says of a link how far its handle reaches with all else that the link sets', () => {
    bench.read('?field-width=1.5');
    expect(bench.inputs.magnification).toBe(0.5);
    expect(bench.notices.map(({ text }) => text)).toEqual([
      'The link sets field width to “1.5”, which this page cannot use. It takes a plain number in mm from 1.8 to 1800. The figure’s usual value is shown.',
    ]);
    bench.read('?field-width=1.5&sensor-width=30');
    expect(bench.inputs.magnification).toBe(20);
    expect(bench.notices).toEqual([]);
  });

  it('gives what a link says of the page’s own choices, and names what there is where it says nonsense', () => {
    const sheets = { sheet: { label: 'sheet', options: { print: { label: 'At one print size' } } } };
    expect(bench.read('?sheet=print&sensor=small', sheets)).toEqual({ sheet: 'print', sensor: 'small' });
    expect(bench.notices).toEqual([]);
    expect(bench.read('?sheet=garbage', sheets)).toEqual({});
    expect(bench.notices[0]!.text).toMatch(/sheet.*garbage.*At one print size/);
  });

  it.each(['abc', '-1', '12 s', 'Infinity', '1e999'])(
    'refuses “%s” with a notice that names the field, and keeps the value',
    (text) => {
      expect(bench.type('magnification', text)).toBe(false);
      expect(bench.inputs.magnification).toBe(0.5);
      expect(bench.notices).toEqual([
        { field: 'magnification', text: expect.stringMatching(/Magnification/) as unknown },
      ]);
    },
  );

  it('takes what may be meant as it was typed, and asks', () => {
    const shares = new Bench({ inputs: { overlap: 0.2 }, formulas: [] });
    expect(shares.type('overlap', '0.3')).toBe(true);
    expect(shares.inputs.overlap).toBe(0.003);
    expect(shares.notices).toMatchObject([
      { field: 'overlap', text: expect.stringMatching(/Did you mean 30\s%\?/) as unknown },
    ]);
    expect(shares.type('overlap', '30')).toBe(true);
    expect(shares.notices).toEqual([]);
  });

  it('forgets a notice once its field is moved', () => {
    bench.type('magnification', 'abc');
    bench.set('magnification', 2);
    expect(bench.notices).toEqual([]);
  });

  it('forgets a notice once its choice is made', () => {
    bench.read('?sensor=large');
    expect(bench.notices).toHaveLength(1);
    bench.choose('sensor', 'small');
    expect(bench.notices).toEqual([]);
  });

  it('fills inputs by a choice and knows when they are still the choice’s own', () => {
    bench.choose('sensor', 'small');
    expect(bench.chosen('sensor')).toBe('small');
    bench.set('sensor-width', 24);
    expect(bench.chosen('sensor')).toBeUndefined();
  });

  it('reads an address as a whole: what it does not say goes back to the start', () => {
    bench.set('magnification', 3);
    bench.read('?sensor=small');
    expect(bench.inputs).toEqual({ magnification: 0.5, 'sensor-width': 23.5 });
  });

  it('shows the same state to whoever opens the address it wrote', () => {
    bench.set('magnification', 0.123);
    bench.choose('sensor', 'small');
    const other = fieldBench();
    other.read(bench.write('?stage=2'));
    expect(other.inputs).toEqual(bench.inputs);
    expect(bench.write('?stage=2')).toContain('stage=2');
  });

  it('knows its numbers for a step without moving', () => {
    expect(bench.atStep({ sensor: 'small', magnification: 1 })['field-width']).toBe(23.5);
    expect(bench.inputs.magnification).toBe(0.5);
  });
});

/** A bench with every kind of edge: H and H′ too far apart, a rim beyond the subject, a lens set to infinity. */
function edgyBench() {
  return new Bench({
    inputs: {
      'focal-length': 50,
      magnification: { start: 1, least: 0 },
      'principal-separation': 0,
      'front-principal-depth': 20,
    },
    formulas: [subjectDistanceFormula, focusDistanceFormula, workingDistanceFormula],
    words: {
      'subject-distance': { infinite: '∞, set to infinity' },
      'focus-distance': { none: 'none: too far apart' },
      'working-distance': (value) => (value! > 0 ? undefined : 'inside the lens'),
    },
    edge: ({ magnification }) =>
      magnification === 0 ? { 'subject-distance': Infinity, 'focus-distance': Infinity } : undefined,
  });
}

describe('the edges of a bench', () => {
  let bench = edgyBench();
  beforeEach(() => {
    bench = edgyBench();
  });

  it('have the lesson’s words where there is no number, and the number that it states in its place', () => {
    bench.set('focal-length', 4);
    bench.set('principal-separation', -60);
    expect(bench.answers['focus-distance']).toEqual({ words: 'none: too far apart' });
    expect(bench.words('focus-distance')).toBe('none: too far apart');
    expect(bench.number('focus-distance', 7)).toBe(7);
    expect(bench.number('focus-distance', undefined)).toBeUndefined();
    expect(() => bench.number('focus-distance')).toThrow(/focus-distance has no number.*say what stands in its place/);
    expect(() => bench.named('focus-distance')).toThrow(/focus-distance/);
  });

  it('have words beside a number that alone would mislead', () => {
    bench.set('front-principal-depth', 150);
    expect(bench.answers['working-distance']).toEqual({ words: 'inside the lens', value: -50 });
    expect(bench.number('working-distance')).toBe(-50);
  });

  it('follow the lesson’s own limit, and what leans on it', () => {
    bench.set('magnification', 0);
    expect(bench.answers['subject-distance']).toEqual({ words: '∞, set to infinity', value: Infinity });
    expect(bench.answers['focus-distance']).toBe(Infinity);
    expect(bench.would('subject-distance', { magnification: 1 })).toBe(100);
  });

  it('say what the core refused where the lesson has no words for it', () => {
    const bare = new Bench({
      inputs: { 'focal-length': 50, magnification: { start: 0, least: 0 } },
      formulas: [subjectDistanceFormula],
    });
    expect(bare.words('subject-distance')).toBe('The magnification would be 0×. Needed: a finite number above 0.');
  });

  it.each([
    ['needs what nothing gives', [workingDistanceFormula], /working-distance needs subject-distance: make it an input/],
    ['gives what is known', [subjectDistanceFormula, subjectDistanceFormula], /subject-distance is known already/],
  ])('refuse a list in which a formula %s', (_, formulas, words) => {
    const inputs = { 'focal-length': 50, magnification: 1, 'front-principal-depth': 20 };
    expect(() => new Bench({ inputs, formulas })).toThrow(words);
  });
});
