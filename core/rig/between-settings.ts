/**
 * Values known at several settings, and what they are in between: smooth, and none passes what is known on either side of it.
 *
 * Between two settings each value is the cubic with the slopes that the parabola through three neighbours has, made less steep where it
 * would overshoot
 *
 * @param at the settings, growing
 * @param values of each setting, as many each time
 * @returns the values at any place from the first setting to the last; outside it means nothing
 *
 * Settings on a parabola give it back while it does not turn in between. What stands still stays still; what moves as another does, or just against it, goes
 * on doing so. Source: Fritsch and Carlson, Monotone piecewise cubic interpolation, SIAM J. Numer. Anal. 17 (1980) (from memory). Derived in
 * [README](README.md#between-settings).
 */
export function betweenSettings(
  at: readonly number[],
  values: readonly (readonly number[])[],
): (place: number) => readonly number[] {
  const gaps = at.slice(1).map((here, index) => here - (at[index] as number));
  const chords = gaps.map((gap, index) =>
    (values[index] as readonly number[]).map((value, which) => ((values[index + 1]?.[which] ?? NaN) - value) / gap),
  );
  const slopes = at.map((_, index) => limited(slopesAt(index, gaps, chords), index, chords));
  return (place) => {
    if (at.length === 1) return values[0] as readonly number[];
    let index = 0;
    while (index < gaps.length - 1 && place >= (at[index + 1] as number)) index++;
    const gap = gaps[index] as number;
    const t = (place - (at[index] as number)) / gap;
    const [from, to] = [values[index] as readonly number[], values[index + 1] as readonly number[]];
    const [leaving, arriving] = [slopes[index] as readonly number[], slopes[index + 1] as readonly number[]];
    // Ends are given back to the last digit.
    if (t <= 0) return from;
    if (t >= 1) return to;
    const [rise, start, end] = [t * t * (3 - 2 * t), t * (1 - t) ** 2 * gap, t * t * (t - 1) * gap];
    return from.map(
      (value, which) =>
        value +
        rise * ((to[which] as number) - value) +
        start * (leaving[which] as number) +
        end * (arriving[which] as number),
    );
  };
}

type Rows = readonly (readonly number[])[];

/** Slopes at one setting of the parabola through it and its neighbours; of the chord where there are two settings only. */
function slopesAt(index: number, gaps: readonly number[], chords: Rows): readonly number[] {
  // An end lies on the parabola of the three settings nearest to it.
  const middle = Math.min(Math.max(index, 1), gaps.length - 1);
  const [before, behind] = [chords[middle - 1], chords[middle]];
  if (!before || !behind) return chords[0] ?? [];
  const [a, b] = [gaps[middle - 1] as number, gaps[middle] as number];
  return before.map((chord, which) => {
    const bend = ((behind[which] as number) - chord) / (a + b);
    if (index < middle) return chord - bend * a;
    if (index > middle) return (behind[which] as number) + bend * b;
    return chord + bend * a;
  });
}

/** A cubic stays between its ends while both its slopes go the chord’s way and are at most three times as steep; what turns round is level. */
function limited(slopes: readonly number[], index: number, chords: Rows): readonly number[] {
  const sides = [chords[index - 1], chords[index]].filter((side) => side !== undefined);
  return slopes.map((slope, which) => {
    const limits = sides.map((side) => {
      const chord = side[which] as number;
      return slope * chord > 0 ? 3 * Math.abs(chord) : 0;
    });
    return Math.sign(slope) * Math.min(Math.abs(slope), ...limits);
  });
}
