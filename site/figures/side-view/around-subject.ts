import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { PlacedGrip } from './grips.ts';
import type { Lettered, Stroke } from './shapes.ts';
import type { SheetPlace } from './sheet-place.ts';
import type { SideViewChain } from './side-view.ts';

/** A circle about the middle of the subject: how near an animal lets anything come, say. */
export interface Around {
  readonly name: QuantityName;
  /** mm */
  readonly radius: number;
  /** Beside it, the fullest first; nothing where several chains have the same. */
  readonly words?: readonly string[];
}

/** Whether the subject is where it is drawn, in front of the lens. */
const isToScale = ({ positions }: SideViewChain, place: SheetPlace) =>
  positions.solved.sharpPlane === 'in front' && place.breakX === null;

/** The circle, as much of it as its band of the sheet has room for: whole, or its two sides. */
export function circleAround(chain: SideViewChain, place: SheetPlace) {
  const none = { strokes: [] as Stroke[], lettered: [] as Lettered[] };
  if (!chain.around || !isToScale(chain, place)) return none;
  const { name, radius, words } = chain.around;
  const r = radius * place.pixelsPerMillimetre;
  const room = place.bottom - place.axisY;
  const across = Math.sqrt(Math.max(0, r ** 2 - room ** 2));
  const [x, y] = [place.subjectX, place.axisY];
  const at = (value: number) => value.toFixed(1);
  const side = (sign: 1 | -1) =>
    `M${at(x + sign * across)} ${at(y - room)}A${at(r)} ${at(r)} 0 0 ${sign === 1 ? 1 : 0} ${at(x + sign * across)} ${at(y + room)}`;
  const whole = `M${at(x - r)} ${at(y)}a${at(r)} ${at(r)} 0 1 0 ${at(2 * r)} 0a${at(r)} ${at(r)} 0 1 0 ${at(-2 * r)} 0`;
  const path = r <= room ? whole : side(1) + side(-1);
  const letters = words ?? [];
  return {
    strokes: [{ key: 'around', path, className: 'around', quantity: name }],
    lettered:
      letters.length === 0
        ? []
        : [{ key: 'around', letters, x: x + r, half: Math.min(0.75 * room, r), isLeft: false, quantity: name }],
  };
}

/** Where a hand may take hold of the circle, the best place first; none where it is not drawn. */
export function spotsAround(chain: SideViewChain, place: SheetPlace): PlacedGrip[] {
  if (!chain.around || !isToScale(chain, place)) return [];
  const r = chain.around.radius * place.pixelsPerMillimetre;
  const room = place.bottom - place.axisY;
  return [0, 0.3, -0.3, 0.6, -0.6, 0.9, -0.9].flatMap((angle) => {
    const [x, y] = [place.subjectX + r * Math.cos(angle), r * Math.sin(angle)];
    return Math.abs(y) > room || x > place.width ? [] : [{ x, y: place.axisY + y }];
  });
}

/** From the middle of the subject to the rim: what of the sky the lens hides from it. */
export function hiddenSky(chain: SideViewChain, place: SheetPlace): Stroke[] {
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
