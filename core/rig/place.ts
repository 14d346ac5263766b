import { OutOfRange, requireFinite, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import { metre } from '#core/quantity/metre.ts';
import { lensInUse } from './lens-in-use.ts';
import { objectivePoints } from './objective-points.ts';
import type { Bellows, Camera, Converter, ConverterByPoints, MountedLens, Objective, Part } from './part.ts';
import type { ApertureControl, Element } from './rig.ts';
import { thinConverter } from './thin-converter.ts';

/** A rig half built. */
export interface Build {
  /** Where the next part is mounted, mm from the sensor. */
  end: number;
  /** Foremost surface so far, mm from the sensor. */
  foremost: number;
  /** Where the H of the last element stands, mm from the sensor. */
  lastH: number;
  /** How far the part at hand stands out beyond where the next one is mounted, mm. */
  standsOut: number;
  /** Whether contacts reach from the camera to here. */
  coupled: boolean;
  readonly elements: Element[];
}

/** Puts the next part in its place: principal planes, stop, and where the chain ends now. Throws OutOfRange for a number out of range. */
export function place(build: Build, part: Part, index: number): void {
  switch (part.part) {
    case 'camera':
      return addCamera(build, part);
    case 'ring':
      build.end += requireNotNegative('extension', part.extension);
      return loseContacts(build, part.coupled);
    case 'bellows':
      build.end += requireDraw(part);
      return loseContacts(build, part.coupled);
    case 'converter':
    case 'converter by points':
      addConverter(build, part, index);
      return loseContacts(build, part.coupled);
    case 'lens':
      return addLens(build, part, index);
    case 'close-up lens':
      build.end += requireNotNegative('extension', part.seat ?? 0);
      return addThin(build, requireFinite('close-up-power', part.closeUpPower) / metre, part.clearAperture, index);
    case 'tube lens':
      return addThin(build, 1 / requirePositive('focal-length', part.focalLength), part.clearAperture, index);
    case 'objective':
      return addObjective(build, part, index);
  }
}

function addCamera(build: Build, camera: Camera): void {
  build.end = requirePositive('register-distance', camera.registerDistance);
  requirePositive('sensor-width', camera.sensorWidth);
  requirePositive('sensor-height', camera.sensorHeight);
}

function loseContacts(build: Build, coupled = true): void {
  build.coupled &&= coupled;
}

function requireDraw({ extension, shortest, longest }: Bellows): number {
  if (extension >= shortest && extension <= longest) return requireNotNegative('extension', extension);
  throw new OutOfRange('extension', extension, `from ${shortest} to ${longest} mm, the bellows’ draw`);
}

function addConverter(build: Build, part: Converter | ConverterByPoints, index: number): void {
  build.end += requirePositive('converter-length', part.converterLength);
  if (part.part === 'converter') {
    const { focalLength, objectDistance } = thinConverter(part);
    const depth = requirePositive('register-distance', part.registerDistance) - objectDistance;
    return addElement(build, build.end - depth, 1 / focalLength, 0, index);
  }
  if (!(part.focalLength < 0))
    throw new OutOfRange('focal-length', part.focalLength, 'below 0, for a converter spreads light');
  const separation = requireFinite('principal-separation', part.principalSeparation);
  const depth = requireFinite('front-principal-depth', part.frontPrincipalDepth);
  addElement(
    build,
    build.end - depth - separation,
    1 / requireFinite('focal-length', part.focalLength),
    separation,
    index,
  );
}

/** Turned round, H and H' swap, the old entrance pupil becomes the exit pupil, and the rim is what is mounted. */
function addLens(build: Build, part: MountedLens, index: number): void {
  const lens = lensInUse(part.lens, part.focusMagnification, part.fNumber);
  const { focalLength, principalSeparation, pupilMagnification: pupils, entrancePupil, fNumber } = lens;
  const { flangeDepth, frontPrincipalDepth } = lens;
  const reversed = part.reversed === true;
  const lensAlone = part.lens.apertureControl === 'lens';
  build.coupled &&= !reversed;
  const control = lensAlone ? 'lens' : build.coupled ? 'camera' : 'nowhere';
  const exit = reversed ? 1 / pupils : pupils;
  const exitRadius = (reversed ? entrancePupil : entrancePupil * pupils) / 2;
  const rear = build.end + (reversed ? frontPrincipalDepth : flangeDepth);
  addElement(
    build,
    rear,
    1 / focalLength,
    principalSeparation,
    index,
    exitRadius,
    focalLength * (1 - exit),
    fNumber,
    control,
  );
  build.end = build.lastH + (reversed ? flangeDepth : frontPrincipalDepth);
  if (reversed) build.standsOut = lens.rearProtrusion;
  // What is mounted in front of a lens is not told anything through it.
  build.coupled = false;
}

function addObjective(build: Build, part: Objective, index: number): void {
  const { focalLength, shoulderDepth, frontPrincipalDepth, beam } = objectivePoints(part);
  addElement(build, build.end + shoulderDepth, 1 / focalLength, 0, index, beam / 2, focalLength);
  build.end = build.lastH + frontPrincipalDepth;
}

function addThin(build: Build, power: number, clearAperture: number | undefined, index: number): void {
  const radius = clearAperture === undefined ? Infinity : requirePositive('entrance-pupil', clearAperture) / 2;
  addElement(build, build.end, power, 0, index, radius);
}

function addElement(
  build: Build,
  rear: number,
  power: number,
  separation: number,
  part: number,
  exitRadius = Infinity,
  exitDepth = 0,
  fNumber = 0,
  control: ApertureControl = 'fixed',
): void {
  build.elements.push({ gap: rear - build.lastH, power, separation, exitRadius, exitDepth, fNumber, part, control });
  build.lastH = rear + separation;
}
