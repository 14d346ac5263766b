import type { Surface } from '../scene.ts';
import { bandLimit, painted, ramp, stroke, within } from './canvas.ts';
import { distanceToText } from './digits.ts';
import { lit } from './shade.ts';
import { type SceneOptions, subjectFrom } from './subject.ts';
import { grain } from './value-noise.ts';

const depth = 1.2;
const [width, height] = [28, 22];
/** Perforation: holes so far apart and so large, mm. */
const [spacing, hole] = [1.4, 0.46];

/** The height of the paper, which curls up at its left and right, mm. */
export function heightOfPaper(x: number): number {
  return 0.1 + (1 / 14 ** 2) * Math.min(14, Math.abs(x)) ** 2;
}

/** Distance to the outline with its half holes, mm, above zero outside. */
function outline(x: number, y: number): number {
  const [across, down] = [Math.abs(x) - width / 2, Math.abs(y) - height / 2];
  const edge = Math.max(across, down);
  const along = across > down ? y : x;
  const offHole = hole - Math.hypot(along - spacing * Math.round(along / spacing), edge);
  return Math.max(edge, offHole);
}

/** How dark the picture is that the engraver cut, 0 to 1: a lighthouse on a hill by the sea, the sun behind. */
function tone(x: number, y: number): number {
  const hill = 4.5 - 3.2 * Math.exp(-(((x + 3.5) / 4.5) ** 2)) + 0.3 * Math.sin(1.3 * x);
  const isTower = Math.abs(x + 3.6) < 0.75 + 0.05 * (y + 4) && y > -5.2 && y < 2.4;
  if (isTower) return Math.floor((y + 6) / 1.6) % 2 === 0 ? 0.85 : 0.12;
  if (Math.abs(x + 3.6) < 1.2 && y > -6.4 && y < -5.2) return 0.95;
  const sun = Math.hypot(x - 5, y + 2.2);
  if (y > hill) return 0.62 + 0.25 * Math.sin(2.1 * x + y);
  if (y > 3.2) return 0.42 + 0.18 * Math.sin(3 * y);
  return 0.34 * ramp(1.8, 7, sun) + 0.1 * ramp(0, -7, y);
}

/** Ink of an engraving: lines that swell where the picture is dark. */
function engraved(x: number, y: number, pitch: number): number {
  const [w, h] = [width / 2 - 2.3, height / 2 - 2.3];
  if (Math.abs(x) > w || Math.abs(y) > h) {
    const frame = Math.max(Math.abs(x) - w, Math.abs(y) - h);
    return Math.max(stroke(Math.abs(frame - 0.25), 0.07, pitch), stroke(Math.abs(frame - 0.6), 0.04, pitch));
  }
  const size = 0.42;
  const value = size * distanceToText('25', (x - 7.2) / size, (y - 4.4) / size);
  if (value < 0.5) return stroke(value, 0.16, pitch);
  const dark = Math.min(0.95, Math.max(0, tone(x, y)));
  const period = 0.24;
  const wave = y + 0.12 * Math.sin(0.9 * x) + 0.05 * Math.sin(2.3 * x + 1);
  const off = Math.abs(wave / period - Math.round(wave / period)) * period;
  const [half, grid] = [(dark * period) / 2, Math.max(pitch, 0.012)];
  const line = stroke(off, half, grid) + stroke(period - off, half, grid);
  const fine = bandLimit(period, pitch);
  return fine * line + (1 - fine) * dark;
}

function paper(options: SceneOptions): Surface {
  const { pitch, seed } = options;
  const fibres = grain(0.6, pitch, seed);
  const sheet = painted(options, (x, y, sample) => {
    sample.coverage = within(outline(x, y), pitch);
    sample.height = heightOfPaper(x);
    if (sample.coverage === 0) return;
    const fibre = 0.84 + 0.05 * fibres(x, y);
    const ink = 0.92 * engraved(x, y, pitch);
    sample.red = fibre * (1 - ink) + 0.02 * ink;
    sample.green = fibre * 0.98 * (1 - ink) + 0.13 * ink;
    sample.blue = fibre * 0.9 * (1 - ink) + 0.12 * ink;
  });
  return lit(sheet, options, { ambient: 0.5 });
}

function table(options: SceneOptions): Surface {
  const { pitch, seed } = options;
  const years = grain(1.5, pitch, seed + 2);
  return painted(options, (x, y, sample) => {
    const wood = 0.8 + 0.5 * years(0.15 * x, 2 * y);
    const shadow = 1 - 0.6 * ramp(1.2, -0.2, outline(x - 0.5, y - 0.5));
    sample.red = 0.13 * wood * shadow;
    sample.green = 0.075 * wood * shadow;
    sample.blue = 0.045 * wood * shadow;
  });
}

/** An engraved stamp, printed in dark green lines of a quarter of a millimetre, curling up a little at both sides. */
export const stamp = subjectFrom({
  slug: 'stamp',
  name: 'Engraved stamp',
  width: width + 2,
  height: height + 2,
  depth,
  says: 'An engraved stamp with a lighthouse, drawn in swelling lines a quarter of a millimetre apart, its sides curling up.',
  surfaces: (options) => [paper(options), table(options)],
});
