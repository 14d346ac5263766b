import {
  illuminanceByInverseSquare,
  illuminanceByInverseSquareFormula,
} from '#core/exposure/illuminance-by-inverse-square.formula.ts';
import { illuminanceFromDisc, illuminanceFromDiscFormula } from '#core/exposure/illuminance-from-disc.formula.ts';
import { imageWidthFormula } from '#core/gaussian/image-width.formula.ts';
import { ballIlluminance } from '#core/light/ball-illuminance.ts';
import { catchlightSides } from '#core/light/catchlight-sides.ts';
import { catchlightWidthParaxialFormula } from '#core/light/catchlight-width-paraxial.formula.ts';
import { lightingRatioFormula, type lightingRatio } from '#core/light/lighting-ratio.formula.ts';
import { lightsAroundBall, type Arrangement } from '#core/light/lights-around-ball.ts';
import { penumbraFormula } from '#core/light/penumbra.formula.ts';
import { sourceAngleFormula } from '#core/light/source-angle.formula.ts';
import { step, under } from '#core/quantity/answers-from.ts';
import { degree } from '#core/quantity/units.ts';
import { Bench, choiceOf, keptChoice } from '#site/state/bench.svelte.ts';
import { arrangements, balls, lamps } from './figures/gear.ts';
import { isPrinted, lightInWords, ratioInWords } from './figures/in-words.ts';

type OfDisc = Parameters<typeof illuminanceFromDisc>[0];
type OfRatio = Parameters<typeof lightingRatio>[0];

const setUp = ['source-size', 'flash-distance', 'ball-radius', 'luminance', 'light-angle'] as const;
const arrangedAs = (chosen: Readonly<Record<string, string>>) => chosen['lights'] as Arrangement;

/** All light on the ball 45° to the left of the camera's direction, and 45° to the right. */
const bothSides = step({
  from: setUp,
  gives: ['lit-side.illuminance', 'shadow-side.illuminance'],
  evaluate: (given, chosen) => {
    const lights = lightsAroundBall(given, arrangedAs(chosen));
    const at = (side: number) => ballIlluminance(lights, given, [side, 0, 1]);
    return { litSideIlluminance: at(-1), shadowSideIlluminance: at(1) };
  },
});

/** The reflection of the left light, or of the ring's outer rim. */
const catchlight = step({
  from: setUp,
  gives: ['catchlight-width'],
  evaluate: (given, chosen) => {
    const { left, right } = catchlightSides(lightsAroundBall(given, arrangedAs(chosen))[0]!, given.ballRadius);
    return { catchlightWidth: right - left };
  },
});

export const bench = new Bench({
  inputs: {
    'flash-distance': 300,
    'source-size': lamps.head['source-size'],
    'light-angle': 45 * degree,
    'edge-height': 4,
    'ball-radius': balls.hoverfly['ball-radius'],
    magnification: 3,
    luminance: { start: 2000, least: 1 },
  },
  choices: {
    lights: keptChoice('Lights', arrangements),
    light: choiceOf('Light', lamps, ['source-size']),
    ball: choiceOf('Round thing', balls, ['ball-radius']),
  },
  formulas: [
    sourceAngleFormula,
    penumbraFormula,
    // Where words say how little it is, a line of noughts would say less.
    { ...illuminanceFromDiscFormula, holds: (given: OfDisc) => isPrinted.light(illuminanceFromDisc(given)) },
    ...under('inverse-square', [
      {
        ...illuminanceByInverseSquareFormula,
        holds: (given: OfDisc) => isPrinted.light(illuminanceByInverseSquare(given)),
      },
    ]),
    bothSides,
    {
      ...lightingRatioFormula,
      holds: (given: OfRatio) => isPrinted.ratio(given.litSideIlluminance, given.shadowSideIlluminance),
    },
    catchlight,
    catchlightWidthParaxialFormula,
    ...under('catchlight', [imageWidthFormula], { 'subject-width': 'catchlight-width' }),
  ],
  words: {
    penumbra: { none: 'none: the edge is not below the light' },
    illuminance: lightInWords,
    'inverse-square.illuminance': lightInWords,
    'lit-side.illuminance': lightInWords,
    'shadow-side.illuminance': lightInWords,
    'lighting-ratio': ratioInWords,
  },
});
