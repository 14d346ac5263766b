/** The curve by which screens turn a number into light; both pictures are drawn through it, and the sheet says so. */
export const displayGamma = 2.2;

/** How strongly a share of the brightest light is drawn, 0 to 1, so that the screen shows that share. */
export function drawn(share: number): number {
  return Number((Math.max(0, share) ** (1 / displayGamma)).toFixed(4));
}

/** Wavelengths, nm, and the hue by which a screen hints at them, degrees. No screen shows a single wavelength. */
const hues = [
  [380, 275],
  [450, 240],
  [490, 190],
  [530, 135],
  [575, 60],
  [600, 35],
  [650, 0],
] as const;

/** A light tint of the hue, as a CSS colour. Takes mm. */
export function tintOf(wavelength: number): string {
  const nm = wavelength * 1e6;
  const above = Math.max(
    1,
    hues.findIndex(([at]) => at >= nm),
  );
  const [from, fromHue] = hues[nm > 650 ? 6 : above - 1]!;
  const [to, toHue] = hues[nm > 650 ? 6 : above]!;
  const part = to === from ? 0 : (nm - from) / (to - from);
  return `hsl(${Math.round(fromHue + part * (toHue - fromHue))} 100% 78%)`;
}
