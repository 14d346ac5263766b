import { reduceLevel } from '#core/picture/merge/pyramid.ts';
import { resampled } from '#core/picture/merge/resampled.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Given {
  readonly columns: number;
  readonly rows: number;
  readonly places: readonly (readonly [number, number])[];
}

function noise({ columns, rows }: Given): Float32Array {
  return Float32Array.from({ length: columns * rows }, (_, k) => ((k * k * 7 + k * 37) % 101) / 101);
}

function scaled(given: Given & { readonly scale: number }) {
  const { columns, rows, places, scale } = given;
  const { light } = resampled({ columns, rows, channels: 1, light: noise(given) }, scale);
  return { light: places.map(([x, y]) => light[y * columns + x]!) };
}

function halved(given: Given) {
  const { columns, rows, places } = given;
  const [across, down] = [(columns + 1) >> 1, (rows + 1) >> 1];
  const half = new Float32Array(across * down);
  reduceLevel(noise(given), { columns, rows }, half, new Float32Array(across * rows));
  return { light: places.map(([x, y]) => half[y * across + x]!) };
}

export const ours = oursById({
  'noise-made-larger': scaled,
  'noise-made-smaller': scaled,
  'noise-halved': halved,
  'noise-halved-upright': halved,
});
