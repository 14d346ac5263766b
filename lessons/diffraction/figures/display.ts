/** The curve by which screens turn a number into light; both pictures are drawn through it, and the sheet says so. */
export const displayGamma = 2.2;

/** How strongly a share of the brightest light is drawn, 0 to 1, so that the screen shows that share. */
export function drawn(share: number): number {
  return Number((Math.max(0, share) ** (1 / displayGamma)).toFixed(4));
}

/**
 * A light tint of the colour of *wavelength*, mm: blue at 450 nm, green at 550, red from 625; a dark one where the picture is a negative. A
 * hint; no screen shows one wavelength.
 */
export function tintOf(wavelength: number, isNegative = false): string {
  const beyondGreen = wavelength * 1e6 - 550;
  const hue = 120 - (beyondGreen < 0 ? 1.2 : 1.6) * beyondGreen;
  return `hsl(${Math.min(275, Math.max(0, hue))} 100% ${isNegative ? 16 : 78}%)`;
}
