import { expect, it } from 'vitest';
import { chainCount } from '#core/rig/kit/chain-count.ts';
import { searchKit } from '#core/rig/kit/search-kit.ts';
import { kitOf, kitSpeedTable, smallSubject, statedSize } from './kit-speed.ts';

it('is measured on a kit in which chains are many, some suited and others not for every kind of reason', () => {
  const kit = kitOf(statedSize);
  const search = searchKit(kit, smallSubject, 120);
  // 3 bodies × (2⁵ + 3⁵ ways to place rings) × (6 lenses × 2³ close-up lenses + 6 reversed + 30 coupled)
  expect(chainCount(kit)).toBe(69_300);
  expect(search.count).toBe(69_300);
  // Diffraction spoils a deep subject through every chain, and a shallow one through none.
  const { 'too soft': soft, ...passed } = searchKit(kit, smallSubject, 80).tally;
  for (const count of Object.values(passed)) expect(count).toBeGreaterThan(0);
  expect(soft).toBe(0);
  expect(searchKit(kit, { ...smallSubject, subjectDepth: 1 }, 80).tally['too soft']).toBeGreaterThan(0);
  expect(search.suited.length).toBeGreaterThan(100);
});

it('is printed as a table, a line for each size', () => {
  const table = kitSpeedTable([{ ...statedSize, chains: 1000, suited: 10, best: 0.5, median: 1 }]);
  expect(table.split('\n')).toHaveLength(3);
  expect(table).toContain('| 3 | 6 | 5 | 3 | 1 | 1000 | 10 | 0.5 | 1.0 | 500 |');
});
