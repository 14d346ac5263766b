import { describe, expect, it } from 'vitest';
import { labelBox, placeLabels, type Spot, type Wanted } from './labels.ts';

const sheet = { left: 0, top: 0, right: 200, bottom: 100 };
const at = (x: number, y: number): Spot => ({ x, y, anchor: 'start' });
const label = (key: string, spots: readonly Spot[], texts = ['60 mm wide', '60']): Wanted => ({
  key,
  texts,
  size: 10,
  spots,
});
const places = (...labels: { key: string; text: string; x: number }[]) =>
  labels.map(({ key, text, x }) => [key, text, x]);

describe('labels', () => {
  it('take their best place, and the next where another stands there', () => {
    const spots = [at(10, 50), at(100, 50)];
    expect(places(...placeLabels([label('a', spots), label('b', spots)], [], sheet))).toEqual([
      ['a', '60 mm wide', 10],
      ['b', '60 mm wide', 100],
    ]);
  });

  it('say less where all that they might say does not fit', () => {
    expect(places(...placeLabels([label('a', [at(180, 50)])], [], sheet))).toEqual([['a', '60', 180]]);
  });

  it('are left out where not even that fits', () => {
    expect(placeLabels([label('a', [at(195, 50)])], [], sheet)).toEqual([]);
    expect(placeLabels([label('a', [at(10, 50)])], [{ left: 0, right: 30, top: 40, bottom: 60 }], sheet)).toEqual([]);
  });

  it('keep off lines where they can, and cross them before they say less', () => {
    const line = { left: 20, right: 21, top: 0, bottom: 100 };
    expect(places(...placeLabels([label('a', [at(10, 50), at(100, 50)])], [], sheet, [line]))).toEqual([
      ['a', '60 mm wide', 100],
    ]);
    expect(places(...placeLabels([label('a', [at(10, 50)])], [], sheet, [line]))).toEqual([['a', '60 mm wide', 10]]);
  });

  it('never cross a line that is kept, and rather say less; one that is needed does', () => {
    const line = { left: 60, right: 61, top: 0, bottom: 100 };
    const wanted = label('a', [at(40, 50)]);
    expect(places(...placeLabels([wanted], [], sheet, [], [line]))).toEqual([['a', '60', 40]]);
    expect(placeLabels([label('a', [at(55, 50)])], [], sheet, [], [line])).toEqual([]);
    const needed = placeLabels([{ ...label('a', [at(55, 50)]), isNeeded: true }], [], sheet, [], [line]);
    expect(places(...needed)).toEqual([['a', '60 mm wide', 55]]);
  });

  it('do not run together into one word where there is room elsewhere', () => {
    const beside = [at(20, 50), at(100, 50)];
    const [, second] = placeLabels([label('a', [at(10, 50)], ['H′']), label('b', beside, ['+4'])], [], sheet);
    expect(second!.x).toBe(100);
    const [, nearer] = placeLabels([label('a', [at(10, 50)], ['H′']), label('b', [at(20, 50)], ['+4'])], [], sheet);
    expect(nearer!.x).toBe(20);
    const name = { ...label('b', [at(20, 50)], ['28 mm']), isApart: true };
    expect(placeLabels([label('a', [at(10, 50)], ['H′']), name], [], sheet).map(({ key }) => key)).toEqual(['a']);
  });

  it('have boxes about their baseline, whichever end it is given by', () => {
    const boxes = (['start', 'middle', 'end'] as const).map((anchor) => labelBox('12', 10, { x: 50, y: 50, anchor }));
    expect(boxes.map(({ left, right }) => (left + right) / 2 - 50)).toEqual([6.32, 0, -6.32]);
    expect(boxes[0]!.top).toBeLessThan(50);
    expect(boxes[0]!.bottom).toBeGreaterThan(50);
  });
});
