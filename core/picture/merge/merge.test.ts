import { describe, expect, it } from 'vitest';
import type { Picture } from '../picture.ts';
import { psnr } from '../psnr.ts';
import { Merge } from './merge.ts';

const hash = (k: number) => Math.abs(Math.sin(k * 12.9898) * 43758.5453) % 1;
const random = (columns: number, rows: number, channels: 1 | 3, seed: number): Picture => ({
  ...{ columns, rows, channels },
  light: Float32Array.from({ length: columns * rows * channels }, (_, k) => hash(k + 1000 * seed)),
});
const grey = (light: number): Picture => ({
  columns: 21,
  rows: 13,
  channels: 1,
  light: new Float32Array(273).fill(light),
});

function merged(frames: readonly Picture[], scales: readonly number[] = []): Picture {
  const { columns, rows, channels } = frames[0]!;
  const merge = new Merge(columns, rows, channels);
  frames.forEach((frame, k) => merge.add(frame, scales[k] ?? 1));
  return merge.result();
}

describe('a merged picture', () => {
  it.each([
    [32, 24, 1],
    [31, 17, 3],
    [1, 1, 3],
    [3, 50, 1],
  ] as const)('of one frame is that frame, %i × %i in %i', (columns, rows, channels) => {
    const frame = random(columns, rows, channels, 1);
    const { light } = merged([frame]);
    light.forEach((value, at) => expect(value).toBeCloseTo(frame.light[at]!, 5));
  });

  it('of one frame again and again is that frame', () => {
    const frame = random(31, 17, 3, 1);
    merged([frame, frame, frame]).light.forEach((value, at) => expect(value).toBeCloseTo(frame.light[at]!, 5));
  });

  it('of constant pictures is constant, and their mean', () => {
    for (const value of merged([grey(0.4), grey(0.4)], [1, 1.1]).light) expect(value).toBeCloseTo(0.4, 5);
    for (const value of merged([grey(0.2), grey(0.4)]).light) expect(value).toBeCloseTo(0.3, 5);
  });

  it('does not care in which order frames come', () => {
    const frames = [1, 2, 3, 4].map((seed) => random(31, 17, 1, seed));
    expect(psnr(merged(frames), merged([...frames].reverse()))).toBeGreaterThan(100);
  });

  it('shows each half from the frame that has something there', () => {
    const full = random(64, 32, 1, 1);
    const half = (isLeft: boolean): Picture => ({
      ...full,
      light: full.light.map((value, at) => (at % 64 < 32 === isLeft ? value : 0.5)),
    });
    const { light } = merged([half(true), half(false)]);
    for (let at = 0; at < light.length; at++)
      if (Math.abs((at % 64) - 32) > 8) expect(Math.abs(light[at]! - full.light[at]!)).toBeLessThan(0.02);
  });

  it('may be looked at before the last frame', () => {
    const merge = new Merge(31, 17, 1);
    merge.add(random(31, 17, 1, 1), 1);
    const early = merge.result();
    merge.add(random(31, 17, 1, 2), 1);
    expect(psnr(early, random(31, 17, 1, 1))).toBeGreaterThan(100);
    expect(psnr(early, merge.result())).toBeLessThan(20);
  });

  it('has no number missing where no frame reaches its rim', () => {
    for (const value of merged([random(31, 17, 1, 1)], [1.6]).light) expect(value).toBeGreaterThan(-1);
  });
});

describe('a merge', () => {
  it('of nothing, of other shapes and of what is no number is refused', () => {
    expect(() => new Merge(31, 17, 1).result()).toThrow('one is enough');
    expect(() => new Merge(31, 17, 1).add(random(31, 16, 1, 1), 1)).toThrow('31 × 16');
    const broken = random(31, 17, 1, 1);
    broken.light[200] = NaN;
    expect(() => new Merge(31, 17, 1).add(broken, 1)).toThrow('not a finite number');
  });
});
