import { ballIlluminance } from '#core/light/ball-illuminance.ts';
import { catchlightOutline } from '#core/light/catchlight-outline.ts';
import type { DiscSource } from '#core/light/flat-source.ts';
import { lightsAroundBall, type Arrangement, type LightsGiven } from '#core/light/lights-around-ball.ts';
import { greyLevel } from '#site/figures/grey/grey.ts';
import { greyImage } from './grey-image.ts';

/** A ball with its lights. */
export interface Lit extends LightsGiven {
  readonly arrangement: Arrangement;
}

const side = 72;
/** A matt ball reflects so much, a share. */
const white = 0.85;
/** Steps of a degree in which a light's shading is computed; between them it is straight. */
const steps = 180;

/** How a light shades the ball, by the angle from the direction in which it stands: all round that direction it is alike. */
function byAngle(light: DiscSource, ballRadius: number): Float64Array {
  const [x, , z] = [-light.facing[0], 0, -light.facing[2]];
  return Float64Array.from({ length: steps + 1 }, (_, index) => {
    const angle = (Math.PI * index) / steps;
    const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
    return ballIlluminance([light], { ballRadius }, [cos * x + sin * z, 0, cos * z - sin * x]);
  });
}

/** The illuminance of a ball by the direction that its surface faces, right, up, towards the camera; of length 1. */
function shadingOf(lit: Lit): (x: number, y: number, z: number) => number {
  const lights = lightsAroundBall(lit, lit.arrangement).map((light) => ({
    x: -light.facing[0],
    z: -light.facing[2],
    table: byAngle(light, lit.ballRadius),
  }));
  return (x, _y, z) => {
    let total = 0;
    for (const light of lights) {
      const place = (steps / Math.PI) * Math.acos(Math.min(1, Math.max(-1, x * light.x + z * light.z)));
      const before = Math.min(steps - 1, Math.floor(place));
      total += light.table[before]! + (place - before) * (light.table[before + 1]! - light.table[before]!);
    }
    return total;
  };
}

/** A matt ball as the camera sees it, exposed so that its brightest place comes out as it is: an image's address. */
export function mattBall(lit: Lit): string {
  const light = shadingOf(lit);
  const values = new Float64Array(side * side);
  let most = 0;
  for (let row = 0; row < side; row++) {
    for (let column = 0; column < side; column++) {
      const [across, up] = [(2 * column + 1) / side - 1, 1 - (2 * row + 1) / side];
      const off = Math.hypot(across, up);
      // Beside the ball as at its rim, so that nothing foreign is mixed in where the image is drawn larger.
      const scale = off < 1 ? 1 : 1 / off;
      const [x, y] = [across * scale, up * scale];
      const value = light(x, y, Math.sqrt(Math.max(0, 1 - x * x - y * y)));
      values[row * side + column] = value;
      if (value > most) most = value;
    }
  }
  return greyImage(side, (column, row) => (most > 0 ? greyLevel((white * values[row * side + column]!) / most, 0) : 0));
}

/** What a shiny ball mirrors: outlines of all lights, with the holes of rings, as a path about its centre, its radius 1, down positive. */
export function mirroredLights(lit: Lit): string {
  return lightsAroundBall(lit, lit.arrangement)
    .flatMap((light) => [light, ...(light.hole ? [{ ...light, sourceSize: light.hole, hole: 0 }] : [])])
    .map((light) => {
      const points = catchlightOutline(light, lit.ballRadius, undefined, 60);
      const [first, ...rest] = points.map(
        ({ x, y }) => `${(x / lit.ballRadius).toFixed(4)} ${(-y / lit.ballRadius).toFixed(4)}`,
      );
      return first === undefined ? '' : `M${first}L${rest.join('L')}z`;
    })
    .join('');
}
