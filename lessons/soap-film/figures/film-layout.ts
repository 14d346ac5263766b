import { printQuantity } from '#core/quantity/print.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { roundStep } from '#site/state/rungs.ts';
import { frame } from './gear.ts';
import type { Rect } from './two-ways-layout.ts';

export interface Drained {
  /** mm. */
  readonly top: number;
  readonly bottom: number;
  /** The picked thickness. */
  readonly filmThickness: number;
}

/** Up to here, mm, an eye calls a film black: less than a fifth of the light that comes back where it is silver. */
const black = 0.00003;

/** How often the foot’s thickness is halved in the small pictures of what comes later. */
const later = 3;

/** Where a wedge has a thickness, as a share from its top; undefined where it has it nowhere. */
export function shareDown({ top, bottom }: Pick<Drained, 'top' | 'bottom'>, thickness: number): number | undefined {
  if (bottom === top) return thickness === top ? 0.5 : undefined;
  const share = (thickness - top) / (bottom - top);
  return share >= 0 && share <= 1 ? share : undefined;
}

/** The film as large as the sheet lets it, with a scale of thicknesses down its side; what comes later beside it, or below where the sheet is upright. */
export function filmLayout(film: Drained, brights: readonly number[], box: SheetBox) {
  const { width, height, text, small } = box;
  const shape = frame.width / frame.height;
  const left = 4.4 * small + 14;
  const foot = 2.4 * small;
  const isWide = width > 1.25 * height;
  const rightRoom = isWide ? Math.max(5.2 * text, 0.2 * width) : 2.2 * text;
  const belowRoom = isWide ? 0 : 0.24 * height;
  const top = 0.6 * text;
  const wide = Math.min(width - left - rightRoom - 0.6 * text, shape * (height - top - foot - belowRoom - 0.6 * text));
  const picture: Rect = { x: left, y: top, width: wide, height: wide / shape };
  const y = (share: number) => picture.y + share * picture.height;
  const [thin, thick] = [Math.min(film.top, film.bottom), Math.max(film.top, film.bottom)];
  const step = roundStep(((thick - thin) / picture.height) * 3.2 * text);
  const ticks: { readonly y: number; readonly text: string }[] = [];
  for (
    let at = Math.ceil(thin / step - 1e-9) * step;
    step > 0 && at <= thick * (1 + 1e-9) && ticks.length < 40;
    at += step
  ) {
    const share = shareDown(film, at);
    if (share !== undefined) ticks.push({ y: y(share), text: String(Number((at * 1e6).toPrecision(4))) });
  }
  const picked = shareDown(film, film.filmThickness);
  const darkTo = film.top < film.bottom ? shareDown(film, black) : undefined;
  return {
    picture,
    ticks,
    /** Where the picked thickness is. */
    levelY: picked === undefined ? undefined : y(picked),
    levelWordsY:
      picked === undefined ? 0 : y(picked) - 1.4 * text < picture.y ? y(picked) + 1.1 * text : y(picked) - 0.4 * text,
    /** Thickness by a place down the film. */
    thicknessAt: (atY: number) =>
      film.top + (film.bottom - film.top) * Math.min(1, Math.max(0, (atY - picture.y) / picture.height)),
    bands: brights.flatMap((thickness, index) => {
      const share = shareDown(film, thickness);
      if (share === undefined) return [];
      const bandY = y(share);
      // Beside its line, or below it where the picked level runs there.
      const isCrossed = picked !== undefined && Math.abs(y(picked) - bandY) < 1.1 * text;
      const under = bandY + 1.2 * text < picture.y + picture.height ? 1.15 * small : -0.5 * small;
      return [
        { order: index + 1, y: bandY, wordsY: isCrossed ? Math.max(bandY, y(picked)) + under : bandY + 0.35 * small },
      ];
    }),
    /** Middle of the black, where there is room for the word. */
    blackY: darkTo !== undefined && darkTo * picture.height > 1.3 * text ? y(darkTo / 2) + 0.35 * text : undefined,
    later: laterFilms(film, picture, box, isWide),
  };
}

function laterFilms(film: Drained, picture: Rect, box: SheetBox, isWide: boolean) {
  const { width, height, text, small } = box;
  const shape = frame.width / frame.height;
  const from = { x: picture.x + picture.width + 1.6 * text, y: picture.y + 1.5 * small };
  const foot = 2.6 * small;
  const places = Array.from({ length: later }, (_, index): Rect => {
    if (isWide) {
      const pitch = (height - foot - from.y) / later;
      const wide = Math.max(8, Math.min(width - from.x - 6, shape * (pitch - 1.7 * small)));
      return { x: from.x, y: from.y + index * pitch, width: wide, height: wide / shape };
    }
    const pitch = (width - 12) / later;
    const y = picture.y + picture.height + 2.2 * small;
    const high = Math.max(8, Math.min((pitch - 0.8 * text) / shape, height - foot - y - 1.6 * small));
    return { x: 6 + index * pitch, y, width: high * shape, height: high };
  });
  return {
    title: { x: isWide ? from.x : 6, y: isWide ? picture.y + 0.7 * small : places[0]!.y - 0.5 * small },
    films: places.map((place, index) => {
      const bottom = Math.max(film.bottom / 2 ** (index + 1), Math.min(film.bottom, film.top));
      return { place, bottom, words: printQuantity('film-thickness', bottom) };
    }),
  };
}
