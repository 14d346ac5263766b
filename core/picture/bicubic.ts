/**
 * Reads planes between their samples.
 *
 * Cubic convolution over 4 × 4 samples (Keys, IEEE Trans. ASSP 29 (1981) 1153; from memory): on a sample its own value, between them
 * right for any parabola. Beyond the rim the outermost samples go on.
 *
 * @returns a function that writes what all *from* have at a column and a row, which need not be whole, to the place *at* of all *into*, and
 *   returns the sum of them
 */
export function bicubicSampler(
  { columns, rows }: { readonly columns: number; readonly rows: number },
  from: readonly Float32Array[],
  into: readonly Float32Array[],
): (column: number, row: number, at: number) => number {
  const places = new Int32Array(16);
  const weights = new Float64Array(16);
  return (column, row, at) => {
    const left = Math.floor(column);
    const top = Math.floor(row);
    const x = column - left;
    const y = row - top;
    const a = 0.5 * x * (x * (2 - x) - 1);
    const b = 1 + 0.5 * x * x * (3 * x - 5);
    const c = 0.5 * x * (1 + x * (4 - 3 * x));
    const d = 0.5 * x * x * (x - 1);
    const e = 0.5 * y * (y * (2 - y) - 1);
    const f = 1 + 0.5 * y * y * (3 * y - 5);
    const g = 0.5 * y * (1 + y * (4 - 3 * y));
    const h = 0.5 * y * y * (y - 1);
    let sum = 0;
    if (left >= 1 && left < columns - 2 && top >= 1 && top < rows - 2) {
      const p = (top - 1) * columns + left - 1;
      const q = p + columns;
      const r = q + columns;
      const s = r + columns;
      for (let k = 0; k < from.length; k++) {
        const plane = from[k]!;
        const value =
          e * (a * plane[p]! + b * plane[p + 1]! + c * plane[p + 2]! + d * plane[p + 3]!) +
          f * (a * plane[q]! + b * plane[q + 1]! + c * plane[q + 2]! + d * plane[q + 3]!) +
          g * (a * plane[r]! + b * plane[r + 1]! + c * plane[r + 2]! + d * plane[r + 3]!) +
          h * (a * plane[s]! + b * plane[s + 1]! + c * plane[s + 2]! + d * plane[s + 3]!);
        into[k]![at] = value;
        sum += value;
      }
      return sum;
    }
    for (let k = 0; k < 16; k++) {
      const line = k >> 2;
      places[k] = within(top - 1 + line, rows) * columns + within(left - 1 + (k & 3), columns);
      weights[k] = (line < 2 ? (line ? f : e) : line === 2 ? g : h) * ((k & 3) < 2 ? (k & 1 ? b : a) : k & 1 ? d : c);
    }
    for (let k = 0; k < from.length; k++) {
      let value = 0;
      for (let tap = 0; tap < 16; tap++) value += weights[tap]! * from[k]![places[tap]!]!;
      into[k]![at] = value;
      sum += value;
    }
    return sum;
  };
}

const within = (index: number, count: number) => (index < 0 ? 0 : index >= count ? count - 1 : index);
