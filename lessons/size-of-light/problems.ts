import { illuminanceFromDiscFormula } from '#core/exposure/illuminance-from-disc.formula.ts';
import { imageWidthFormula } from '#core/gaussian/image-width.formula.ts';
import { ballRadiusFromCatchlightFormula } from '#core/light/ball-radius-from-catchlight.formula.ts';
import { catchlightWidthParaxialFormula } from '#core/light/catchlight-width-paraxial.formula.ts';
import { diffuserDistanceFormula } from '#core/light/diffuser-distance.formula.ts';
import { lightingRatioFormula } from '#core/light/lighting-ratio.formula.ts';
import { penumbraFormula } from '#core/light/penumbra.formula.ts';
import { sourceAngle, sourceAngleFormula } from '#core/light/source-angle.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { degree } from '#core/quantity/units.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';

const aHundredth = { relative: 0.01, because: 'rounding while working it out' } as const;
const ruler = { relative: 0.02, because: 'two per cent is finer than a ruler held to a soft edge' } as const;

const howWide = numberFamily({
  id: 'how-wide-it-looks',
  asks: 'source-angle',
  question:
    'A round diffuser is {source-size} wide and {flash-distance} from the subject. How wide does it look from there?',
  givens: (draw) => ({
    'source-size': draw.pick([100, 120, 160, 200]),
    // Nowhere half of a width: there width over distance and distance over width are alike.
    'flash-distance': draw.pick([55, 65, 75, 90]),
  }),
  tolerance: aHundredth,
  mistakes: [
    {
      id: 'upside-down',
      value: (given) => 2 * Math.atan((2 * given['flash-distance']) / given['source-size']),
      because: 'That divides the distance by the width. The tangent is what is across from the angle, half the width.',
    },
    {
      id: 'half-of-it',
      value: (given) => evaluateFormula(sourceAngleFormula, given) / 2,
      because: 'That is the angle from its middle to its rim. The whole width takes twice that.',
    },
    {
      id: 'an-arc',
      value: (given) => given['source-size'] / given['flash-distance'],
      because:
        'That is width over distance, the angle of an arc. A flat light’s ends are farther away, and look smaller.',
    },
    {
      id: 'from-one-end',
      value: (given) => Math.atan(given['source-size'] / given['flash-distance']),
      because:
        'That puts one end of the light before the subject. Its middle is there: take half the width, and twice the angle.',
    },
  ],
  hint: 'Which angle is there from the middle of the light to its rim?',
  working: [{ formula: sourceAngleFormula, note: 'Half the width over the distance, and the angle twice:' }],
});

const howNear = numberFamily({
  id: 'how-near-the-diffuser',
  asks: 'flash-distance',
  question:
    'Your diffuser is {source-size} wide. The light is to look {source-angle} wide from the subject. How near must the diffuser be?',
  givens: (draw) => ({
    'source-size': draw.pick([80, 100, 150, 300]),
    'source-angle': draw.pick([50, 60, 70, 80]) * degree,
  }),
  tolerance: aHundredth,
  mistakes: [
    {
      id: 'whole-width-whole-angle',
      value: (given) => given['source-size'] / Math.tan(given['source-angle']),
      because: 'That takes the whole width and the whole angle. The tangent wants half of both.',
    },
    {
      id: 'angle-not-halved',
      value: (given) => given['source-size'] / (2 * Math.tan(given['source-angle'])),
      because: 'That halves the width and not the angle. From the middle to the rim it is half of both.',
    },
    {
      id: 'width-not-halved',
      value: (given) => given['source-size'] / Math.tan(given['source-angle'] / 2),
      because: 'That halves the angle and not the width. From the middle to the rim it is half of both.',
    },
    {
      id: 'an-arc',
      value: (given) => given['source-size'] / given['source-angle'],
      because: 'That is width over angle, right for an arc. A flat light must come nearer to look as wide.',
    },
  ],
  hint: 'How large is half of that angle, and how long is the side across from it?',
  working: [{ formula: diffuserDistanceFormula, note: 'Half the width over the tangent of half the angle:' }],
});

const softEdge = numberFamily({
  id: 'soft-edge',
  asks: 'penumbra',
  question:
    'A light {source-size} wide is {flash-distance} above a leaf. The edge of a petal is {edge-height} above the leaf. How wide is the soft rim of its shadow?',
  givens: (draw) => ({
    'source-size': draw.pick([60, 100, 160]),
    'flash-distance': draw.pick([50, 60, 80]),
    'edge-height': draw.pick([12, 15, 20]),
  }),
  tolerance: ruler,
  mistakes: [
    {
      id: 'from-the-leaf',
      value: (given) => (given['source-size'] * given['edge-height']) / given['flash-distance'],
      because:
        'That divides by the distance from the leaf. The two triangles meet at the edge: count the light from there, d − y.',
    },
    {
      id: 'upside-down',
      value: (given) =>
        (given['source-size'] * (given['flash-distance'] - given['edge-height'])) / given['edge-height'],
      because: 'That is upside down. The nearer the edge is to the leaf, the narrower is the rim.',
    },
    {
      id: 'twice',
      value: (given) => 2 * evaluateFormula(penumbraFormula, given),
      because: 'That counts both sides of a shadow. One edge has one rim, from no light at all to all of it.',
    },
  ],
  hint: 'Two triangles touch at the edge. How tall is the one with the light, how tall the other?',
  working: [{ formula: penumbraFormula, note: 'The triangles are alike, d − y and y tall:' }],
});

const onTheSensor = numberFamily({
  id: 'catchlight-on-the-sensor',
  asks: 'image-width',
  question:
    'A light {source-size} wide is {flash-distance} before an eye of radius {ball-radius}. You photograph the eye at {magnification}. How wide is the catchlight on the sensor?',
  givens: (draw) => ({
    'source-size': draw.pick([20, 25, 30]),
    'flash-distance': draw.pick([120, 150, 200]),
    'ball-radius': draw.pick([6, 8, 12]),
    magnification: draw.pick([0.5, 0.8, 1.5, 2]),
  }),
  tolerance: aHundredth,
  mistakes: [
    {
      id: 'on-the-eye',
      value: (given) => evaluateFormula(catchlightWidthParaxialFormula, given),
      because: 'That is its width on the eye. On the sensor it is m times that.',
    },
    {
      id: 'as-a-lens',
      value: (given) =>
        (given.magnification * given['source-size'] * given['ball-radius']) /
        (given['flash-distance'] + given['ball-radius']),
      because:
        'That takes the radius for the focal length. A round mirror’s focal length is half its radius: the denominator holds twice the distance.',
    },
    {
      id: 'radius-left-out',
      value: (given) =>
        (given.magnification * given['source-size'] * given['ball-radius']) / (2 * given['flash-distance']),
      because: 'That leaves the radius out of the denominator. It is small beside 2d, but it counts here.',
    },
  ],
  hint: 'How wide is it on the eye? And on the sensor?',
  working: [
    { formula: catchlightWidthParaxialFormula, note: 'On the eye, by the short form,' },
    {
      formula: imageWidthFormula,
      note: 'and on the sensor m times that:',
      values: (known) => ({ 'subject-width': known['catchlight-width-paraxial'] }),
    },
  ],
});

interface Brought {
  readonly illuminance: number;
  readonly 'source-size': number;
  readonly 'far.flash-distance': number;
  readonly 'near.flash-distance': number;
}
/** What a disc of luminance 1 gives at a distance. */
const discGives = (given: Brought, distance: number, size = given['source-size']) =>
  evaluateFormula(illuminanceFromDiscFormula, { luminance: 1, 'source-size': size, 'flash-distance': distance });
const brought = (given: Brought) =>
  (given.illuminance * discGives(given, given['near.flash-distance'])) / discGives(given, given['far.flash-distance']);

const nearerBySo = numberFamily({
  id: 'nearer-by-so-much',
  asks: 'illuminance',
  question:
    'A round diffuser {source-size} wide gives {illuminance} at a distance of {far.flash-distance}. You move it to {near.flash-distance}, and it is as bright as before. How much light does it give there?',
  givens: (draw) => ({
    illuminance: draw.pick([200, 400, 1000]),
    'source-size': draw.pick([120, 160, 200]),
    'far.flash-distance': draw.pick([300, 400, 500]),
    'near.flash-distance': draw.pick([50, 60, 80]),
  }),
  answer: brought,
  tolerance: { relative: 0.03, because: '3 per cent is a twenty-fourth of a stop' },
  mistakes: [
    {
      id: 'square-law',
      value: (given) => given.illuminance * (given['far.flash-distance'] / given['near.flash-distance']) ** 2,
      because: 'That is the square law. So near, a wide light gives less than it says: add its width, squared.',
    },
    {
      id: 'not-squared',
      value: (given) => (given.illuminance * given['far.flash-distance']) / given['near.flash-distance'],
      because: 'That lets the light go with the distance. Distance and width count squared.',
    },
    {
      id: 'radius-for-diameter',
      value: (given) =>
        (given.illuminance * discGives(given, given['near.flash-distance'], 2 * given['source-size'])) /
        discGives(given, given['far.flash-distance'], 2 * given['source-size']),
      because:
        'That takes the width for the radius. With the whole width, four times the squared distance is added to its square.',
    },
  ],
  hint: 'By what do you divide at one distance, by what at the other? The numerator stays.',
  working: [
    {
      note: 'The light goes with one over the sum of the light’s width squared and 4d². From {far.flash-distance} to {near.flash-distance} it gets {illuminance}.',
      values: (known) => ({ illuminance: brought(known as unknown as Brought) }),
    },
  ],
});

const ballFromIt = numberFamily({
  id: 'ball-from-its-catchlight',
  asks: 'ball-radius',
  question:
    'A lamp {source-size} wide is {flash-distance} before a round beetle, straight ahead. Its reflection measures {catchlight-width-paraxial} on the beetle. Which radius does the beetle’s back have?',
  givens: (draw) => ({
    'source-size': draw.pick([20, 25, 30]),
    'flash-distance': draw.pick([120, 150, 200]),
    'catchlight-width-paraxial': draw.pick([0.8, 1, 1.2]),
  }),
  tolerance: aHundredth,
  mistakes: [
    {
      id: 'half',
      value: (given) => evaluateFormula(ballRadiusFromCatchlightFormula, given) / 2,
      because: 'That is the focal length. The radius is twice that.',
    },
    {
      id: 'twice',
      value: (given) => 2 * evaluateFormula(ballRadiusFromCatchlightFormula, given),
      because: 'That is how thick the whole ball would be. The radius is half of it.',
    },
    {
      id: 'upside-down',
      value: (given) => (2 * given['flash-distance'] * given['source-size']) / given['catchlight-width-paraxial'],
      because: 'That is upside down. The smaller the reflection, the more strongly curved is the back.',
    },
  ],
  hint: 'How does the width of a reflection follow from the radius? Solve that for the radius.',
  working: [{ formula: ballRadiusFromCatchlightFormula, note: 'The short form, solved for the radius:' }],
});

const mainAndFill = numberFamily({
  id: 'main-and-fill',
  asks: 'lighting-ratio',
  question:
    'A light from the left alone gives {main-light.illuminance} on the left side of a beetle and none on its right. A card gives {fill-light.illuminance} on both sides. What is the lighting ratio with both?',
  givens: (draw) => ({
    'main-light.illuminance': draw.pick([600, 900, 1200]),
    'fill-light.illuminance': draw.pick([150, 200, 300, 400]),
  }),
  tolerance: aHundredth,
  mistakes: [
    {
      id: 'fill-left-out',
      value: (given) => given['main-light.illuminance'] / given['fill-light.illuminance'],
      because: 'That leaves the card out on the lit side. There both add up.',
    },
    {
      id: 'in-stops',
      value: (given) => Math.log2(1 + given['main-light.illuminance'] / given['fill-light.illuminance']),
      because: 'That is the same in stops. The ratio itself was asked for.',
    },
    {
      id: 'upside-down',
      value: (given) =>
        given['fill-light.illuminance'] / (given['main-light.illuminance'] + given['fill-light.illuminance']),
      because: 'That is shadow over light. The lit side comes first.',
    },
  ],
  hint: 'How much light is there on the left, all together? How much on the right?',
  working: [
    {
      formula: lightingRatioFormula,
      note: 'On the left both lights, on the right the card alone:',
      values: (known) => ({
        'lit-side.illuminance': known['main-light.illuminance'] + known['fill-light.illuminance'],
        'shadow-side.illuminance': known['fill-light.illuminance'],
      }),
    },
  ],
});

/** Widths of four lights, mm. */
const wide = { head: 60, paper: 100, window: 1000, box: 600 } as const;
type Name = keyof typeof wide;
type Distances = Readonly<Record<`${Name}.flash-distance`, number>>;
const looks = (given: Distances, name: Name) =>
  sourceAngle({ sourceSize: wide[name], flashDistance: given[`${name}.flash-distance`] });
const softest = (given: Distances): Name =>
  (Object.keys(wide) as Name[]).reduce((best, name) => (looks(given, name) > looks(given, best) ? name : best));

const whichIsSoftest = choiceFamily({
  id: 'which-is-softest',
  question:
    'A flash head 60 mm wide is {head.flash-distance} from the subject, a paper 100 mm wide {paper.flash-distance}, a window 1 m wide {window.flash-distance}, a costly soft box 600 mm wide {box.flash-distance}. Which alone throws the softest shadow?',
  givens: (draw) => {
    const near = draw.pick(['head', 'paper'] as const);
    return {
      'head.flash-distance': near === 'head' ? draw.pick([25, 30, 35]) : draw.pick([150, 200, 300]),
      'paper.flash-distance': near === 'paper' ? draw.pick([60, 70, 80]) : draw.pick([150, 200, 250]),
      'window.flash-distance': draw.pick([2500, 3000, 3500]),
      'box.flash-distance': draw.pick([1500, 1800, 2000]),
    };
  },
  options: { head: 'The flash head', paper: 'The paper', window: 'The window', box: 'The soft box' },
  answer: softest,
  mistakes: [
    {
      id: 'the-largest',
      value: () => 'window',
      because:
        'The window is the largest, and the farthest away. Light from afar is even, not soft: from the subject the window looks narrower than something small that is near.',
    },
    {
      id: 'the-dearest',
      value: () => 'box',
      because: 'A soft box is made for portraits, a metre away. From so far it looks narrow here.',
    },
    {
      id: 'by-its-kind',
      value: (given) => (softest(given) === 'head' ? 'paper' : 'head'),
      because: 'Work out how wide each looks from the subject: paper or bare makes no difference to the shadow.',
    },
  ],
  hint: 'How many of its own widths is each of them away?',
  working: [
    {
      note: 'What counts is how wide it looks. Each distance over its width: the smallest number is the softest light.',
    },
  ],
});

export const families = [howWide, howNear, softEdge, onTheSensor, nearerBySo, ballFromIt, mainAndFill, whichIsSoftest];
