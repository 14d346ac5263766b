/** Places of a grid from *left* up to but not including *right*, and so on. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A box with so many places more on each side. */
export function expanded(box: Box, by: number): Box {
  return { left: box.left - by, right: box.right + by, top: box.top - by, bottom: box.bottom + by };
}

/** What two boxes share. Nothing is left where right is not beyond left, or bottom not beyond top. */
export function intersection(box: Box, other: Box): Box {
  return {
    left: Math.max(box.left, other.left),
    right: Math.min(box.right, other.right),
    top: Math.max(box.top, other.top),
    bottom: Math.min(box.bottom, other.bottom),
  };
}

/** A box so many places farther to the right and down. */
export function translated(box: Box, right: number, down: number): Box {
  return { left: box.left + right, right: box.right + right, top: box.top + down, bottom: box.bottom + down };
}
