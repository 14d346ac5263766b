import fc from 'fast-check';
import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import { pathPoints } from '#tests/support/path-points.ts';
import { sideViewPlans } from '#tests/support/side-view-plans.ts';
import SideView from './SideView.svelte';

/** Every place of a drawing that has one: ends of lines, points of paths, corners of boxes, where texts stand. */
function placesIn(svg: string): { x: number; y: number }[] {
  const number = (tag: string, name: string) => Number(new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1]);
  const places = [...svg.matchAll(/ d="([^"]*)"/g)].flatMap(([, path]) => pathPoints(path!));
  for (const [tag] of svg.matchAll(/<line [^>]*>/g)) {
    places.push({ x: number(tag, 'x1'), y: number(tag, 'y1') }, { x: number(tag, 'x2'), y: number(tag, 'y2') });
  }
  for (const [, x, y] of svg.matchAll(/<text[^>]*translate\(([^ ]+) ([^)]+)\)/g))
    places.push({ x: Number(x), y: Number(y) });
  return places;
}

/** Strokes are drawn about their line, and arrowheads and break marks reach a little beyond what they belong to. */
const margin = 6;

describe('a side view', () => {
  it('is drawn for any chain without a gap in its numbers, and wholly on its sheet', () => {
    let words = 0;
    fc.assert(
      fc.property(sideViewPlans, (plan) => {
        const { body } = render(SideView, { props: plan });
        expect(body).not.toMatch(/NaN|undefined|Infinity|null/);
        // A grip's arrows are drawn about its own middle.
        const drawn = body.replaceAll(/<g transform="translate[^]*?<\/g>/g, '');
        const { width, height } = plan.box;
        for (const { x, y } of placesIn(drawn)) {
          const isOnSheet = x >= -margin && x <= width + margin && y >= -margin && y <= height + margin;
          if (!isOnSheet) expect.fail(`(${x}, ${y}) is not on ${width} × ${height}`);
        }
        words += drawn.split('<text').length - 1;
      }),
      { seed: 31, numRuns: 1000 },
    );
    expect(words).toBeGreaterThan(10_000);
  });
});
