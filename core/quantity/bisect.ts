/** The middle of two numbers where there is a number between them; undefined where they are neighbours. */
export function between(one: number, other: number): number | undefined {
  const middle = one / 2 + other / 2;
  return middle === one || middle === other ? undefined : middle;
}

/** Below this share of the first interval two numbers about zero are as good as one; the numbers themselves go on for 1000 halvings more. */
export const finest = 2 ** -70;

/**
 * The last place for which something holds on the way from *inside*, where it does, to *outside*, where it does not: by halving,
 * until no number is left between. Slower by some evaluations than a method that interpolates, and it cannot go astray:
 * steps, corners and poles are no harder than straight lines.
 */
export function edgeOf(inside: number, outside: number, holds: (x: number) => boolean): number {
  const enough = Math.abs(outside - inside) * finest;
  for (;;) {
    const middle = between(inside, outside);
    if (middle === undefined || Math.abs(outside - inside) < enough) return inside;
    if (holds(middle)) inside = middle;
    else outside = middle;
  }
}
