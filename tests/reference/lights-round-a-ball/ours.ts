import { ballIlluminance } from '#core/light/ball-illuminance.ts';
import { catchlightSides } from '#core/light/catchlight-sides.ts';
import { lightingRatio } from '#core/light/lighting-ratio.formula.ts';
import { lightsAroundBall, type LightsGiven } from '#core/light/lights-around-ball.ts';

type Given = { main: number; fill: number } | (LightsGiven & { ring?: number });

export function ours(given: Given, id: string) {
  if ('main' in given)
    return {
      lightingRatio: lightingRatio({
        litSideIlluminance: given.main + given.fill,
        shadowSideIlluminance: given.fill,
      }),
    };
  const lights = lightsAroundBall(given, given.ring ? 'ring' : 'one');
  if (id.startsWith('mirrored')) {
    const { left, right } = catchlightSides(lights[0]!, given.ballRadius);
    return { catchlight: [left, right] };
  }
  const illuminance = [-1, 1].map((side) => ballIlluminance(lights, given, [side, 0, 1]));
  const [litSideIlluminance, shadowSideIlluminance] = illuminance as [number, number];
  return { illuminance, lightingRatio: lightingRatio({ litSideIlluminance, shadowSideIlluminance }) };
}
