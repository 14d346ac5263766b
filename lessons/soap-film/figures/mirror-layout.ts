import { filmPlaceSeen } from '#core/light/film-seen.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { fittingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';
import { around } from '#site/figures/sheet/boxes.ts';
import { placeLabels, type Wanted } from '#site/figures/sheet/labels.ts';
import { drawnLens, frame } from './gear.ts';
import type { Rect } from './two-ways-layout.ts';

/** What is needed of camera, film and light; lengths in mm. */
export interface Mirrored {
  readonly incidenceAngle: number;
  readonly entrancePupilDistance: number;
  readonly entrancePupil: number;
  readonly flashDistance: number;
  readonly sourceSize: number;
  readonly neededSourceSize: number;
  readonly fieldWidth: number;
  readonly focalLength: number;
  readonly magnification: number;
  /** Infinite where there is no far end. */
  readonly depthOfField: number;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Where the camera's axis comes through the light, mm from its middle, and how much wider a round hole in it looks sideways; undefined where it does not. */
export function holeIn({ incidenceAngle, flashDistance, sourceSize }: Mirrored) {
  const back = Math.cos(2 * incidenceAngle);
  if (back <= 0) return undefined;
  const aside = flashDistance * Math.tan(2 * incidenceAngle);
  const reach = drawnLens.rim / 2 / back;
  return aside - reach < sourceSize / 2 ? { aside, stretched: 1 / back } : undefined;
}

/** Camera, film and light from above, in mm about the middle of the film: x away from the camera, y to the side where the light is. */
function seenFromAbove(set: Mirrored) {
  const { incidenceAngle: angle, entrancePupilDistance: ahead, flashDistance } = set;
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  const onFilm = (along: number): Point => ({ x: along * sine, y: along * cosine });
  /** In the light's plane, *across* from its middle. */
  const atLight = (across: number, back = 0): Point => ({
    x: -(flashDistance + back) * Math.cos(2 * angle) + across * Math.sin(2 * angle),
    y: (flashDistance + back) * Math.sin(2 * angle) + across * Math.cos(2 * angle),
  });
  const reaches = 4 * set.fieldWidth;
  const side = (across: number) => {
    const seen = filmPlaceSeen(set, across);
    return onFilm(Math.max(-reaches, Math.min(reaches, seen?.along ?? reaches)));
  };
  const lensFront = -(set.focalLength * (1 + 1 / set.magnification) - drawnLens.frontPrincipalDepth);
  return { onFilm, atLight, side, lensFront, pupilX: -ahead };
}

/** From above on the left, or above where the sheet is upright; the picture beside it, or below. */
export function mirrorLayout(set: Mirrored, words: MirrorWords, box: SheetBox, held?: DrawingScale) {
  const { width, height, text, small } = box;
  /** Title block and rule. */
  const foot = 2.1 * text + 2.2 * small;
  const ruled = 12 + 1.4 * small;
  const isWide = width > 1.25 * height;
  const plan: Rect = isWide
    ? { x: 2, y: 2, width: 0.56 * width, height: height - 2 - ruled }
    : { x: 2, y: 2, width: width - 4, height: 0.5 * (height - foot) };
  const view: Rect = isWide
    ? { x: 0.59 * width, y: 1.6 * text, width: 0.41 * width - 8, height: height - foot - 4.4 * text }
    : {
        x: 8,
        y: plan.height + 14 + 1.4 * text,
        width: width - 16,
        height: height - foot - plan.height - 14 - 2.9 * text,
      };
  const above = seenFromAbove(set);
  const half = frame.width / 2;
  const light = [above.atLight(-set.sourceSize / 2), above.atLight(set.sourceSize / 2)] as const;
  const fills = [above.atLight(-set.neededSourceSize / 2), above.atLight(set.neededSourceSize / 2)] as const;
  const sides = [above.side(-set.fieldWidth / 2), above.side(set.fieldWidth / 2)] as const;
  const film = [above.onFilm(-half), above.onFilm(half)] as const;
  const camera = [
    { x: above.pupilX - 12, y: -drawnLens.rim / 2 },
    { x: above.pupilX, y: drawnLens.rim / 2 },
  ];
  const all = [...light, ...film, ...camera, { x: 12, y: 0 }];
  const ends = (of: (point: Point) => number) => [Math.min(...all.map(of)), Math.max(...all.map(of))] as const;
  const [[west, east], [south, north]] = [ends(({ x }) => x), ends(({ y }) => y)];
  const [across, along] = [Math.max(1, east - west), Math.max(1, north - south)];
  const room = { width: plan.width - 28, height: plan.height - 1.6 * text };
  const scale = held ?? fittingScale(box, Math.min(room.width / across, room.height / along));
  const pixels = scale.pixelsPerMillimetre;
  const zero = {
    x: plan.x + 14 + (room.width - across * pixels) / 2 - west * pixels,
    y: plan.y + 0.8 * text + (room.height - along * pixels) / 2 + north * pixels,
  };
  const on = ({ x, y }: Point): Point => ({ x: zero.x + x * pixels, y: zero.y - y * pixels });
  const line = (...points: readonly Point[]) =>
    points
      .map(on)
      .map(({ x, y }, index) => `${index ? 'L' : 'M'}${x.toFixed(1)} ${y.toFixed(1)}`)
      .join('');
  const slab = Math.min(set.depthOfField, 20 * set.fieldWidth);
  const slabHalf = Math.min(set.fieldWidth, 1000);
  const rim = drawnLens.rim / 2;
  const front = Math.min(above.lensFront, -2);
  const lens = [
    { x: above.pupilX - 40, y: rim },
    { x: front, y: rim },
    { x: front, y: -rim },
    { x: above.pupilX - 40, y: -rim },
  ];
  const lightMiddle = on(above.atLight(0));
  const filmEnd = on(film[1]);
  const lightEnd = on(light[0].y > light[1].y ? light[0] : light[1]);
  const halfway = on(above.atLight(0, -0.45 * set.flashDistance));
  const near = ({ x, y }: Point, by: number): Wanted['spots'] => [
    { x: x + by, y: y + 0.35 * text, anchor: 'start' },
    { x: x - by, y: y + 0.35 * text, anchor: 'end' },
    { x, y: y - by, anchor: 'middle' },
    { x, y: y + by + text, anchor: 'middle' },
    { x: plan.x + plan.width - 4, y: y - by, anchor: 'end' },
    { x: plan.x + 4, y: y + by + text, anchor: 'start' },
    { x: plan.x + 4, y: y - by, anchor: 'start' },
  ];
  const wanted: Wanted[] = [
    { key: 'light', texts: [words.light], size: text, spots: near(lightMiddle, 30), quantity: 'source-size' },
    {
      key: 'distance',
      texts: [words.distance],
      size: text,
      spots: near(halfway, 12).slice(0, 4),
      quantity: 'flash-distance',
    },
    { key: 'angle', texts: [words.angle], size: text, spots: near(filmEnd, 26), quantity: 'incidence-angle' },
    {
      key: 'lens',
      texts: ['lens'],
      size: small,
      spots: [
        { ...on({ x: front, y: -rim }), anchor: 'end' as const },
        { ...on({ x: front, y: -rim }), anchor: 'start' as const },
      ].map((spot) => ({ ...spot, y: spot.y + 1.2 * small })),
    },
  ];
  const labels = placeLabels(
    wanted,
    [around(lightMiddle.x, lightMiddle.y, 14), around(filmEnd.x, filmEnd.y, 14), around(lightEnd.x, lightEnd.y, 14)],
    { left: plan.x, top: plan.y, right: plan.x + plan.width, bottom: plan.y + plan.height },
  );
  return {
    isWide,
    plan,
    scale,
    labels,
    zeroX: zero.x,
    axis: line({ x: above.pupilX, y: 0 }, { x: 0, y: 0 }, above.atLight(0)),
    mirrored: `${line(sides[0], fills[0], fills[1], sides[1])}z`,
    coming: `${line({ x: above.pupilX, y: set.entrancePupil / 2 }, sides[1])}${line({ x: above.pupilX, y: -set.entrancePupil / 2 }, sides[0])}`,
    slab: `${line({ x: -slab / 2, y: slabHalf }, { x: slab / 2, y: slabHalf }, { x: slab / 2, y: -slabHalf }, { x: -slab / 2, y: -slabHalf })}z`,
    film: line(...film),
    light: lightWithHole(set)
      .map(([from, to]) => line(above.atLight(from), above.atLight(to)))
      .join(''),
    lens: line(...lens),
    lightMiddle,
    lightEnd,
    filmEnd,
    filmMiddle: on({ x: 0, y: 0 }),
    /** Towards the light from the film, and along the light from its middle to the end with the grip, in the sheet's pixels. */
    towards: unit(on({ x: 0, y: 0 }), lightMiddle),
    endwards: unit(lightMiddle, lightEnd),
    view: viewLayout(set, view),
  };
}

/** The parts of the light to both sides of its hole, mm from its middle. */
function lightWithHole(set: Mirrored): readonly (readonly [number, number])[] {
  const half = set.sourceSize / 2;
  const hole = holeIn(set);
  if (!hole) return [[-half, half]];
  const reach = (drawnLens.rim / 2) * hole.stretched;
  const parts = [
    [-half, Math.min(half, -hole.aside - reach)],
    [-hole.aside + reach, half],
  ] as const;
  return parts.filter(([from, to]) => to > from);
}

export interface MirrorWords {
  readonly light: string;
  readonly distance: string;
  readonly angle: string;
}

function unit(from: Point, to: Point): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

/** Width over height of the sensors of the crate, about. */
const shape = 1.5;

/** What the camera sees: where on the sheet its picture is, the light's reflection in it, the part that is sharp. */
function viewLayout(set: Mirrored, room: Rect) {
  const width = Math.max(10, Math.min(room.width, shape * room.height));
  const frameOf: Rect = {
    x: room.x + (room.width - width) / 2,
    y: room.y + (room.height - width / shape) / 2,
    width,
    height: width / shape,
  };
  const pixels = width / set.fieldWidth;
  const middle = { x: frameOf.x + width / 2, y: frameOf.y + frameOf.height / 2 };
  const shrunk = set.entrancePupilDistance / (set.entrancePupilDistance + set.flashDistance);
  const hole = holeIn(set);
  const soft = (set.entrancePupil * set.flashDistance * shrunk) / set.entrancePupilDistance;
  const tangent = Math.tan(Math.min(set.incidenceAngle, 1.57));
  const sharp = set.depthOfField / 2 / Math.max(tangent, 1e-9);
  return {
    frame: frameOf,
    pixels,
    middle,
    /** The light's reflection, pixels: how far it reaches, and over what its rim is soft. */
    radius: (set.sourceSize / 2) * shrunk * pixels,
    soft: soft * pixels,
    hole: hole && {
      // The light is on the side to which the film is turned, and the picture is seen from the camera: that side is the left.
      x: middle.x + hole.aside * shrunk * pixels,
      rx: (drawnLens.rim / 2) * hole.stretched * shrunk * pixels,
      ry: (drawnLens.rim / 2) * shrunk * pixels,
    },
    /** Half the width of what is sharp, pixels; undefined where all of it is. */
    sharp: sharp < set.fieldWidth / 2 ? sharp * pixels : undefined,
  };
}
