import { describe, expect, it } from 'vitest';
import { inLanes } from './lanes.ts';

/** What started and ended, in order, where each piece of work takes as many turns as *turns* says. */
async function told(lanes: number, works: readonly { name: string; after: string[]; turns: number }[]) {
  const story: string[] = [];
  await inLanes(lanes, works, async ({ name, turns }) => {
    story.push(`+${name}`);
    for (let turn = 0; turn < turns; turn++) await new Promise((done) => setImmediate(done));
    story.push(`-${name}`);
  });
  return story.join(' ');
}

describe('work in lanes', () => {
  it('is done side by side, as many at a time as there are lanes', async () => {
    const works = ['a', 'b', 'c'].map((name, at) => ({ name, after: [], turns: [9, 2, 2][at]! }));
    expect(await told(2, works)).toBe('+a +b -b +c -c -a');
    expect(await told(1, works)).toBe('+a -a +b -b +c -c');
  });

  it('waits for what must have ended, and lets others go first', async () => {
    const works = [
      { name: 'a', after: ['b'], turns: 1 },
      { name: 'b', after: [], turns: 3 },
      { name: 'c', after: [], turns: 9 },
    ];
    expect(await told(2, works)).toBe('+b +c -b +a -a -c');
  });

  it('says so where some would wait for ever', async () => {
    await expect(told(2, [{ name: 'a', after: ['nobody'], turns: 1 }])).rejects.toThrow('a: waiting');
  });
});
