import type { Stretch } from './solve-places.ts';
import type { Reach } from './solve-refusals.ts';

/** Between two values of the letter the left side only rises or only falls; `turning` at the one value between two such pieces. */
export interface Branch {
  readonly sense: 'rising' | 'falling' | 'level' | 'turning';
  readonly from: number;
  readonly to: number;
}

/** The piece between two turns on which a value stands. */
export function branchOf(stretch: Stretch, value: number): Branch {
  const bounds = stretch.filter(({ isTurn }, k) => isTurn || k === 0 || k === stretch.length - 1);
  const touching = bounds.find(({ x, isTurn }) => isTurn && Math.abs(x - value) <= 1e-6 * Math.abs(x));
  if (touching) return { sense: 'turning', from: value, to: value };
  const end = Math.max(
    1,
    bounds.findIndex(({ x }) => x >= value),
  );
  const [from, to] = [bounds[end - 1]!, bounds[end] ?? bounds[end - 1]!];
  const sense = to.y > from.y ? 'rising' : to.y < from.y ? 'falling' : 'level';
  return { sense, from: from.x, to: to.x };
}

/** From the lowest place of a stretch to the highest. */
export function reachOf(stretch: Stretch): Reach {
  const ys = stretch.map(({ y }) => y);
  return { least: Math.min(...ys), most: Math.max(...ys) };
}

/** The same parts from small to large, those that meet as one. */
export function joined(parts: readonly Reach[]): Reach[] {
  const sorted = [...parts].sort((one, other) => one.least - other.least);
  return sorted.reduce<Reach[]>((all, part) => {
    const last = all.at(-1);
    if (!last || part.least > last.most) return [...all, part];
    return [...all.slice(0, -1), { least: last.least, most: Math.max(last.most, part.most) }];
  }, []);
}

/** A left side that jumps over what is wanted can be as much as before the jump, or as after it. */
export function aroundJumps(reach: readonly Reach[], jumps: readonly (readonly [number, number])[]): readonly Reach[] {
  const [jump] = jumps;
  if (!jump) return reach;
  return reach.flatMap((part) =>
    part.least <= jump[0] && part.most >= jump[1]
      ? [
          { least: part.least, most: jump[0] },
          { least: jump[1], most: part.most },
        ]
      : [part],
  );
}
