import * as v from 'valibot';
import type { RulerLine } from '#core/ruler/photograph.ts';
import { samples } from './samples.ts';

const number = v.pipe(v.number(), v.finite());
const between = (least: number, most: number) => v.pipe(v.number(), v.minValue(least), v.maxValue(most));
const place = v.strictObject({ x: between(0, 1e6), y: between(0, 1e6) });
const error = v.pipe(v.number(), v.minValue(0), v.maxValue(1e9));

const marks = v.strictObject({
  cycles: between(1, 1e5),
  drift: between(-1.5, 1.5),
  phase: number,
  length: between(2, 1e6),
  offAxis: between(-1e6, 1e6),
  lean: v.strictObject({ value: between(-1.5, 1.5), standardError: error }),
  variances: v.strictObject({ cycles: error, both: number, drift: error }),
  contrasts: v.pipe(
    v.array(v.strictObject({ mark: number, contrast: between(0, 1e3), density: between(0, 10) })),
    v.maxLength(1000),
    v.readonly(),
  ),
});

/** What is typed of a photograph; lengths in mm, ranges as the page accepts them. */
export const ranges = {
  sensorWidth: [1, 200],
  spacing: [0.001, 100],
  distance: [0.01, 2000],
  focalLength: [4, 800],
  fNumber: [0.95, 64],
  pupilMagnification: [0.2, 5],
  extension: [0, 400],
  workingDistance: [0.5, 3000],
} as const;

const typed = (name: keyof typeof ranges) => between(ranges[name][0], ranges[name][1]);

const photograph = v.strictObject({
  id: v.pipe(v.number(), v.integer(), v.minValue(1)),
  name: v.pipe(v.string(), v.minLength(1), v.maxLength(80)),
  columns: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(1e6)),
  rows: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(1e6)),
  line: v.strictObject({ from: place, to: place }),
  reach: between(0, 1000),
  by: v.picklist(['marks', 'places']),
  marks: v.optional(marks),
  sample: v.optional(
    v.pipe(
      v.string(),
      v.check((slug) => Object.hasOwn(samples, slug)),
    ),
  ),
  sensorWidth: v.optional(typed('sensorWidth')),
  spacing: v.optional(typed('spacing')),
  distance: v.optional(typed('distance')),
  focalLength: v.optional(typed('focalLength')),
  fNumber: v.optional(typed('fNumber')),
  pupilMagnification: v.optional(typed('pupilMagnification')),
  extension: typed('extension'),
  setting: v.pipe(v.string(), v.maxLength(40)),
  workingDistance: v.optional(typed('workingDistance')),
});

/** A photograph as it is kept: all that was measured and typed, nothing of its pixels. */
export type KeptPhotograph = Readonly<v.InferOutput<typeof photograph>> & { readonly line: RulerLine };

/** More than that no list shows. */
export const mostPhotographs = 60;

const list = v.pipe(v.array(photograph), v.maxLength(mostPhotographs));

/** Whether something stored is a list of photographs, each with an id of its own. */
export const arePhotographs = (value: unknown): value is readonly KeptPhotograph[] => {
  const { success, output } = v.safeParse(list, value, { abortEarly: true });
  return success && new Set(output.map(({ id }) => id)).size === output.length;
};
