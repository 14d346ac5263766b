/**
 * Gives what a surface does not cover the heights of what it covers nearby, in place: beside an outline the search for what
 * lies behind a place of the sensor needs a height before it knows whether it finds anything.
 *
 * Two sweeps, down and up, each taking the mean of the neighbours that already have one.
 */
export function extendHeights(height: Float32Array, coverage: Float32Array, columns: number, rows: number): void {
  const known = new Uint8Array(coverage.length);
  let unknown = 0;
  for (let at = 0; at < known.length; at++) {
    if (coverage[at]! > 0) known[at] = 1;
    else unknown++;
  }
  if (unknown === 0) return;
  sweep(height, known, columns, rows, 1);
  sweep(height, known, columns, rows, -1);
}

function sweep(height: Float32Array, known: Uint8Array, columns: number, rows: number, step: 1 | -1): void {
  const first = step === 1 ? 0 : rows - 1;
  for (let row = first; row >= 0 && row < rows; row += step) {
    let at = step === 1 ? row * columns : (row + 1) * columns - 1;
    for (let column = 0; column < columns; column++, at += step) {
      if (known[at] === 1) continue;
      const left = column > 0 ? known[at - step]! : 0;
      const above = row === first ? 0 : known[at - step * columns]!;
      if (left + above === 0) continue;
      const sum = (left && height[at - step]!) + (above && height[at - step * columns]!);
      height[at] = sum / (left + above);
      known[at] = 1;
    }
  }
}
