import { subjects } from '#core/picture/subjects/subjects.ts';
import { renderJob } from '#site/figures/picture/render-job.ts';
import { columns, rows } from '#site/figures/picture/framing.ts';
import { sketch, type PictureJob } from '#site/figures/picture/job.ts';
import { percentile } from './percentile.ts';

/** How long the sketch of a subject takes while a slider moves, on one core. */
export interface SketchSpeed {
  readonly subject: string;
  /** Milliseconds, of the slowest but one in twenty, when the magnification moves: the subject is then drawn anew */
  readonly drawnAnew: number;
  /** When something else moves and the subject stays */
  readonly drawnBefore: number;
}

const movements = 40;

/** Milliseconds of a sketch of what *jobAt* asks for at each movement, the code being warm as it is once a picture stands there. */
function sketches(jobAt: (movement: number) => PictureJob): number {
  const times = Array.from({ length: movements }, (_, movement) => {
    const start = performance.now();
    const steps = renderJob(jobAt(movement), sketch);
    while (!steps.next().done);
    return performance.now() - start;
  });
  return percentile(times.slice(movements / 4), 0.95);
}

/** Measures the sketch of every subject, as the pages order it: in colour, the subject as wide as the picture. */
export function sketchSpeed(): readonly SketchSpeed[] {
  return subjects.map(({ slug, name, width, depth }) => {
    const jobAt = (magnification: number, focusHeight: number): PictureJob => ({
      subject: slug,
      seed: 1,
      view: {
        magnification,
        effectiveFNumber: 16,
        pupilMagnification: 1,
        entrancePupilDistance: 100,
        focusHeight,
        pitch: width / columns,
        columns,
        rows,
        colour: true,
      },
    });
    return {
      subject: name,
      drawnAnew: sketches((movement) => jobAt(1 + 0.01 * movement, depth / 2)),
      drawnBefore: sketches((movement) => jobAt(1, (depth * movement) / movements)),
    };
  });
}
