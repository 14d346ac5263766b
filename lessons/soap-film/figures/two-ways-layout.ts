import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { plotFrame } from '#site/figures/plot/frame.ts';

export interface TwoWays {
  /** mm. */
  readonly filmThickness: number;
  readonly wavelength: number;
  /** rad; outside and inside. */
  readonly incidenceAngle: number;
  readonly refractionAngle: number;
  /** How far the second beam lags, in waves. */
  readonly detour: number;
  /** What comes back of each wavelength, share. */
  readonly reflectanceAt: (wavelength: number) => number;
  /** The most that can come back. */
  readonly most: number;
}

/** Up to this thickness, mm, the film is drawn at one scale. */
const usual = 0.0006;

export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Four quarters: the film cut open, its colour, its two beams, and what comes back of every wavelength. */
export function twoWaysLayout(film: TwoWays, box: SheetBox, heldScale?: number) {
  const { width, height, text, small } = box;
  const gap = 0.8 * text;
  const foot = 2.4 * small;
  const middleX = Math.round(0.5 * width);
  const middleY = Math.round(0.48 * (height - foot));
  const cut: Rect = { x: 4, y: 4, width: middleX - gap - 4, height: middleY - gap };
  const patch: Rect = { x: middleX, y: 4 + 1.4 * text, width: width - middleX - 6, height: middleY - 1.4 * text - gap };
  const waves: Rect = { x: 4, y: middleY + 4, width: middleX - gap - 4, height: height - foot - middleY - 4 };
  return {
    cut: cutOpen(film, cut, text, heldScale),
    patch,
    waves: twoWaves(film, waves, small),
    spectrum: spectrum(film, { x: middleX, y: middleY, width: width - middleX, height: height - middleY }, box),
  };
}

function cutOpen(film: TwoWays, area: Rect, text: number, heldScale?: number) {
  const topY = area.y + 0.56 * area.height;
  const deepest = area.y + area.height - 0.5 * text - topY;
  const scale = heldScale ?? deepest / Math.max(film.filmThickness, usual);
  const thick = Math.min(deepest, film.filmThickness * scale);
  const step = thick * Math.tan(film.refractionAngle);
  const middle = area.x + 0.42 * area.width;
  const [inX, outX] = [middle - step, middle + step];
  const up = topY - area.y - 0.4 * text;
  const [sine, cosine] = [Math.sin(film.incidenceAngle), Math.cos(film.incidenceAngle)];
  /** As long as the room is, upwards or sideways. */
  const reach = (room: number) => Math.min(up / Math.max(cosine, 1e-6), room / Math.max(sine, 1e-6));
  const inReach = reach(inX - area.x - 12);
  const outReach = reach(area.x + area.width - 4 - outX);
  const from = { x: inX - inReach * sine, y: topY - inReach * cosine };
  const end = (x: number, length: number) => ({ x: x + length * sine, y: topY - length * cosine });
  const first = end(inX, Math.min(outReach + 2 * step * sine, reach(area.x + area.width - 4 - inX)));
  const second = end(outX, outReach);
  const bottomY = topY + thick;
  return {
    area,
    scale,
    topY,
    bottomY,
    body: `M${area.x} ${topY}H${area.x + area.width}V${bottomY}H${area.x}z`,
    coming: `M${from.x} ${from.y}L${inX} ${topY}`,
    arrow: arrow(from, { x: inX, y: topY }, 0.5),
    normal: `M${inX} ${area.y + 4}V${Math.min(area.y + area.height, bottomY + 14)}`,
    inside: `M${inX} ${topY}L${middle} ${bottomY}L${outX} ${topY}`,
    first: `M${inX} ${topY}L${first.x} ${first.y}`,
    firstArrow: arrow({ x: inX, y: topY }, first, 0.8),
    second: `M${outX} ${topY}L${second.x} ${second.y}`,
    secondArrow: arrow({ x: outX, y: topY }, second, 0.8),
    ray: from,
    /** Where the incoming ray meets the film. */
    meets: { x: inX, y: topY },
    side: { x: area.x + area.width - 16, y: bottomY },
    thickX: area.x + area.width - 46,
  };
}

/** A small open arrowhead at a part of the way. */
function arrow(from: { x: number; y: number }, to: { x: number; y: number }, part: number): string {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < 12) return '';
  const [x, y] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const tip = { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
  const wing = (side: number) => `${tip.x - 8 * x - side * 5 * y} ${tip.y - 8 * y + side * 5 * x}`;
  return `M${wing(1)}L${tip.x} ${tip.y}L${wing(-1)}`;
}

/** Two waves are shown. */
const shown = 2;

/** The beam of the front, turned over; that of the back, later by the detour; and the sum. */
function twoWaves({ detour }: TwoWays, area: Rect, small: number) {
  const half = area.height / 2;
  const swing = Math.max(4, 0.5 * (half - 1.5 * small));
  const [beamsY, sumY] = [area.y + 0.5 * half + 0.6 * small, area.y + 1.5 * half + 0.5 * small];
  const points = 96;
  const wave = (y: number, at: (turns: number) => number) =>
    Array.from({ length: points + 1 }, (_, index) => {
      const x = area.x + (area.width * index) / points;
      return `${index ? 'L' : 'M'}${x.toFixed(1)} ${(y - at((shown * index) / points)).toFixed(1)}`;
    }).join('');
  const turn = (turns: number) => Math.sin(2 * Math.PI * turns);
  return {
    area,
    axes: `M${area.x} ${beamsY}h${area.width}M${area.x} ${sumY}h${area.width}`,
    front: wave(beamsY, (turns) => -0.9 * swing * turn(turns)),
    back: wave(beamsY, (turns) => 0.9 * swing * turn(turns - detour)),
    sum: wave(sumY, (turns) => 0.45 * swing * (turn(turns - detour) - turn(turns))),
    beamsWords: { x: area.x, y: area.y + small },
    sumWords: { x: area.x, y: area.y + half + small },
  };
}

/** Shortest and longest wavelength shown, nm. */
export const shownSpectrum = [400, 700] as const;

function spectrum({ reflectanceAt, most, wavelength }: TwoWays, area: Rect, box: SheetBox) {
  const frame = plotFrame(
    {
      x: { scale: 'linear', domain: shownSpectrum, title: 'nm', format: String, ticks: [400, 500, 600, 700] },
      y: {
        scale: 'linear',
        domain: [0, ceiling(most)],
        title: 'sent back, %',
        format: (share) => String(Number((100 * share).toPrecision(3))),
      },
    },
    { ...box, width: area.width, height: area.height },
  );
  const nm = (at: number) => reflectanceAt(at * 1e-6);
  const curve = Array.from({ length: 101 }, (_, index) => shownSpectrum[0] + 3 * index)
    .map((at, index) => `${index ? 'L' : 'M'}${frame.x.at(at).toFixed(1)} ${frame.y.at(nm(at)).toFixed(1)}`)
    .join('');
  const here = wavelength * 1e6;
  const isShown = here >= shownSpectrum[0] && here <= shownSpectrum[1];
  return {
    area,
    frame,
    curve,
    below: `${curve}L${frame.right} ${frame.bottom}H${frame.left}z`,
    here: isShown ? { x: frame.x.at(here), y: frame.y.at(nm(here)) } : undefined,
  };
}

/** A round share above *most*, with room for a word. */
function ceiling(most: number): number {
  return [0.02, 0.06, 0.12, 0.2, 0.3, 0.5, 0.8].find((round) => round >= 1.2 * most) ?? 1;
}
