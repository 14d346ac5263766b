import type { Lettered, Stroke } from './shapes.ts';
import type { SheetPlace } from './sheet-place.ts';
import type { AboutSubject } from './shown.ts';
import type { SideViewChain } from './side-view.ts';

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Whether the subject is where it is drawn, in front of the lens. */
const isToScale = ({ positions }: SideViewChain, place: SheetPlace) =>
  positions.solved.sharpPlane === 'in front' && place.breakX === null;

/** Left free at the edges of the sheet, pixels. */
const edge = 2;

/** Half the angles that the sheet has room for on the side of the lens and on the other; undefined where the circle is too wide for the sheet. */
function anglesOf(radius: number, { subjectX, axisY, bottom, width }: SheetPlace) {
  const room = bottom - axisY;
  if (radius <= 0 || subjectX + radius > width - edge) return undefined;
  const upright = radius <= room ? Math.PI : Math.asin(room / radius);
  if (subjectX - radius >= edge) return radius <= room ? { near: Math.PI, far: 0 } : { near: upright, far: upright };
  return { near: Math.min(upright, Math.acos(Math.max(-1, (edge - subjectX) / radius))), far: 0 };
}

/** The circle, as much of it as the sheet has room for: whole, its two sides, or the side towards the lens. */
function circleAround(chain: SideViewChain, place: SheetPlace) {
  const none = { strokes: [] as Stroke[], lettered: [] as Lettered[] };
  if (!chain.around || !isToScale(chain, place)) return none;
  const { name, radius, words = [] } = chain.around;
  const r = radius * place.pixelsPerMillimetre;
  const angles = anglesOf(r, place);
  if (!angles) return none;
  const [x, y] = [place.subjectX, place.axisY];
  const at = (angle: number) => `${(x + r * Math.cos(angle)).toFixed(1)} ${(y + r * Math.sin(angle)).toFixed(1)}`;
  // So many chords that none is seen.
  const arc = (from: number, to: number) => {
    const chords = Math.max(2, Math.ceil((to - from) / 0.05));
    const points = Array.from({ length: chords + 1 }, (_, index) => at(from + ((to - from) * index) / chords));
    return `M${points.join('L')}`;
  };
  const { near, far } = angles;
  const path = arc(-near, near) + (far > 0 ? arc(Math.PI - far, Math.PI + far) : '');
  const half = Math.min(0.75 * (place.bottom - place.axisY), r);
  return {
    strokes: [{ key: 'around', path, className: 'around', quantity: name, of: 'around' } as const],
    lettered:
      words.length === 0 ? [] : [{ key: 'around', letters: words, x: x + r, half, isLeft: false, quantity: name }],
  };
}

/** Where a hand may take hold of the circle, the best place first: on it, or where others stand there, beside it; none where it is not drawn. */
function spotsAround(chain: SideViewChain, place: SheetPlace, reach: number): Spot[] {
  if (!chain.around || !isToScale(chain, place)) return [];
  const r = chain.around.radius * place.pixelsPerMillimetre;
  const angles = anglesOf(r, place);
  if (!angles) return [];
  const on = [0, 0.3, -0.3, 0.6, -0.6, 0.9, -0.9]
    .filter((angle) => Math.abs(angle) <= angles.near)
    .map((angle) => ({ x: place.subjectX + r * Math.cos(angle), y: place.axisY + r * Math.sin(angle) }));
  const beside = [1, 2, 3, 4, 5, 6].flatMap((step) =>
    [1, -1].flatMap((side) => [
      { x: place.subjectX + r, y: place.axisY + side * step * reach },
      { x: place.subjectX + r + step * reach, y: place.axisY },
    ]),
  );
  return [...on, ...beside].filter(({ y }) => y > place.top && y < place.bottom);
}

/** From the middle of the subject to the rim: what of the sky the lens hides from it. */
function hiddenSky(chain: SideViewChain, place: SheetPlace): Stroke[] {
  const foremost = chain.positions.parts.at(-1)!;
  const rimX = place.x(foremost.foremost);
  const length = rimX - place.subjectX;
  if (!chain.hidesSky || !isToScale(chain, place) || length <= 0) return [];
  const radius = foremost.radius * place.pixelsPerMillimetre;
  const share = Math.min(1, (place.bottom - place.axisY) / radius);
  const end = (sign: 1 | -1) =>
    `M${place.subjectX.toFixed(1)} ${place.axisY.toFixed(1)}l${(share * length).toFixed(1)} ${(sign * share * radius).toFixed(1)}`;
  return [{ key: 'hidden sky', path: end(-1) + end(1), className: 'hidden-sky', quantity: 'lens-shadow' }];
}

/** All of it, for the figure that needs it. */
export const aboutSubject: AboutSubject = { circleAround, spotsAround, hiddenSky };
