import { beforeEach, describe, expect, it } from 'vitest';
import { Bench } from './bench.svelte.ts';

/** A bench of one field: what a sensor sees, set by magnification or by typing the field itself. */
function fieldBench() {
  return new Bench({
    inputs: { magnification: 0.5, 'sensor-width': { start: 36, most: 40 } },
    choices: { sensor: { label: 'Camera', options: { small: { label: 'small', fills: { 'sensor-width': 23.5 } } } } },
    handles: { 'field-width': { sets: 'magnification', to: (field, given) => given['sensor-width'] / field } },
    compute: (given) => ({ 'field-width': given['sensor-width'] / given.magnification }),
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
    expect(bench.notices[0]!.text).toMatch(/field width.*to 50\smm.*Nothing was changed/);
    expect(bench.inputs.magnification).toBe(0.5);
  });

  it('says of a link how far its handle reaches with all else that the link sets', () => {
    bench.read('?field-width=1.5');
    expect(bench.inputs.magnification).toBe(0.5);
    expect(bench.notices.map(({ text }) => text)).toEqual([
      'The link gives field width as “1.5”. Accepted: a plain number in mm, from 1.8 to 1800. It was left as it was.',
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
        { field: 'magnification', text: expect.stringMatching(/magnification/) as unknown },
      ]);
    },
  );

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
