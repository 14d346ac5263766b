import { requirePositive, OutOfRange } from '#core/quantity/errors.ts';
import type { Surface } from '../scene.ts';
import { painted, stroke, within } from './canvas.ts';
import { distanceToText } from './digits.ts';
import { subjectFrom, type SceneOptions, type Subject } from './subject.ts';
import { grain } from './value-noise.ts';

/** A steel ruler and how it lies. */
export interface RulerPlan {
  /** From mark to mark, mm. */
  readonly spacing: number;
  /** *τ*, rad: how much its right-hand end leans back from the picture's plane; from −60° to 60°. */
  readonly tilt: number;
  /** How far it is turned in the picture's plane, rad, clockwise. */
  readonly turn?: number;
  /** Half of what is drawn of it, mm along itself. */
  readonly reach: number;
  /** How dark marks are: 1 black, 0 none. */
  readonly ink?: number;
}

const steepest = Math.PI / 3;

/**
 * A flat ruler of known spacing, for measurements whose truth is known: a mark every so often, every fifth longer, every tenth longer still with
 * its number. Its zero is in the middle; its marks stand on the upper side of the line through the middle.
 *
 * @throws OutOfRange for a ruler that leans farther than 60°, or has no spacing
 */
export function rulerLying({ spacing, tilt, turn = 0, reach, ink = 0.9 }: RulerPlan): Subject {
  requirePositive('extension', spacing);
  if (!(Math.abs(tilt) <= steepest)) throw new OutOfRange('subject-tilt', tilt, 'from −60° to 60°');
  const [cosine, sine] = [Math.cos(tilt), Math.sin(tilt)];
  const depth = 2 * reach * Math.abs(sine);
  const plate = (options: SceneOptions): Surface => {
    const { pitch, seed } = options;
    const brushed = grain(0.4 * spacing, pitch, seed);
    const [along, aside] = [Math.cos(turn), Math.sin(turn)];
    const size = 0.28 * spacing;
    const half = 0.09 * spacing;
    // A million samples: what a place is too far from is not looked for.
    const lineAt = (t: number, v: number): number => {
      const nearest = Math.round(t / spacing);
      const line = stroke(t - nearest * spacing, half, Math.max(pitch / cosine, 0.002 * spacing));
      if (line === 0) return 0;
      const long = nearest % 10 === 0 ? 9 : nearest % 5 === 0 ? 7 : 5;
      return line * within(Math.abs(v + (long / 2 - 2.5) * spacing) - (long / 2) * spacing, pitch);
    };
    const figureAt = (t: number, v: number): number => {
      const row = v / size + 38;
      if (row < -1 || row > 7) return 0;
      const tenth = 10 * Math.round(t / spacing / 10);
      const text = distanceToText(String(Math.abs(tenth)), (t - tenth * spacing) / size + 2, row);
      return stroke(size * text, half, pitch);
    };
    return painted(options, (x, y, sample) => {
      // Seen from far away the ruler is shorter by the cosine.
      const t = (x * along + y * aside) / cosine;
      const v = y * along - x * aside;
      // Beyond its edges lies the table.
      const onRuler = within(Math.abs(v + 4.5 * spacing) - 8 * spacing, pitch);
      let light = 0.22 * (1 - onRuler);
      if (onRuler > 0) {
        const dark = ink * Math.max(lineAt(t, v), figureAt(t, v));
        const bare = 0.66 + 0.1 * brushed(t / 6, v) - 0.05 * (x / Math.max(reach, 1));
        light += Math.max(0.02, bare) * (1 - dark) * onRuler;
      }
      sample.red = light;
      sample.green = light;
      sample.blue = light;
      sample.height = Math.min(depth, Math.max(0, depth / 2 - t * sine));
    });
  };
  return subjectFrom({
    slug: 'ruler',
    name: 'Ruler',
    width: 2 * reach,
    height: 2 * reach,
    depth,
    says: 'A ruler with even marks.',
    surfaces: (options) => [plate(options)],
  });
}
