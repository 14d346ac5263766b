/** How a mask lets a reflection fade at its rim. */
export interface RimStop {
  readonly offset: number;
  /** As a screen takes it, 0 to 1. */
  readonly share: number;
}

/** The power by which screens turn a number into light. */
export const displayGamma = 2.2;
const steps = 8;

/**
 * The rim of a round light's reflection: soft where part of the lens's opening sees the light.
 *
 * @param radius of the reflection as the middle of the opening sees it, any unit
 * @param half how far to each side of that the rim is soft, same unit: the opening as a disc of that radius
 * @returns offsets as shares of *radius* + *half*. Near the rim the light's edge counts as straight; a reflection smaller than the softness gets the share of the opening that it fills.
 */
export function rimStops(radius: number, half: number): RimStop[] {
  const end = radius + half;
  const most = Math.min(1, (radius / half) ** 2);
  const from = Math.abs(radius - half);
  const width = end - from;
  return Array.from({ length: steps + 1 }, (_, index) => {
    const across = Math.cos((Math.PI * index) / steps);
    const share = (Math.acos(-across) + across * Math.sqrt(1 - across * across)) / Math.PI;
    return { offset: (from + ((1 - across) / 2) * width) / end, share: Number((most * share) ** (1 / displayGamma)) };
  });
}
