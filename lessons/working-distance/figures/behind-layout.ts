import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { fittingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';
import { titleHeight } from '#site/figures/sheet/title-block.ts';
import { around, type Box } from '#site/figures/sheet/boxes.ts';
import { placeLabels, type PlacedLabel, type Spot, type Wanted } from '#site/figures/sheet/labels.ts';

/** One lens, as the drawing from above needs it: lengths in mm. */
export interface Seen {
  readonly key: string;
  /** The lens, and the strip of background that it shows, the fullest first. */
  readonly words: readonly string[];
  readonly isHeld: boolean;
  readonly entrancePupil: number;
  readonly entrancePupilDistance: number;
  readonly backgroundWidth: number;
}

export interface BehindPlan {
  readonly seen: readonly Seen[];
  readonly fieldWidth: number;
  readonly fieldInWords: string;
  readonly backgroundDistance: number;
  readonly backgroundInWords: string;
  /** From post to post, and the share of it that a post takes. */
  readonly spacing: number;
}

/** Scale and place of the subject that stay while a hand drags. */
export interface HeldBehind {
  readonly scale: DrawingScale;
  readonly subjectX: number;
}

export interface BehindLayout extends HeldBehind {
  readonly axisY: number;
  readonly postsX: number;
  readonly top: number;
  readonly bottom: number;
  readonly fieldHalf: number;
  /** Squares: their upper left corners, and their side. */
  readonly posts: readonly { readonly x: number; readonly y: number }[];
  readonly postSide: number;
  readonly views: readonly {
    readonly key: string;
    readonly isHeld: boolean;
    readonly x: number;
    /** Half of the pupil's opening. */
    readonly half: number;
    readonly rays: string;
    /** The strip of background, beside the posts. */
    readonly strip: string;
  }[];
  readonly labels: readonly PlacedLabel[];
  readonly ruleY: number;
  readonly titleY: number;
  readonly handle: { readonly x: number; readonly y: number };
}

export const postShare = 0.34;
/** A post is seen where it is at least so wide, pixels. */
const smallestPost = 1.5;

/** From above, subject and posts in place, the pupils of all lenses on one axis: each looks past the same two ends of the field. */
export function behindLayout(plan: BehindPlan, box: SheetBox, held?: HeldBehind): BehindLayout {
  const { seen, fieldWidth, backgroundDistance, spacing } = plan;
  const { text, small, width } = box;
  const [left, right] = [3.4 * small + 10, width - 3 * text];
  const foot = 1.1 * small + 14 + titleHeight * small + 6;
  const [top, bottom] = [0.4 * text, box.height - foot];
  const axisY = (top + bottom) / 2;
  const farthest = Math.max(...seen.map(({ entrancePupilDistance }) => entrancePupilDistance));
  const widest = Math.max(fieldWidth, ...seen.map(({ backgroundWidth }) => backgroundWidth));
  const room = bottom - top - 3.2 * text;
  const fits = Math.min((right - left) / (backgroundDistance + farthest), room / widest);
  const scale = held?.scale ?? fittingScale(box, fits);
  const pixels = scale.pixelsPerMillimetre;
  const spare = Math.max(0, right - left - (backgroundDistance + farthest) * pixels) / 2;
  const subjectX = held?.subjectX ?? left + spare + backgroundDistance * pixels;
  const postsX = subjectX - backgroundDistance * pixels;
  const postSide = postShare * spacing * pixels;
  const y = (across: number) => axisY - across * pixels;
  const clampedY = (across: number) => Math.min(bottom, Math.max(top, y(across)));
  const views = seen.map(({ key, isHeld, entrancePupil, entrancePupilDistance, backgroundWidth }, index) => {
    const x = subjectX + entrancePupilDistance * pixels;
    const ends = [1, -1].map((side) => y((side * backgroundWidth) / 2).toFixed(1));
    const stripX = postsX - postSide - 8 - 7 * index;
    return {
      key,
      isHeld,
      x,
      half: (entrancePupil / 2) * pixels,
      rays: `M${postsX.toFixed(1)} ${ends[0]}L${x.toFixed(1)} ${axisY}L${postsX.toFixed(1)} ${ends[1]}`,
      strip: `M${(stripX + 4).toFixed(1)} ${ends[0]}h-4V${ends[1]}h4`,
    };
  });
  const count = Math.ceil(widest / 2 / spacing) + 1;
  const posts =
    postSide < smallestPost
      ? []
      : Array.from({ length: 2 * count }, (_, index) => (index - count + 0.5) * spacing)
          .map((across) => ({ x: postsX - postSide, y: y(across) - postSide / 2 }))
          .filter((post) => post.y > top && post.y + postSide < bottom);
  const fieldHalf = Math.min((fieldWidth / 2) * pixels, axisY - top);
  const handle = { x: Math.max(14, postsX), y: axisY };
  const taken = [
    around(handle.x, handle.y, 15),
    ...views.map(({ x, half }): Box => around(x, axisY, Math.max(6, half))),
  ];
  const crossed = seen.flatMap(({ entrancePupilDistance, backgroundWidth }): Box[] => {
    const x = subjectX + entrancePupilDistance * pixels;
    return Array.from({ length: 40 }, (_, step) => {
      const share = (step + 0.5) / 40;
      const half = share * (backgroundWidth / 2) * pixels;
      const at = x + share * (postsX - x);
      return [around(at, axisY - half, 3), around(at, axisY + half, 3)];
    }).flat();
  });
  const sheet = { left: 4, right: width - 4, top, bottom: bottom + 2 };
  const wanted: Wanted[] = [
    ...[...seen]
      .sort((one, other) => Number(other.isHeld) - Number(one.isHeld))
      .map(({ key, words, isHeld, entrancePupilDistance, entrancePupil }): Wanted => {
        const x = Math.min(width - 8, subjectX + entrancePupilDistance * pixels);
        const reach = (entrancePupil / 2) * pixels + 8;
        const rowsAway = [0, 1, 2, 3, 4].map((row) => reach + (0.4 + 1.3 * row) * text);
        const spots = rowsAway.flatMap((away): Spot[] =>
          [axisY - away, axisY + away + 0.7 * text].flatMap((at): Spot[] => [
            { x, y: at, anchor: 'middle' },
            { x: x + 0.5 * text, y: at, anchor: 'end' },
            { x: x - 0.5 * text, y: at, anchor: 'start' },
          ]),
        );
        return {
          key,
          texts: words,
          size: isHeld ? text : small,
          spots,
          ...(isHeld && { quantity: 'background-width' }),
        };
      }),
    {
      key: 'background',
      texts: [plan.backgroundInWords],
      size: text,
      quantity: 'background-distance',
      spots: [1.2, -0.6, 2.5, -1.9].flatMap((lines): Spot[] => [
        { x: (postsX + subjectX) / 2, y: axisY + lines * text, anchor: 'middle' },
        { x: Math.max(8, postsX + 18), y: axisY + lines * text, anchor: 'start' },
      ]),
    },
    {
      key: 'field',
      texts: [plan.fieldInWords],
      size: text,
      quantity: 'field-width',
      spots: [axisY - fieldHalf - 0.5 * text, axisY + fieldHalf + 1.1 * text].flatMap((at): Spot[] => [
        { x: subjectX + 6, y: at, anchor: 'start' },
        { x: subjectX, y: at, anchor: 'middle' },
        { x: subjectX - 6, y: at, anchor: 'end' },
      ]),
    },
  ];
  return {
    scale,
    subjectX,
    axisY,
    postsX,
    top: clampedY(widest / 2),
    bottom: clampedY(-widest / 2),
    fieldHalf,
    posts,
    postSide,
    views,
    labels: placeLabels(wanted, taken, sheet, crossed),
    ruleY: box.height - 1,
    titleY: box.height - 1.1 * small - 14,
    handle,
  };
}
