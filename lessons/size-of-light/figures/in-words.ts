/** Beyond so many to one nothing is seen on the shadow side. */
const most = 1000;
/** Less light than that prints as a row of noughts, lx. */
const least = 0.001;

/** Whether a ratio or an illuminance can stand in a printed line. */
export const isPrinted = {
  ratio: (lit: number, shadow: number) => lit >= least && shadow >= least && lit / shadow < most,
  light: (illuminance: number) => illuminance >= least,
};

/** A lighting ratio at its edges: no light on either side, or none to speak of on one. */
export function ratioInWords(ratio: number | undefined): string | undefined {
  if (ratio === undefined) return 'none: neither side is lit';
  return ratio < most ? undefined : ratio === Infinity ? 'no light on the far side' : `more than ${most}`;
}

/** Light that is next to none. */
export function lightInWords(illuminance: number | undefined): string | undefined {
  if (illuminance === undefined || illuminance >= least) return undefined;
  return illuminance === 0 ? 'none' : `less than ${least} lx`;
}
