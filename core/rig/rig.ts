import type { Camera, Part } from './part.ts';

/** Where the aperture of a part is opened and closed. */
export type ApertureControl =
  /** from the camera, through contacts */
  | 'camera'
  /** by a ring on the lens itself */
  | 'lens'
  /** by nothing: a camera's lens without contacts stays as it was left */
  | 'nowhere'
  /** it is a hole of fixed size */
  | 'fixed';

/**
 * One thing that bends light or limits it, as the engine sees it, light running from the subject to the sensor.
 *
 * The engine walks from the sensor to the subject, so that H' comes before H. A thin lens has both in one place.
 */
export interface Element {
  /** From the sensor or the H of the element before to this H', mm, towards the subject. */
  readonly gap: number;
  /** 1/f, 1/mm. */
  readonly power: number;
  /** From H' to H, mm, towards the subject. */
  readonly separation: number;
  /** Radius of the stop as the sensor side sees it, the exit pupil, mm; Infinity where nothing limits. */
  readonly exitRadius: number;
  /** Exit pupil behind H', mm, towards the sensor. */
  readonly exitDepth: number;
  /** *N*, as marked; 0 where nothing is marked. */
  readonly fNumber: number;
  /** Place of its part in the chain. */
  readonly part: number;
  readonly control: ApertureControl;
}

/** Where a part of the chain begins and ends, mm from the sensor towards the subject. */
export interface PartPlace {
  /** Its end towards the sensor, where it is mounted; of the camera the sensor itself. */
  readonly from: number;
  /** Where the next part is mounted. */
  readonly to: number;
  /** Its foremost surface: what stands out behind the flange of a lens that is turned round lies in front of `to`. */
  readonly foremost: number;
}

/** A chain put together: what can stand has been checked, and everything has its place. */
export interface Rig {
  readonly parts: readonly Part[];
  /** One for each part. */
  readonly places: readonly PartPlace[];
  readonly camera: Camera;
  /** From the sensor to the subject. */
  readonly elements: readonly Element[];
  /** From the foremost H to the foremost surface, mm, towards the subject; negative where H lies in front of everything. */
  readonly frontGap: number;
  /** From the sensor to the foremost surface, mm. */
  readonly length: number;
}
