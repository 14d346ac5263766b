import { sourceSizeForMirror } from '#core/light/source-size-for-mirror.formula.ts';

interface LookingGlass {
  readonly mirrorHeight: number;
  readonly eyeDistance: number;
  readonly thingDistance: number;
}

/** What can be seen in a mirror by an eye that is a point, mm. */
export const ours = ({ mirrorHeight, eyeDistance, thingDistance }: LookingGlass) => ({
  seen: sourceSizeForMirror({
    fieldWidth: mirrorHeight,
    flashDistance: thingDistance,
    entrancePupilDistance: eyeDistance,
    entrancePupil: 0,
  }),
});
