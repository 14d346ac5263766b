/** Two real planes that are blurred alike, as the real and imaginary halves of one complex plane. */
export interface Pair {
  readonly columns: number;
  readonly rows: number;
  readonly re: Float32Array;
  readonly im: Float32Array;
}
