import { keptKit } from '#site/kit/kept-kit.ts';
import { numberIn, partsOf } from '#site/kit/part.ts';

/** The longer sides of the kit's sensors. */
export const kitSensors = () =>
  partsOf(keptKit.read().value, 'camera').map((camera) => ({
    name: camera.name,
    width: Math.max(numberIn(camera, 'sensor-width')!, numberIn(camera, 'sensor-height')!),
  }));
