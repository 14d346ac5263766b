import { describe, expect, it } from 'vitest';
import { meet, around } from '#site/figures/sheet/boxes.ts';
import { placeTurn, placeTurns } from './place-turn.ts';

type Layout = Parameters<typeof placeTurn>[0];

/** A lens from 100 to 160 on the sheet, 40 to each side of an axis at 100. */
const layoutWith = (...boxes: Layout['boxes'][number]['box'][]) =>
  ({
    chains: [{ place: { axisY: 100, bottom: 140 }, outlines: [{ left: 100, right: 160, half: 40, path: 'M0 0' }] }],
    boxes: boxes.map((box) => ({ what: 'a word', box })),
  }) as unknown as Layout;

describe('the mark by which a lens is turned', () => {
  it('stands on the rim of the free end, and is pulled to the middle of the lens', () => {
    const place = placeTurn(layoutWith(), 0, 0, 400);
    expect(place).toMatchObject({ x: 100, y: 140, middle: 130, reach: 30 });
  });

  it('makes way for words and other marks', () => {
    const word = { left: 60, right: 200, top: 130, bottom: 150 };
    const place = placeTurn(layoutWith(word), 0, 0, 400)!;
    expect(meet(around(place.x, place.y, 14), word)).toBe(false);
  });

  it('is left out where nothing is free', () => {
    expect(placeTurn(layoutWith({ left: 0, right: 400, top: 0, bottom: 400 }), 0, 0, 400)).toBeUndefined();
  });

  it('makes way for the mark of another lens', () => {
    const [one, other] = placeTurns(
      layoutWith(),
      [
        { chain: 0, at: 0 },
        { chain: 0, at: 0 },
      ],
      400,
    );
    expect(meet(around(one!.x, one!.y, 14), around(other!.x, other!.y, 14))).toBe(false);
  });
});
