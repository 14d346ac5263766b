import { metre } from '#core/quantity/metre.ts';
import { thinConverter } from '../thin-converter.ts';
import type { BackLengths } from './back.ts';
import type { Front } from './front.ts';
import type { KitCamera, KitLens } from './kit.ts';
import { focusTo, settingOf, type Setting } from './setting.ts';

/**
 * The engine’s walk from the sensor to the subject, written out for the few shapes that a kit allows, into numbers that stay
 * where they are. `solveRig` says what they mean; a test holds one to the other.
 */
export interface Walk {
  readonly main: Setting;
  readonly reversed: boolean;
  /** From the lens outwards: power in 1/mm, seat and free diameter in mm. */
  readonly closeUps: readonly { readonly power: number; readonly seat: number; readonly clearAperture: number }[];
  readonly second: (Setting & { readonly pupil: number }) | null;
  readonly couplingLength: number;
  /** From the sensor to where the main lens is mounted. */
  mountedAt: number;
  /** *m₀* that the numbers below belong to; below 0 for none yet. */
  focusedTo: number;
  converterAt: number;
  converterPower: number;
  converterSeparation: number;
  /** m, below 0 for a picture the right way up. */
  magnification: number;
  workingDistance: number;
  /** Where an image of the sensor stands at all: before the foremost H. */
  real: boolean;
  /** N_w per N of the main lens. */
  conePerStop: number;
  /** N_w that other stops allow at best; 0 where there are none. */
  coneAtLeast: number;
  /** 1/u where the main lens limits the cone, and where another stop does. */
  inverseByMain: number;
  inverseByOther: number;
}

/** A front with its main lens at infinity, nothing behind it yet. */
export function walkOf({ lens, reversingRing, closeUpLenses, coupled }: Front): Walk {
  return {
    main: settingOf(lens.lens),
    reversed: reversingRing !== null,
    closeUps: closeUpLenses.map(({ closeUpPower, seat = 0, clearAperture = Infinity }) => ({
      power: closeUpPower / metre,
      seat,
      clearAperture,
    })),
    second: coupled ? secondOf(coupled.lens) : null,
    couplingLength: coupled?.ring.extension ?? 0,
    mountedAt: 0,
    focusedTo: -1,
    converterAt: 0,
    converterPower: 0,
    converterSeparation: 0,
    magnification: 0,
    workingDistance: 0,
    real: false,
    conePerStop: 0,
    coneAtLeast: 0,
    inverseByMain: 0,
    inverseByOther: 0,
  };
}

/** A second lens stays at infinity and wide open. */
function secondOf({ lens, maxAperture }: KitLens): Setting & { readonly pupil: number } {
  const setting = settingOf(lens);
  return { ...setting, pupil: setting.focalLength / (maxAperture * setting.fNumberDrift) };
}

/** Puts the walk on a camera and a back. */
export function mountWalk(walk: Walk, camera: KitCamera, back: BackLengths, reversingLength: number): void {
  const flange = camera.registerDistance + back.behind;
  const { converter } = back;
  walk.converterPower = 0;
  walk.converterSeparation = 0;
  if (converter?.points) {
    const { focalLength, principalSeparation, frontPrincipalDepth } = converter.points;
    walk.converterPower = 1 / focalLength;
    walk.converterSeparation = principalSeparation;
    walk.converterAt = flange + converter.converterLength - frontPrincipalDepth - principalSeparation;
  } else if (converter) {
    const { focalLength, objectDistance } = thinConverter(converter);
    walk.converterPower = 1 / focalLength;
    walk.converterAt = flange + converter.converterLength - camera.registerDistance + objectDistance;
  }
  walk.mountedAt = flange + (converter?.converterLength ?? 0) + back.before + reversingLength;
}

/**
 * Walks with the main lens at *m₀*. One ray starts in the middle of the sensor at slope 1, the other at height 1 along the axis: it is asked
 * only where the rays through the middle of a stop cross the axis.
 */
export function walkAt(walk: Walk, focusMagnification: number): void {
  const { main, reversed, second } = walk;
  focusTo(main, focusMagnification);
  walk.focusedTo = focusMagnification;
  const { focalLength: f, pupilMagnification: P, principalSeparation } = main;
  let at = walk.converterPower === 0 ? 0 : walk.converterAt;
  let y = at;
  let v = 1 - walk.converterPower * at;
  let along = 1;
  let alongSlope = -walk.converterPower;
  at += walk.converterSeparation;

  const rear = walk.mountedAt + (reversed ? main.frontPrincipalDepth : main.flangeDepth);
  y += (rear - at) * v;
  along += (rear - at) * alongSlope;
  const exitDepth = f * (1 - (reversed ? 1 / P : P));
  const inMain = y - exitDepth * v;
  const alongInMain = along - exitDepth * alongSlope;
  walk.conePerStop = (Math.abs(inMain) * main.fNumberDrift) / (reversed ? f : f * P);
  v -= y / f;
  alongSlope -= along / f;
  at = rear + principalSeparation;
  let end = at + (reversed ? main.flangeDepth : main.frontPrincipalDepth);
  let foremost = reversed ? end + main.rearProtrusion : Math.max(end, walk.mountedAt);

  walk.coneAtLeast = 0;
  let inOther = 0;
  let alongInOther = 0;
  for (const { power, seat, clearAperture } of walk.closeUps) {
    end += seat;
    y += (end - at) * v;
    along += (end - at) * alongSlope;
    at = end;
    const cone = Math.abs(y) / clearAperture;
    if (cone > walk.coneAtLeast) {
      walk.coneAtLeast = cone;
      inOther = y;
      alongInOther = along;
    }
    v -= power * y;
    alongSlope -= power * along;
    foremost = Math.max(foremost, end);
  }
  if (second) {
    end += walk.couplingLength;
    const secondRear = end + second.frontPrincipalDepth;
    y += (secondRear - at) * v;
    along += (secondRear - at) * alongSlope;
    const secondExit = second.focalLength * (1 - 1 / second.pupilMagnification);
    inOther = y - secondExit * v;
    alongInOther = along - secondExit * alongSlope;
    walk.coneAtLeast = Math.abs(inOther) / second.pupil;
    v -= y / second.focalLength;
    alongSlope -= along / second.focalLength;
    at = secondRear + second.principalSeparation;
    foremost = at + second.flangeDepth + second.rearProtrusion;
  }
  walk.magnification = -v;
  // A stop where the middle ray has no height stands in the picture and limits nothing.
  walk.inverseByMain = inMain === 0 ? 0 : v * (alongSlope - (alongInMain / inMain) * v);
  walk.inverseByOther = inOther === 0 ? 0 : v * (alongSlope - (alongInOther / inOther) * v);
  walk.real = y / -v > 0;
  walk.workingDistance = (y + (foremost - at) * v) / -v;
}
