import type { Frame } from './frame.ts';

/** Where one chain's millimetres come to stand on the sheet, pixels. */
export interface SheetPlace {
  readonly pixelsPerMillimetre: number;
  readonly sensorX: number;
  readonly axisY: number;
  /** Highest and lowest that the drawing may reach. */
  readonly top: number;
  readonly bottom: number;
  readonly width: number;
  /** Where the sharp plane stands: to scale, or at the edge behind the break; where light comes from, without one. */
  readonly subjectX: number;
  /** Middle of the break in the axis; null where the whole axis is to scale. */
  readonly breakX: number | null;
  /** To scale, on the camera's side of a break. */
  readonly x: (fromSensor: number) => number;
  readonly y: (aboveAxis: number) => number;
  /** Half of a height in pixels, kept inside the drawing, and whether it had to be. */
  readonly half: (height: number) => { readonly half: number; readonly cut: boolean };
}

/** Half the gap that a break leaves. */
export const breakGap = 9;

export function sheetPlace(
  frame: Frame,
  chain: number,
  { axisY, width, sharpPlane, front }: { axisY: number; width: number; sharpPlane: number | null; front: number },
): SheetPlace {
  const { pixelsPerMillimetre, room, farX } = frame;
  const sensorX = frame.sensorX[chain]!;
  const x = (fromSensor: number) => sensorX - fromSensor * pixelsPerMillimetre;
  const broken = frame.broken[chain]!;
  const toScale = sharpPlane === null || broken ? farX : Math.max(0.4 * farX, x(sharpPlane));
  return {
    pixelsPerMillimetre,
    sensorX,
    axisY,
    top: axisY - room,
    bottom: axisY + room,
    width,
    subjectX: broken ? farX : Math.min(width - 0.4 * farX, toScale),
    breakX: broken ? Math.max(farX + 2 * breakGap, (farX + x(front)) / 2) : null,
    x,
    y: (aboveAxis) => axisY - aboveAxis * pixelsPerMillimetre,
    half: (height) => {
      const half = Math.abs(height) * pixelsPerMillimetre;
      return { half: Math.min(half, room), cut: half > room };
    },
  };
}
