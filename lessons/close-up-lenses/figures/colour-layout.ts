import type { SheetBox } from '#site/controls/workbench/workbench.ts';

/** What one kind of glass does to blue where red is sharp. */
export interface Colours {
  /** On the sensor, mm. */
  readonly colourBlur: number;
  /** Before the sensor, from where blue meets to where red does, mm. */
  readonly behindLens: number;
}

/** Scales that stay while a hand drags. */
export interface HeldScales {
  /** Pixels for a millimetre along the axis, across it, and on the sensor. */
  readonly along: number;
  readonly across: number;
  readonly disc: number;
}

/** Two rays of one colour, above and below the axis, from the left end of their picture to its right end, as SVG paths. */
export interface ColourRays {
  readonly red: string;
  readonly blue: string;
  /** Where blue crosses the axis, pixels. */
  readonly blueX: number;
}

export interface ColourRow {
  /** Baseline of the heading. */
  readonly headingY: number;
  readonly axisY: number;
  /** Half the height of the drawings. */
  readonly half: number;
  readonly rays: ColourRays;
  /** Radius of blue's disc, pixels. */
  readonly radius: number;
  /** Half of what blue takes of the sensor among the rays, pixels. */
  readonly blurHalf: number;
}

export interface ColourLayout extends HeldScales {
  readonly rays: { readonly left: number; readonly right: number; readonly sensorX: number };
  readonly discs: { readonly left: number; readonly right: number; readonly x: number };
  readonly rows: readonly ColourRow[];
  readonly circle: number;
  /** Side of a pixel of the sensor; 0 where it is too small to be drawn. */
  readonly square: number;
}

/** A pixel smaller than this on the sheet is no square. */
const smallestSquare = 5;

/** Preferred numbers of ISO 3 in tenths of a decade: near enough to fill the sheet, far enough apart to stay while values creep. */
const steps = [1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8];

/** The largest preferred scale at which *length* millimetres fit into *room* pixels. */
function scaleFor(length: number, room: number): number {
  const largest = room / length;
  const power = 10 ** Math.floor(Math.log10(largest));
  return steps.findLast((step) => step * power <= largest * (1 + 1e-9))! * power;
}

/** Where the sensor stands among the rays, as a share of their picture. */
const sensorShare = 0.76;

/** How much of the picture before the sensor the wider of the two spreads may take. */
const spreadShare = 0.62;

/** Share of the sheet's width that the rays take. */
const raysShare = 0.58;

/**
 * For each kind of glass a row: at the left the light as it comes to the sensor, heights drawn larger than lengths; at the right the disc of
 * blue on the pixels, with the circle of confusion. Both rows have the same scales: what differs is the glass.
 */
export function colourLayout(
  glasses: readonly Colours[],
  { effectiveFNumber, circle, pixelPitch }: { effectiveFNumber: number; circle: number; pixelPitch: number },
  { width, height, text, small }: SheetBox,
  held?: HeldScales,
): ColourLayout {
  const top = 0.4 * text;
  const band = (height - top - 3.4 * small - 0.4 * text) / glasses.length;
  const half = Math.max(8, (band - 1.9 * text) / 2);
  const rays = { left: 6, right: raysShare * width };
  const length = rays.right - rays.left;
  const sensorX = rays.left + sensorShare * length;
  const discs = { left: rays.right + 1.2 * text, right: width - 6 };
  const widest = Math.max(...glasses.map(({ colourBlur }) => colourBlur));
  const farthest = Math.max(...glasses.map(({ behindLens }) => behindLens));
  const along = held?.along ?? scaleFor(farthest, spreadShare * (sensorX - rays.left));
  const before = (sensorX - rays.left) / along;
  const across = held?.across ?? scaleFor(before / effectiveFNumber, 1.9 * half);
  const room = Math.min(2 * half, discs.right - discs.left);
  const disc = held?.disc ?? scaleFor(Math.max(1.1 * widest, 1.5 * circle), room);
  const square = pixelPitch * disc;

  /** A ray that crosses the axis *focus* before the sensor, cut at the picture's upper and lower edge. */
  const ray = (axisY: number, focus: number, side: 1 | -1) => {
    const ends = [rays.left, rays.right].map((x) => {
      const ahead = (sensorX - x) / along;
      const y = (side * (ahead - focus) * across) / (2 * effectiveFNumber);
      return `${x.toFixed(1)} ${(axisY - Math.min(4000, Math.max(-4000, y))).toFixed(1)}`;
    });
    return `M${ends.join('L')}`;
  };
  const bundle = (axisY: number, focus: number) => ray(axisY, focus, 1) + ray(axisY, focus, -1);

  return {
    along,
    across,
    disc,
    rays: { ...rays, sensorX },
    discs: { ...discs, x: (discs.left + discs.right) / 2 },
    circle: (circle / 2) * disc,
    square: square >= smallestSquare ? square : 0,
    rows: glasses.map(({ colourBlur, behindLens }, index) => {
      const axisY = top + index * band + 1.5 * text + half;
      return {
        headingY: top + index * band + 1.05 * text,
        axisY,
        half,
        rays: {
          red: bundle(axisY, 0),
          blue: bundle(axisY, behindLens),
          blueX: sensorX - behindLens * along,
        },
        radius: (colourBlur / 2) * disc,
        blurHalf: (colourBlur / 2) * across,
      };
    }),
  };
}

/** The lines between pixels about the middle of one of them, as far as (*halfWidth*, *halfHeight*), as an SVG path. */
export function pixelLines(square: number, halfWidth: number, halfHeight: number): string {
  if (square === 0) return '';
  const from = (half: number) => Math.floor(half / square - 0.5);
  const lines = (half: number, line: (at: string) => string) =>
    Array.from({ length: 2 * from(half) + 2 }, (_, k) => line(((k - from(half) - 0.5) * square).toFixed(1))).join('');
  return (
    lines(halfWidth, (x) => `M${x} ${-halfHeight}V${halfHeight}`) +
    lines(halfHeight, (y) => `M${-halfWidth} ${y}H${halfWidth}`)
  );
}
