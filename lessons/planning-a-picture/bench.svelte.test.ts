import { describe, expect, it } from 'vitest';
import { bench } from './bench.svelte.ts';
import { subjects } from './figures/subjects.ts';
describe('x', () => {
  it('prints', () => {
    for (const subject of Object.keys(subjects)) {
      bench.read(`subject=${subject}`);
      console.log(
        subject,
        Object.keys(bench.answers)
          .map((n) => `${n} ${bench.words(n as never)}`)
          .join(' | '),
      );
    }
    expect(1).toBe(1);
  });
});
