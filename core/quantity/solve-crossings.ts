import { between, edgeOf } from './bisect.ts';
import type { Answer, Place, Stretch } from './solve-places.ts';

/** Values of the letter, from first to last, at all of which the left side is what was wanted. One value where the two are the same. */
export interface Run {
  readonly from: number;
  readonly to: number;
}

export interface Crossings {
  readonly runs: readonly Run[];
  /** Where the left side jumps over what is wanted: from this to that. */
  readonly jumps: readonly (readonly [below: number, above: number])[];
}

/** Where the left side is *wanted* along a stretch, in order. */
export function crossingsOf(at: Answer, stretch: Stretch, wanted: number): Crossings {
  const side = (y: number | undefined) => (y === wanted ? 0 : y! < wanted ? -1 : 1);
  const isOn = (x: number) => side(at(x)) === 0;
  const sides = stretch.map((place, k) => (isMet(stretch, k, wanted) ? 0 : side(place.y)));
  const runs: Run[] = [];
  const jumps: [number, number][] = [];
  let from = sides[0] === 0 ? stretch[0]!.x : undefined;
  for (let k = 1; k < stretch.length; k++) {
    const [a, b] = [stretch[k - 1]!.x, stretch[k]!.x];
    const [before, after] = [sides[k - 1]!, sides[k]!];
    const isStill = (x: number) => side(at(x)) === before;
    if (before === 0 && after !== 0) {
      runs.push({ from: from!, to: isOn(a) ? edgeOf(a, b, isOn) : a });
      from = undefined;
    } else if (before !== 0 && after === 0) {
      from = isOn(b) ? edgeOf(b, a, isOn) : b;
    } else if (before * after < 0) {
      const below = edgeOf(a, b, isStill);
      const above = edgeOf(b, below, (x) => side(at(x)) === after);
      const middle = between(below, above);
      if (middle !== undefined && isOn(middle)) {
        runs.push({ from: edgeOf(middle, below, isOn), to: edgeOf(middle, above, isOn) });
      } else if (isContinuous(at, below, above, [a, b])) {
        const nearest = Math.abs(at(below)! - wanted) <= Math.abs(at(above)! - wanted) ? below : above;
        runs.push({ from: nearest, to: nearest });
      } else {
        const ends = [at(below)!, at(above)!] as const;
        jumps.push([Math.min(...ends), Math.max(...ends)]);
      }
    }
  }
  if (from !== undefined) runs.push({ from, to: stretch.at(-1)!.x });
  return { runs: runs.map((run) => tidied(run, isOn, stretch)), jumps };
}

/** A stretch’s ends and turning points meet what is wanted within rounding: there the next number beyond is none, and no change of side tells. */
function isMet(stretch: Stretch, k: number, wanted: number): boolean {
  const { y, isTurn } = stretch[k] as Place;
  const [before, after] = [stretch[k - 1], stretch[k + 1]];
  if (!isTurn && before && after) return false;
  const beside = before && after ? Math.min(Math.abs(before.y), Math.abs(after.y)) : 0;
  const size = Math.max(Math.abs(wanted), Math.abs(y), beside);
  return size < Infinity && Math.abs(y - wanted) <= rounding * size;
}

/** A few hundred times the rounding of one operation: what a formula's own arithmetic may lose. */
const rounding = 1e-13;

/** Whether the left side passes through what lies between two neighbours: a jump, or a pole, stays as high however close one looks. */
function isContinuous(at: Answer, below: number, above: number, [a, b]: readonly [number, number]): boolean {
  const narrow = Math.abs(at(above)! - at(below)!);
  const size = Math.max(Math.abs(at(above)!), Math.abs(at(below)!));
  if (size === Infinity) return false;
  if (narrow <= rounding * size) return true;
  const away = 1e-12 * Math.max(Math.abs(below), Math.abs(above), Math.abs(b - a) * 1e-6);
  const [low, high] = below < above ? [below, above] : [above, below];
  const wide = Math.abs(at(Math.min(high + away, b))! - at(Math.max(low - away, a))!);
  return narrow < wide / 4;
}

/** The same run with ends as short as they can be written: 75 and not 75.00000000000001 where both are right. */
function tidied({ from, to }: Run, isOn: (x: number) => boolean, stretch: Stretch): Run {
  const isAboutZero = from <= 0 && to >= 0;
  const size = isAboutZero ? Math.max(-stretch[0]!.x, stretch.at(-1)!.x) : Math.max(Math.abs(from), Math.abs(to));
  if (to - from <= pointWidth * size) {
    const short = isAboutZero ? 0 : shortest(from, to, isOn);
    return { from: short, to: short };
  }
  return { from: shortest(from, from, isOn), to: shortest(to, to, isOn) };
}

/** What is narrower than this share of itself is one value: the left side is the same to its last digit about a turning point. */
const pointWidth = 1e-6;

/** The shortest number that is as good as the middle: within its rounding, or anywhere in the run if a hand would have written it. */
function shortest(from: number, to: number, isOn: (x: number) => boolean): number {
  const middle = between(from, to) ?? from;
  for (let digits = 1; digits < 16; digits++) {
    const short = Number(middle.toPrecision(digits));
    const isNear = Math.abs(short - middle) <= 4e-16 * Math.abs(middle);
    const isWritten = digits <= 6 && short >= from && short <= to;
    if ((isNear || isWritten) && (isOn(short) || !isOn(middle))) return short;
  }
  return middle;
}
