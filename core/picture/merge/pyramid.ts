/** How large a level of a pyramid is. */
export interface LevelSize {
  readonly columns: number;
  readonly rows: number;
}

/** Levels stop before they have fewer pixels than that either way. */
const smallest = 4;

/** The levels over a picture, itself first: each half as large as the one below, rounded up. */
export function levelSizes(columns: number, rows: number): readonly LevelSize[] {
  const sizes = [{ columns, rows }];
  for (;;) {
    const next = { columns: (columns + 1) >> 1, rows: (rows + 1) >> 1 };
    if (Math.min(next.columns, next.rows) < smallest) return sizes;
    sizes.push(next);
    ({ columns, rows } = next);
  }
}

/**
 * Every other pixel of a plane made smooth by (1 4 6 4 1)/16 either way; at its rim it is mirrored at its last pixels.
 *
 * @param half of the next level's size; filled
 * @param rowsOnly of the next level's columns and this one's rows; overwritten
 *
 * Source: Burt and Adelson, The Laplacian pyramid as a compact image code, IEEE Trans. Commun. 31 (1983), 532, a = 0.375 (from memory).
 */
export function reduceLevel(
  plane: Float32Array,
  { columns, rows }: LevelSize,
  half: Float32Array,
  rowsOnly: Float32Array,
): void {
  const across = (columns + 1) >> 1;
  const down = (rows + 1) >> 1;
  for (let row = 0; row < rows; row++) {
    const from = row * columns;
    const into = row * across;
    for (let k = 0; k < across; k++) {
      const x = 2 * k;
      const [a, b, c, d] =
        x > 1 && x < columns - 2
          ? [x - 2, x - 1, x + 1, x + 2]
          : [mirrored(x - 2, columns), mirrored(x - 1, columns), mirrored(x + 1, columns), mirrored(x + 2, columns)];
      rowsOnly[into + k] =
        (plane[from + a]! + plane[from + d]! + 4 * (plane[from + b]! + plane[from + c]!) + 6 * plane[from + x]!) / 16;
    }
  }
  for (let k = 0; k < down; k++) {
    const y = 2 * k;
    const [a, b, c, d, e] = [-2, -1, 0, 1, 2].map((by) => mirrored(y + by, rows) * across) as [
      number,
      number,
      number,
      number,
      number,
    ];
    const into = k * across;
    for (let x = 0; x < across; x++)
      half[into + x] =
        (rowsOnly[a + x]! + rowsOnly[e + x]! + 4 * (rowsOnly[b + x]! + rowsOnly[d + x]!) + 6 * rowsOnly[c + x]!) / 16;
  }
}

/**
 * Adds to a plane, times a factor, the level above it brought back to its size: between two of its pixels lies their mean, and at one
 * (1 6 1)/8 of it and its neighbours.
 *
 * @param half the level above
 * @param rowsOnly of the level's columns and the rows of the one above; overwritten
 */
export function addExpanded(
  plane: Float32Array,
  { columns, rows }: LevelSize,
  half: Float32Array,
  rowsOnly: Float32Array,
  factor: number,
): void {
  const across = (columns + 1) >> 1;
  const down = (rows + 1) >> 1;
  for (let row = 0; row < down; row++) {
    const from = row * across;
    const into = row * columns;
    for (let k = 0; k < across; k++) {
      const left = half[from + Math.max(0, k - 1)]!;
      const here = half[from + k]!;
      const right = half[from + Math.min(across - 1, k + 1)]!;
      rowsOnly[into + 2 * k] = (left + 6 * here + right) / 8;
      if (2 * k + 1 < columns) rowsOnly[into + 2 * k + 1] = (here + right) / 2;
    }
  }
  for (let row = 0; row < rows; row++) {
    const k = row >> 1;
    const here = k * columns;
    const below = Math.min(down - 1, k + 1) * columns;
    const into = row * columns;
    if (row % 2 === 1)
      for (let x = 0; x < columns; x++) plane[into + x]! += (factor * (rowsOnly[here + x]! + rowsOnly[below + x]!)) / 2;
    else {
      const above = Math.max(0, k - 1) * columns;
      for (let x = 0; x < columns; x++)
        plane[into + x]! += (factor * (rowsOnly[above + x]! + 6 * rowsOnly[here + x]! + rowsOnly[below + x]!)) / 8;
    }
  }
}

function mirrored(index: number, length: number): number {
  const period = Math.max(1, 2 * length - 2);
  const inPeriod = Math.abs(index) % period;
  return inPeriod < length ? inPeriod : period - inPeriod;
}
