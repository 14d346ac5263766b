/** One photograph of a ruler: what was read from it, and what stood between camera and lens. Lengths in mm. */
export interface RulerPhotograph {
  /** How much of the ruler the picture shows from edge to edge. */
  readonly fieldWidth: number;
  /** Of the sensor, along the ruler. */
  readonly sensorWidth: number;
  /** *e*, of the rings, 0 without. */
  readonly extension: number;
  /** *w*, ruler to front rim, where it was measured. */
  readonly workingDistance?: number;
}

/** A photograph that says how well its field was read. */
export interface MeasuredPhotograph extends RulerPhotograph {
  /** Standard error of the field width, mm, 0 or above; left out of one, all count as read to the same share. */
  readonly fieldWidthError?: number;
}

/** A photograph whose numbers cannot be. Says which one it is and what is wrong. */
export class FaultyPhotograph extends Error {
  override readonly name = 'FaultyPhotograph';
  /** Its place in the list, from 0. */
  readonly row: number;
  readonly reason: string;

  constructor(row: number, reason: string) {
    super(`photograph ${row}: ${reason}`);
    this.row = row;
    this.reason = reason;
  }
}

/** Throws {@link FaultyPhotograph} for what is missing or unphysical. */
export function requirePhotographs(photographs: readonly MeasuredPhotograph[]): void {
  photographs.forEach(({ fieldWidth, fieldWidthError, sensorWidth, extension, workingDistance }, row) => {
    const require = (what: string, value: number, least: string, holds: boolean) => {
      if (!(holds && value < Infinity)) {
        throw new FaultyPhotograph(row, `the ${what} is ${value}; accepted: a finite number ${least}`);
      }
    };
    require('field width', fieldWidth, 'above 0', fieldWidth > 0);
    if (fieldWidthError !== undefined)
      require('error of the field width', fieldWidthError, 'of 0 or above', fieldWidthError >= 0);
    require('sensor width', sensorWidth, 'above 0', sensorWidth > 0);
    require('extension', extension, 'of 0 or above', extension >= 0);
    if (workingDistance !== undefined) require('working distance', workingDistance, 'above 0', workingDistance > 0);
    const magnification = sensorWidth / fieldWidth;
    if (!(magnification > 1e-6 && magnification < 1e6)) {
      throw new FaultyPhotograph(
        row,
        `a field ${fieldWidth} wide on a sensor ${sensorWidth} wide is a magnification of ${magnification}; accepted: from 1e-6 to 1e6, all lengths in mm`,
      );
    }
  });
}
