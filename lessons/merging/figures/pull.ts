import { edgeShift, edgeShiftFormula } from '#core/stack/edge-shift.formula.ts';
import { frameStep } from '#core/stack/frame-step.formula.ts';
import { scaleChangeOnRail } from '#core/stack/scale-change-on-rail.formula.ts';
import type { Named } from '#core/quantity/formula.ts';
import type { Range } from '#core/quantity/expected.ts';
import { pulledTo } from '#site/state/pulled-to.ts';

const from = ['depth-of-field', 'overlap', 'entrance-pupil-distance', 'sensor-width', 'pixel-pitch'] as const;
type Given = Named<(typeof from)[number]>;

/** How far one step of the rail moves what lies at the side of the frame, pixels. */
const shift = {
  gives: edgeShiftFormula.gives,
  from,
  // Some hundred times a movement: by name, without copies.
  evaluate(given: Given) {
    const { entrancePupilDistance, sensorWidth, pixelPitch } = given;
    const scaleChange = scaleChangeOnRail({ frameStep: frameStep(given), entrancePupilDistance });
    return edgeShift({ scaleChange, sensorWidth, pixelPitch });
  },
};

/** The overlap in *range* whose step moves the side of the frame by so many *pixels*: the more overlap, the fewer. */
export function overlapOfShift(stack: Omit<Given, 'overlap'>, pixels: number, range: Range): number {
  const given = {
    'edge-shift': pixels,
    'depth-of-field': stack.depthOfField,
    'entrance-pupil-distance': stack.entrancePupilDistance,
    'sensor-width': stack.sensorWidth,
    'pixel-pitch': stack.pixelPitch,
  };
  return pulledTo(shift, { ask: 'overlap', given, range }, range.least);
}
