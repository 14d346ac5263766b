import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { lifeSize } from '#tests/support/in-view.ts';
import { smallScene } from '#tests/support/small-scenes.ts';
import { renderPicture, renderSteps } from './render.ts';
import type { View } from './view.ts';

const view: View = { ...lifeSize, columns: 64, rows: 48, pitch: 0.01, focusHeight: 2 };
const chequered = smallScene(
  { columns: 80, rows: 64, pitch: 0.01 },
  { light: (x, y) => ((Math.floor(x / 8) + Math.floor(y / 8)) % 2 === 0 ? 0.9 : 0.1), height: (x) => 2 + x / 20 },
);
const contrastOf = ({ light }: { light: Float32Array }) => Math.max(...light) - Math.min(...light);

describe('renderPicture', () => {
  it('loses contrast with defocus, and again with diffraction', () => {
    const flat = { ...chequered, surfaces: [{ ...chequered.surfaces[0]!, height: new Float32Array(80 * 64).fill(2) }] };
    const [wide, narrow, tiny] = [4, 40, 400].map((effectiveFNumber) =>
      contrastOf(renderPicture(flat, { ...view, focusHeight: 4, effectiveFNumber })),
    ) as [number, number, number];
    expect(narrow).toBeGreaterThan(wide + 0.1);
    expect(narrow).toBeGreaterThan(tiny + 0.1);
  });

  it('has three equal channels of a grey scene, as bright as the one', () => {
    const colour = renderPicture(chequered, { ...view, colour: true });
    const grey = renderPicture(chequered, view);
    expect(colour.channels).toBe(3);
    for (let channel = 0; channel < 3; channel++)
      grey.light.forEach((light, at) => expect(colour.light[channel * 64 * 48 + at]).toBeCloseTo(light, 5));
  });

  it('renders a blur many times as wide as the picture: what is left is its mean', () => {
    const { light } = renderPicture(chequered, { ...view, effectiveFNumber: 0.5, focusHeight: 40 }, { slices: 3 });
    for (const value of light)
      expect(value).toEqual(closeTo(0.5, { absolute: 0.1, because: 'half of the squares are dark' }));
  });

  it('refuses slices, grids and scenes that are none, in words', () => {
    for (const slices of [0, 2.5, NaN, 2000])
      expect(() => renderPicture(chequered, view, { slices })).toThrow(/number of slices/);
    expect(() => renderPicture(chequered, view, { oversampling: 0 })).toThrow(/places of the grid/);
    expect(() => renderPicture({ ...chequered, columns: 79 }, view)).toThrow(/79 × 64 samples/);
    expect(() => renderPicture({ ...chequered, surfaces: [] }, view)).toThrow(/0 surfaces/);
    const holed = smallScene(
      { columns: 9, rows: 9, pitch: 0.01 },
      { light: () => 1, height: (x) => (x === 0 ? NaN : 1) },
    );
    expect(() => renderPicture(holed, view)).toThrow(/finite/);
  });
});

describe('renderSteps', () => {
  it('says how far it is between slices, and ends with the same picture', () => {
    const steps = renderSteps(chequered, view, { slices: 6 });
    const shares: number[] = [];
    let step = steps.next();
    for (; !step.done; step = steps.next()) shares.push(step.value);
    expect(shares.length).toBeGreaterThanOrEqual(4);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    expect(shares.at(-1)).toBe(1);
    expect(step.value).toEqual(renderPicture(chequered, view, { slices: 6 }));
  });
});
