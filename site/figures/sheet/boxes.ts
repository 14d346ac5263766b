/** A rectangle on the sheet, pixels. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Whether two boxes share more than an edge. */
export function meet(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

export function isWithin(inner: Box, outer: Box): boolean {
  return (
    inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom
  );
}

/** A square box about a point. */
export function around(x: number, y: number, reach: number): Box {
  return { left: x - reach, top: y - reach, right: x + reach, bottom: y + reach };
}
