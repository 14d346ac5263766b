/** sin(a)/a, 1 at 0: the transform of a box, *a* half the phase across it. */
export const sinc = (a: number): number => (Math.abs(a) < 1e-6 ? 1 : Math.sin(a) / a);
