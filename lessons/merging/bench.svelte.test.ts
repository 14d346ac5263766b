import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { bench, lostFrames } from './bench.svelte.ts';

const number = (changes: Partial<typeof bench.starts>, name: keyof typeof bench.answers) => bench.would(name, changes);

describe('the bench of merging', () => {
  it('hides a band that no number of frames changes', () => {
    const bands = [0.9, 0.25, -1].map((overlap) => number({ overlap }, 'hidden-band'));
    expect(new Set(bands).size).toBe(1);
    expect(number({ overlap: 0.9 }, 'frame-count')).toBeGreaterThan(10 * number({ overlap: -1 }, 'frame-count'));
  });

  it('hides about y m/N_w of the background whatever the focal length, the edge being low', () => {
    const low = { 'edge-height': 0.01, magnification: 2 };
    for (const focalLength of [20, 72.5, 400]) {
      const band = number({ ...low, 'focal-length': focalLength }, 'hidden-band');
      const expected = (0.01 * 2) / number({ ...low, 'focal-length': focalLength }, 'effective-f-number');
      expect(band).toEqual(closeTo(expected, { relative: 1e-3, because: 'the edge is low beside the distance' }));
    }
  });

  it('changes scale less by the ring below about half life size, less by the rail above', () => {
    const shallow = { 'pupil-magnification': 1, 'focal-length': 100, 'f-number': 2, overlap: 0.5 };
    const ratio = (magnification: number) => {
      const given = {
        ...shallow,
        magnification,
        'subject-depth': 2 * number({ ...shallow, magnification }, 'depth-of-field'),
      };
      return number(given, 'focus-ring.scale-change') / number(given, 'whole-stack.scale-change');
    };
    expect(ratio(0.45)).toBeLessThan(1);
    expect(ratio(0.55)).toBeGreaterThan(1);
  });

  it('needs no stack where one frame has no end', () => {
    const endless = { 'f-number': 64, magnification: 0.02, 'focal-length': 4 };
    expect(number(endless, 'frame-count')).toBe(1);
    expect(number(endless, 'whole-stack.edge-shift')).toBe(0);
    expect(bench.at(endless)['edge-shift']).toEqual({ words: 'none: one frame is enough' });
  });
});

describe('frames lost', () => {
  it('are none, the one in the middle, or the last quarter', () => {
    expect(lostFrames('none', 8)).toEqual([]);
    expect(lostFrames('middle', 9)).toEqual([4]);
    expect(lostFrames('end', 8)).toEqual([6, 7]);
  });

  it('never leave a stack without a frame', () => {
    for (const lost of ['none', 'middle', 'end'])
      for (const count of [1, 2, 3, 7]) expect(lostFrames(lost, count).length).toBeLessThan(count);
  });
});
