import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { fittingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';
import { titleHeight } from '#site/figures/sheet/title-block.ts';

/** How one way of mounting shows its opening; lengths in mm. */
export interface Face {
  /** Widths of the opening as subject and sensor see it. */
  readonly toSubject: number;
  readonly toSensor: number;
  /** From the sensor to the opening that it sees; undefined where nothing is sharp. */
  readonly distance: number | undefined;
}

interface Circle {
  readonly x: number;
  readonly radius: number;
}

export interface Row {
  readonly top: number;
  readonly axisY: number;
  readonly subject: Circle;
  readonly sensor: Circle;
  /** The opening that the sensor sees, from the side, and how high it is. */
  readonly cone: { readonly pupilX: number; readonly half: number } | undefined;
}

export interface FacesLayout {
  /** Of lengths along the axis, and of openings. */
  readonly along: DrawingScale;
  readonly across: DrawingScale;
  readonly rows: readonly Row[];
  readonly sensorX: number;
  /** Where what closes the iris is said. */
  readonly irisY: number;
  /** Foot of the title block. */
  readonly titleY: number;
}

export interface Scales {
  readonly along: DrawingScale;
  readonly across: DrawingScale;
}

/** Openings face on, and beside them the cones that they send to the sensor at the right: all openings to one scale, all lengths to another. */
export function facesLayout(
  faces: readonly Face[],
  /** The opening that the sheet has room for at least, so that a smaller one is seen to be small, mm. */
  usual: number,
  box: SheetBox,
  held?: Scales,
): FacesLayout {
  const { width, height, text, small } = box;
  // Below it the title block, and below that the rule with its numbers.
  const titleY = height - 11 - 1.1 * small - 3;
  const irisY = titleY - titleHeight * small - 0.5 * small;
  const rowHeight = (irisY - 1.1 * small) / faces.length;
  const column = Math.min(0.26 * width, 12.5 * text);
  const room = Math.min(0.86 * column, rowHeight - 3.2 * text);
  const widest = Math.max(usual, ...faces.flatMap(({ toSubject, toSensor }) => [toSubject, toSensor]));
  const across = held?.across ?? fittingScale(box, Math.max(1, room) / widest);
  const sensorX = width - 0.8 * text;
  const coneRoom = sensorX - 2 * column - 1.6 * text;
  const longest = Math.max(1, ...faces.map(({ distance }) => distance ?? 0));
  const along = held?.along ?? fittingScale(box, Math.max(1, coneRoom) / longest);
  const radiusOf = (diameter: number) => (diameter / 2) * across.pixelsPerMillimetre;
  const rows = faces.map(({ toSubject, toSensor, distance }, index): Row => ({
    top: index * rowHeight,
    axisY: index * rowHeight + 1.6 * text + (rowHeight - 3.2 * text) / 2,
    subject: { x: 0.5 * column + 4, radius: radiusOf(toSubject) },
    sensor: { x: 1.5 * column + 4, radius: radiusOf(toSensor) },
    cone:
      distance === undefined
        ? undefined
        : { pupilX: sensorX - distance * along.pixelsPerMillimetre, half: radiusOf(toSensor) },
  }));
  return { along, across, rows, sensorX, irisY, titleY };
}
