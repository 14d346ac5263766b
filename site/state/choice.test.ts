import { beforeEach, describe, expect, it } from 'vitest';
import { circleOfConfusionByPixelsFormula } from '#core/depth/circle-of-confusion-by-pixels.formula.ts';
import { step } from '#core/quantity/answers-from.ts';
import { Bench } from './bench.svelte.ts';
import { filledBy, type Option } from './choice.ts';

/** A bench whose circle of confusion is chosen: a share of the sensor, or two pixels. */
function circleBench() {
  return new Bench({
    inputs: { 'circle-of-confusion': 0.024, 'sensor-width': 36, 'pixel-pitch': 0.006 },
    choices: {
      'circle-of-confusion-by': {
        label: 'Circle of confusion by',
        options: {
          share: { label: 'share', fills: (given) => ({ 'circle-of-confusion': given['sensor-width'] / 1500 }) },
          pixels: { label: 'pixels', fills: filledBy(circleOfConfusionByPixelsFormula) },
        },
      },
      sensor: {
        label: 'Camera',
        options: { small: { label: 'small', fills: { 'sensor-width': 24, 'pixel-pitch': 0.004 } } },
      },
    },
    formulas: [],
  });
}

describe('a choice that is computed from inputs', () => {
  let bench = circleBench();
  beforeEach(() => {
    bench = circleBench();
  });
  const circle = () => bench.inputs['circle-of-confusion'];
  const way = () => bench.chosen('circle-of-confusion-by');

  it('follows them while it holds', () => {
    bench.set('sensor-width', 24);
    expect(circle()).toBe(0.016);
    bench.choose('circle-of-confusion-by', 'pixels');
    bench.set('sensor-width', 36);
    bench.choose('sensor', 'small');
    expect(circle()).toBe(0.008);
    expect(way()).toBe('pixels');
  });

  it('no longer holds once what it fills is set by hand', () => {
    bench.set('circle-of-confusion', 0.03);
    bench.set('sensor-width', 24);
    expect(circle()).toBe(0.03);
    expect(way()).toBeUndefined();
  });

  it('keeps what it computes in range', () => {
    bench.choose('circle-of-confusion-by', 'pixels');
    bench.set('pixel-pitch', 0.0005);
    expect(circle()).toBe(0.001);
    expect(way()).toBe('pixels');
  });

  it('gives way to the number of an address, whatever stands first', () => {
    for (const search of ['?circle-of-confusion=0.024&sensor-width=30', '?sensor-width=30&circle-of-confusion=0.024']) {
      bench.read(search);
      expect(circle()).toBe(0.024);
    }
    bench.read('?sensor-width=30');
    expect(circle()).toBe(0.02);
  });

  it.each([
    (b: ReturnType<typeof circleBench>) => b.choose('sensor', 'small'),
    (b: ReturnType<typeof circleBench>) => {
      b.choose('circle-of-confusion-by', 'pixels');
      b.set('pixel-pitch', 0.005);
    },
    (b: ReturnType<typeof circleBench>) => {
      b.set('circle-of-confusion', 0.05);
      b.set('sensor-width', 24);
      b.set('circle-of-confusion', 0.024);
    },
  ])('is written so that whoever opens the address sees the same and has it follow the same (case %#)', (move) => {
    move(bench);
    const other = circleBench();
    other.read(bench.write(''));
    expect(other.inputs).toEqual(bench.inputs);
    expect(other.chosen('circle-of-confusion-by')).toBe(way());
    for (const one of [bench, other]) one.set('sensor-width', 30);
    expect(other.inputs).toEqual(bench.inputs);
  });

  it('follows within a step of the projected view, too', () => {
    expect(bench.atStep({ 'circle-of-confusion-by': 'pixels', sensor: 'small' })['circle-of-confusion']).toBe(0.008);
    expect(bench.at({ 'sensor-width': 30 })['circle-of-confusion']).toBe(0.02);
  });
});

/** A bench whose subject stays chosen though its depth is set by hand; the way of moving fills nothing at all. */
function stackBench() {
  return new Bench({
    inputs: { 'subject-depth': 2 },
    choices: {
      subject: {
        label: 'Subject',
        kept: true,
        options: {
          pin: { label: 'pin', fills: { 'subject-depth': 2 } },
          leaf: { label: 'leaf', fills: { 'subject-depth': 5 } },
        },
      },
      by: {
        label: 'Moved by',
        kept: true,
        options: { rail: { label: 'rail', fills: {} }, ring: { label: 'ring', fills: {} } },
      },
    },
    formulas: [
      step({
        from: ['subject-depth'],
        gives: ['frame-count'],
        evaluate: ({ subjectDepth }, { by }) => ({ frameCount: subjectDepth * (by === 'rail' ? 1 : 10) }),
      }),
    ],
  });
}

describe('a choice that is kept', () => {
  it('begins with its first option', () => {
    const bench = stackBench();
    expect([bench.chosen('subject'), bench.chosen('by')]).toEqual(['pin', 'rail']);
    expect(bench.answers['frame-count']).toBe(2);
  });

  it('fills its inputs and stays chosen when these are set by hand', () => {
    const bench = stackBench();
    bench.choose('subject', 'leaf');
    expect(bench.inputs['subject-depth']).toBe(5);
    bench.set('subject-depth', 3);
    expect(bench.chosen('subject')).toBe('leaf');
  });

  it('is known to what is computed', () => {
    const bench = stackBench();
    bench.choose('by', 'ring');
    expect(bench.answers['frame-count']).toBe(20);
    expect(bench.atStep({ subject: 'leaf', by: 'ring' })['frame-count']).toBe(50);
  });

  it.each(['', '?subject=leaf', '?by=ring', '?subject=leaf&by=ring&subject-depth=2'])(
    'is written so that whoever opens the address sees the same: “%s”',
    (search) => {
      const bench = stackBench();
      bench.read('?subject=leaf&subject-depth=9');
      bench.read(search);
      expect(new URLSearchParams(bench.write(''))).toEqual(new URLSearchParams(search));
    },
  );

  it('goes back to its first option where an address does not name it, or names nonsense', () => {
    const bench = stackBench();
    bench.choose('subject', 'leaf');
    bench.read('?subject=stone');
    expect([bench.chosen('subject'), bench.inputs['subject-depth']]).toEqual(['pin', 2]);
    expect(bench.notices).toHaveLength(1);
  });
});

describe('what a choice brings', () => {
  function lensBench() {
    const lens = (label: string, focalLength: number, closest: number): Option<'focal-length' | 'focus-distance'> => ({
      label,
      fills: { 'focal-length': focalLength },
      brings: (given) => ({ 'focus-distance': Math.max(closest, given['focus-distance']) }),
    });
    return new Bench({
      inputs: { 'focal-length': 50, 'focus-distance': 400 },
      choices: { lens: { label: 'Lens', options: { short: lens('short', 50, 400), long: lens('long', 100, 1200) } } },
      formulas: [],
    });
  }

  it('is set when a hand chooses, and does not say that it holds', () => {
    const bench = lensBench();
    bench.choose('lens', 'long');
    expect(bench.inputs['focus-distance']).toBe(1200);
    bench.set('focus-distance', 3000);
    expect(bench.chosen('lens')).toBe('long');
    bench.choose('lens', 'short');
    expect(bench.inputs['focus-distance']).toBe(3000);
  });

  it('is left to itself by an address, which says all', () => {
    const bench = lensBench();
    bench.read('?lens=long');
    expect([bench.chosen('lens'), bench.inputs['focus-distance']]).toEqual(['long', 400]);
  });
});
