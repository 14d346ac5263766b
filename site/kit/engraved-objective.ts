import type { Objective } from '#core/rig/part.ts';
import { numberIn, type NewPart } from './part.ts';

/** From an objective's shoulder to the specimen, and from the picture it forms to the end of its tube, mm: ISO 9345 (from memory). */
const parfocal = 45;
const pictureInTube = 10;
/** From its shoulder to its front at least, mm: assumed. */
const shortestObjective = 20;

/** An objective of a kit, for a tube lens or for a tube, as the rig engine takes it. */
export function engravedObjective(part: NewPart): Objective {
  const number = (key: string) => numberIn(part, key)!;
  return {
    part: 'objective',
    objectiveMagnification: number('objective-magnification'),
    numericalAperture: number('numerical-aperture'),
    workingDistance: number('working-distance'),
    design:
      part.kind === 'objective'
        ? { tubeFocalLength: number('tube-focal-length') }
        : { imageDistance: number('tube-length') - pictureInTube },
    parfocalDistance: Math.max(parfocal, number('working-distance') + shortestObjective),
  };
}
