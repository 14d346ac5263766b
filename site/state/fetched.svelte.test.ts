import { expect, test } from 'vitest';
import { Fetched } from './fetched.svelte.ts';

test('comes once, however often it is asked for, and is asked for again where it did not come', async () => {
  let loads = 0;
  const piece = new Fetched(() => (++loads === 1 ? Promise.reject(new Error('no network')) : Promise.resolve('here')));
  const settled = () => new Promise((done) => setTimeout(done));
  piece.fetch();
  piece.fetch();
  expect(piece.isMissing).toBe(false);
  await settled();
  expect([loads, piece.here, piece.isMissing]).toEqual([1, undefined, true]);
  piece.fetch();
  await settled();
  piece.fetch();
  expect([loads, piece.here, piece.isMissing]).toEqual([2, 'here', false]);
});
