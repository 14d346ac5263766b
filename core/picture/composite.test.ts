import { describe, expect, it } from 'vitest';
import { closeSurface, compositeSlice, emptyLayers, fillOpen, type Layers } from './composite.ts';

/** Lays one place of light and coverage. */
function lay(layers: Layers, light: number, coverage: number): void {
  const wanted = { left: 0, right: 1, top: 0, bottom: 1 };
  const plane = (value: number) => Float32Array.of(value);
  compositeSlice(layers, {
    columns: 1,
    left: 0,
    top: 0,
    wanted,
    light: [plane(light * coverage)],
    coverage: plane(coverage),
  });
}

describe('layers', () => {
  it('add up the slices of one surface, which fit together', () => {
    const layers = emptyLayers(1, 1, 1);
    lay(layers, 1, 0.25);
    lay(layers, 0.5, 0.75);
    closeSurface(layers);
    expect(layers.light[0]![0]).toBe(0.625);
    expect(layers.open[0]).toBe(0);
  });

  it('give a deeper slice no more than nearer ones left', () => {
    const layers = emptyLayers(1, 1, 1);
    lay(layers, 0, 0.75);
    lay(layers, 1, 1);
    expect(layers.light[0]![0]).toBe(0.25);
    expect(layers.left[0]).toBe(0);
  });

  it('let a surface through the share of the aperture that surfaces before it left open', () => {
    const layers = emptyLayers(1, 1, 1);
    for (const light of [0, 0.5, 1]) {
      lay(layers, light, 0.5);
      closeSurface(layers);
    }
    expect(layers.light[0]![0]).toBe(0.25 * 0.5 + 0.125);
    expect(layers.open[0]).toBe(0.125);
  });

  it('have what was met stand for what was not', () => {
    const layers = emptyLayers(2, 1, 1);
    lay(layers, 0.8, 0.5);
    closeSurface(layers);
    fillOpen(layers);
    expect(layers.light[0]![0]).toBeCloseTo(0.8, 6);
    expect(layers.light[0]![1]).toBe(0);
  });
});
