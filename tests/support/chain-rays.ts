import type { Element, Rig } from '#core/rig/rig.ts';

/** A ray from the sensor to the subject, its place and slope at either end. */
interface Ray {
  readonly height: number;
  readonly slope: number;
}

/** A point before a chain: how far behind its foremost surface's sharp plane, mm, and how far off the axis. */
export interface PointBefore {
  readonly ahead: number;
  readonly across: number;
}

/**
 * Where on the sensor the rays of a point end that graze the rim of the limiting stop on both sides, and the one through its middle.
 *
 * Every ray is a sum of two that are walked through the chain part by part; the sum is found that leaves the point and passes the stop
 * where it should. Nothing here knows of pupils, magnifications or f-numbers.
 *
 * @param ahead from the foremost surface to the point, mm
 */
export function spotOf(rig: Rig, stop: Element, { ahead, across }: PointBefore) {
  const distance = rig.frontGap + ahead;
  const one = walked(rig, stop, { height: 1, slope: 0 }, distance);
  const other = walked(rig, stop, { height: 0, slope: 1 }, distance);
  /** The height on the sensor of the ray of the point that is so high in the stop. */
  const through = (inStop: number) => {
    const determinant = one.atPoint * other.inStop - other.atPoint * one.inStop;
    return (across * other.inStop - inStop * other.atPoint) / determinant;
  };
  return { upper: through(stop.exitRadius), middle: through(0), lower: through(-stop.exitRadius) };
}

function walked({ elements }: Rig, stop: Element, { height, slope }: Ray, distance: number) {
  let y = height;
  let v = slope;
  let inStop = NaN;
  for (const element of elements) {
    y += element.gap * v;
    if (element === stop) inStop = y - element.exitDepth * v;
    v -= element.power * y;
  }
  return { inStop, atPoint: y + distance * v };
}
