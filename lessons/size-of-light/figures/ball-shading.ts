import { ballIlluminance } from '#core/light/ball-illuminance.ts';
import { byAngle } from '#core/light/by-angle.ts';
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
/** How a light shades the ball, by the cosine of the angle from where it stands: all round that direction it is alike. */
function shadeOf(light: DiscSource, ballRadius: number): (cosine: number) => number {
  const [x, z] = [-light.facing[0], -light.facing[2]];
  return byAngle((angle) => {
    const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
    return ballIlluminance([light], { ballRadius }, [cos * x + sin * z, 0, cos * z - sin * x]);
  });
}

/** The illuminance of a ball by the direction that its surface faces, right and towards the camera, of length 1. The lights stand level with it. */
function shadingOf(lit: Lit): (x: number, z: number) => number {
  const lights = lightsAroundBall(lit, lit.arrangement).map((light) => ({
    x: -light.facing[0],
    z: -light.facing[2],
    at: shadeOf(light, lit.ballRadius),
  }));
  return (x, z) => lights.reduce((total, light) => total + light.at(x * light.x + z * light.z), 0);
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
      const value = light(x, Math.sqrt(Math.max(0, 1 - x * x - y * y)));
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
