import { describe, expect, it } from 'vitest';
import { degree } from '#core/quantity/units.ts';
import { measureMarks } from '#core/ruler/measure-marks.ts';
import { offAxisOf } from '#core/ruler/ruler-scale.ts';
import { kitOf } from '#site/kit/change.ts';
import { lensOnCamera } from '#site/kit/answers.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { withExif } from '#tests/support/exif-jpeg.ts';
import { greyPng } from '#tests/support/png-head.ts';
import { fields, readTyped, typedOf } from './fields.ts';
import { isWholeJpeg, seemingKind } from './file-head.ts';
import { fitsOf, forFit } from './fit-of.ts';
import { lensForKit } from './lens-for-kit.ts';
import { arePhotographs, ranges, type KeptPhotograph } from './photograph.ts';
import { printDifference, printEstimate, printOff, printStudentised } from './print-estimate.ts';
import { rangeWords } from './range-words.ts';
import { renderSample } from './render-sample.ts';
import { resultOf } from './results.ts';
import { headOf } from './said-by-file.ts';
import { lineOf, sampleCamera, samples, series, truthOf, type Sample } from './samples.ts';

const kept: KeptPhotograph = {
  id: 1,
  name: 'desk.jpg',
  columns: 6000,
  rows: 4000,
  line: { from: { x: 1000, y: 2000 }, to: { x: 5000, y: 2000 } },
  reach: 12,
  by: 'marks',
  marks: {
    cycles: 80,
    drift: 0,
    phase: 0.2,
    length: 4000,
    offAxis: 0,
    lean: { value: 0, standardError: 0 },
    variances: { cycles: 0.0001, both: 0, drift: 1e-6 },
    contrasts: [],
  },
  sensorWidth: 36,
  spacing: 1,
  extension: 0,
  setting: '',
};

const taken = new Map<string, KeptPhotograph>();

/** A sample rendered and measured, once. */
function sampleOf(slug: string): KeptPhotograph {
  const had = taken.get(slug);
  if (had) return had;
  const sample = samples[slug] as Sample;
  const photograph = renderSample(sample);
  const line = lineOf(sample);
  const marks = measureMarks(photograph, line, 5);
  if (marks.outcome === 'no comb') throw new Error(marks.because);
  const { columns, rows, sensorWidth } = sampleCamera;
  const one: KeptPhotograph = {
    ...kept,
    ...{ columns, rows, sensorWidth },
    id: taken.size + 1,
    focalLength: 50,
    pupilMagnification: 1.1,
    extension: sample.extension,
    setting: sample.setting,
    workingDistance: truthOf(sample).workingDistance,
    marks: { ...marks, offAxis: offAxisOf(photograph, line), contrasts: [] } as never,
  };
  taken.set(slug, one);
  return one;
}

describe('samples', () => {
  it.each(['leaning', 'ring-0', 'ring-36'])('“%s” is measured as its truth is', (slug) => {
    const sample = samples[slug] as Sample;
    const result = resultOf(sampleOf(slug))!;
    const exact = { relative: 1e-3, because: 'as the page promises' };
    expect(result.magnification.value).toEqual(closeTo(truthOf(sample).magnification, exact));
    expect(result.tilt!.value / degree).toEqual(closeTo(sample.tilt, { absolute: 0.1, because: 'of 5°' }));
  });
});

describe('the lens of the samples', () => {
  const fitOf = (...slugs: readonly string[]) => fitsOf(forFit(slugs.map(sampleOf)), true).fit!;
  const pull = ({ value, standardError }: { value: number; standardError: number | null }, truth: number) =>
    Math.abs(value - truth) / standardError!;

  it('is known to the better half of a per cent by a flat, a leaning and a slanted ruler, for the slanted one is not known better', () => {
    const { lens, spoiler } = fitOf('flat', 'leaning', 'slanted');
    expect(lens.focalLength.standardError! / 50).toBeGreaterThan(0.003);
    expect(lens.focalLength.standardError! / 50).toBeLessThan(0.01);
    expect(pull(lens.focalLength, 50)).toBeLessThan(2);
    expect(pull(lens.settings[0]!.focusMagnification, 0.15)).toBeLessThan(2);
    expect(pull(lens.frontPrincipalDepth!, 22)).toBeLessThan(2);
    expect(spoiler).toBeUndefined();
  });

  it('is spoiled by none of them beside two on other rings, and stays the lens', () => {
    const { lens, rows, spoiler } = fitOf('flat', 'leaning', 'slanted', 'ring-0', 'ring-36');
    expect(spoiler).toBeUndefined();
    for (const { studentised } of rows) expect(Math.abs(studentised!)).toBeLessThan(3);
    expect(pull(lens.focalLength, 50)).toBeLessThan(2);
    expect(lens.focalLength.standardError! / 50).toBeLessThan(0.001);
  });

  it('has no photograph far out in the clean series, and one where a ring is written down wrongly', () => {
    const { lens, rows, spoiler } = fitOf(...series);
    expect(spoiler).toBeUndefined();
    for (const { studentised } of rows) expect(Math.abs(studentised!)).toBeLessThan(3);
    expect(pull(lens.focalLength, 50)).toBeLessThan(2);
    expect(lens.focalLength.standardError! / 50).toBeGreaterThan(1e-4);
    const misread = series.map((slug) => ({ ...sampleOf(slug), ...(slug === 'ring-36' && { extension: 33 }) }));
    const { fit, words } = fitsOf(forFit(misread), true);
    expect(fit!.spoiler?.id).toBe(sampleOf('ring-36').id);
    expect(words.join(' ')).toMatch(/scatter .* times as far/);
  });

  it('says of as many photographs as it takes that nothing checks them', () => {
    const { fit, words } = fitsOf(forFit(['ring-0', 'ring-24'].map(sampleOf)), true);
    expect(fit!.lens.focalLength.standardError).toBeGreaterThan(0);
    expect(words.join(' ')).toMatch(/one more would check them/);
  });
});

describe('resultOf', () => {
  it('is 0.3 for marks 50 pixels of 6 µm apart, and nothing while the sensor is not known', () => {
    expect(resultOf(kept)!.magnification.value).toEqual(closeTo(0.3, { relative: 1e-12, because: 'rounding' }));
    expect(resultOf({ ...kept, sensorWidth: undefined } as never)).toBeUndefined();
    expect(resultOf({ ...kept, marks: undefined } as never)).toBeUndefined();
    expect(resultOf({ ...kept, by: 'places' })).toBeUndefined();
    expect(resultOf({ ...kept, by: 'places', distance: 80 })!.magnification.value).toEqual(
      closeTo(0.3, { relative: 1e-12, because: 'rounding' }),
    );
  });

  it('says the range that an assumed pupil leaves, where the ruler leans', () => {
    const leaning = { ...kept, focalLength: 50, marks: { ...kept.marks!, drift: -0.05 } };
    const { overAssumed, magnification } = resultOf(leaning)!;
    expect(overAssumed!.least).toBeLessThan(magnification.value);
    expect(overAssumed!.most).toBeGreaterThan(magnification.value);
    expect(resultOf({ ...leaning, pupilMagnification: 1.1 })).not.toHaveProperty('overAssumed');
    expect(resultOf({ ...kept, focalLength: 50 })).not.toHaveProperty('overAssumed');
  });
});

describe('what is kept', () => {
  it('is read back as it was written, and nothing else is', () => {
    expect(arePhotographs(JSON.parse(JSON.stringify([kept])))).toBe(true);
    for (const bad of [
      {},
      [{ ...kept, id: 0 }],
      [kept, kept],
      [{ ...kept, more: 1 }],
      [{ ...kept, sensorWidth: -1 }],
      [{ ...kept, sample: 'constructor' }],
      [{ ...kept, marks: { ...kept.marks, cycles: null } }],
      Array.from({ length: 61 }, (_, at) => ({ ...kept, id: at + 1 })),
    ])
      expect(arePhotographs(bad)).toBe(false);
  });

  it('accepts in its fields what it keeps, and says what it takes', () => {
    for (const field of fields) {
      const [least, most] = ranges[field.key];
      for (const value of [least, most]) {
        const read = readTyped(field, typedOf(field, value));
        expect(read, field.key).toMatchObject({ kind: 'value' });
      }
      expect(readTyped(field, 'banana')).toMatchObject({
        kind: 'refused',
        message: expect.stringContaining(field.label),
      });
      expect(readTyped(field, ' ')).toEqual({ kind: 'blank' });
    }
  });
});

describe('what a file says', () => {
  const jpeg = Uint8Array.from([0xff, 0xd8, 0xff, 0xc0, 0, 11, 8, 0x0f, 0xa0, 0x17, 0x70, 1, 1, 0x11, 0, 0xff, 0xd9]);
  const bufferOf = (bytes: Uint8Array) => Uint8Array.from(bytes).buffer;

  it('fills focal length, f-number, pixels and the sensor’s width', () => {
    const said = {
      focalLength: [500, 10],
      fNumber: [56, 10],
      pixels: [6000, 4000],
      perCentimetre: [60_000, 36],
    } as const;
    const head = headOf(bufferOf(withExif(jpeg, said)));
    expect(head).toMatchObject({ format: 'JPEG', columns: 6000, rows: 4000 });
    expect(head.said).toEqual({ focalLength: 50, fNumber: 5.6, sensorWidth: 36, pixelsAcross: 6000 });
  });

  it('says nothing where the file does not, or says what no camera has', () => {
    expect(headOf(bufferOf(jpeg))).toEqual({ format: 'JPEG', columns: 6000, rows: 4000, said: {} });
    const said = headOf(bufferOf(withExif(jpeg, { focalLength: [0, 0], fNumber: [1, 0], perCentimetre: [0, 1] }))).said;
    expect(said).toEqual({});
  });

  it('knows a huge picture before it is decoded, and what is none at all', () => {
    expect(headOf(bufferOf(greyPng(20_000, 20_000, 1)))).toMatchObject({
      format: 'PNG',
      columns: 20_000,
      rows: 20_000,
    });
    for (const bytes of [
      new Uint8Array(0),
      new TextEncoder().encode('Dear diary'),
      Uint8Array.from({ length: 999 }, (_, at) => at),
    ])
      expect(headOf(bufferOf(bytes)).format).toBeUndefined();
    expect(seemingKind(new TextEncoder().encode('Dear diary'))).toBe('a text');
    expect(seemingKind(new TextEncoder().encode('%PDF-1.7'))).toBe('a PDF');
    expect(seemingKind(new Uint8Array(9))).toBe('no picture that this page knows');
    expect([isWholeJpeg(jpeg), isWholeJpeg(jpeg.subarray(0, 12))]).toEqual([true, false]);
  });
});

describe('numbers with errors', () => {
  it('have the figures that their errors leave', () => {
    expect(printEstimate('magnification', { value: 0.390_123, standardError: 0.000_4 })).toBe('0.3901× ± 0.1\u202f%');
    expect(printEstimate('field-width', { value: 92.3, standardError: 1e-9 })).toBe('92.3\u202fmm ± under 0.01\u202f%');
    expect(printEstimate('focal-length', { value: 49.43, standardError: null })).toBe('49.4\u202fmm');
    expect(printDifference('subject-tilt', { value: 5.012 * degree, standardError: 0.03 * degree })).toBe(
      '5.012° ± 0.03°',
    );
    expect(printDifference('subject-tilt', { value: 1e-5, standardError: 1e-9 })).toMatch(/^0° ± 0.01°$/);
    expect(printDifference('front-principal-depth', { value: -3.21, standardError: 0.4 })).toBe(
      '−3.2\u202fmm ± 0.4\u202fmm',
    );
    expect(printOff(0.389_999, 0.39)).toBe('0.00\u202f%');
    expect(printOff(0.38, 0.39)).toBe('−2.56\u202f%');
    expect(printOff(0.4, 0.39)).toBe('+2.56\u202f%');
    expect([-0.04, -1.24, 1.24].map(printStudentised)).toEqual(['0.0', '−1.2', '1.2']);
    expect(rangeWords({ least: 0.39012, most: 0.39049 })).toBe('0.3901 to 0.3905×');
  });
});

describe('the fitted lens', () => {
  const readings = [0, 12, 24, 36].map((extension, at) => {
    const magnification = (0.15 + extension / 50) * (1 + [0.001, -0.001, 0.0005, -0.0007][at]!);
    return {
      ...kept,
      id: at + 1,
      extension,
      setting: 'nearest',
      workingDistance: 50 * (1 + 1 / magnification) - 22,
      marks: { ...kept.marks!, cycles: (4000 * 0.006) / magnification },
    };
  });
  const fit = fitsOf(forFit(readings), true).fit!.lens;
  const said = { name: '  The  fifty ', maxAperture: 'f/1.8', focusDistance: '', isInside: false, nearest: 'nearest' };

  it('goes into the kit with its errors, and answers lean on them as a range', () => {
    const made = lensForKit(fit, said);
    if (made.kind === 'refused') throw new Error(made.message);
    expect(made.part).toMatchObject({ kind: 'lens', name: 'The fifty', 'max-aperture': 1.8, focusing: 'whole' });
    const { value, error } = made.part['focal-length'] as { value: number; error: number };
    expect(Math.abs(value - 50)).toBeLessThan(3 * error);
    const camera = {
      kind: 'camera',
      name: 'Body',
      'sensor-width': 36,
      'sensor-height': 24,
      'register-distance': 44,
    } as const;
    const kit = kitOf(camera as never, made.part);
    const found = lensOnCamera(kit.parts[1]!, kit.parts[0]!, 0, kit);
    if (found.kind === 'none') throw new Error(found.why);
    expect(found.lenses.measured).toEqual(['focal-length', 'front-principal-depth', 'focus-magnification']);
    expect(found.spans.magnification!.least).toBeLessThan(found.spans.magnification!.most);
  });

  it('is told by distances where there are no rings, each photograph judged by the others', () => {
    const bare = [0.05, 0.08, 0.11, 0.15].map((magnification, at) => ({
      ...kept,
      id: at + 1,
      setting: `${at}`,
      workingDistance: 50 * (1 + 1 / magnification) - 22 + [1, -1, 1, -1][at]!,
      marks: { ...kept.marks!, cycles: (4000 * 0.006) / magnification },
    }));
    const { fit: shown, words } = fitsOf(forFit(bare), true);
    expect(shown).toMatchObject({ by: 'distances' });
    expect(words.join(' ')).toMatch(/from the ruler does/);
    expect(Math.abs(shown!.lens.focalLength.value - 50)).toBeLessThan(3 * shown!.lens.focalLength.standardError!);
    expect(shown!.lens.settings[3]!.focusMagnification.value).toEqual(
      closeTo(0.15, { relative: 1e-9, because: 'no rings' }),
    );
    expect(lensForKit(shown!.lens, { ...said, nearest: '3' }).kind).toBe('lens');
    // Where glass moves inside, distances tell nothing.
    expect(fitsOf(forFit(bare), false).fit).toBeUndefined();
  });

  it('takes the place of what was assumed of a lens, and leaves the rest of it', () => {
    const had = {
      id: 'lens-3',
      kind: 'lens',
      name: 'Old',
      'focal-length': 50,
      'max-aperture': 1.4,
      focusing: 'whole',
      iris: 'lens',
      'focus-magnification': 0.14,
      thread: 49,
    };
    const made = lensForKit(fit, { ...said, name: '', maxAperture: '' }, had as never);
    if (made.kind === 'refused') throw new Error(made.message);
    expect(made.part).toMatchObject({ name: 'Old', 'max-aperture': 1.4, iris: 'lens', thread: 49 });
    expect(made.part['focus-magnification']).toMatchObject({ value: expect.closeTo(0.15, 3) });
    expect(made.part).not.toHaveProperty('id');
  });

  it('is refused in words while the kit lacks what photographs do not tell', () => {
    expect(lensForKit(fit, { ...said, maxAperture: '' })).toMatchObject({
      message: expect.stringContaining('Widest f-number'),
    });
    expect(lensForKit(fit, { ...said, nearest: undefined })).toMatchObject({
      message: expect.stringContaining('is needed'),
    });
    expect(lensForKit(fit, { ...said, isInside: true })).toMatchObject({
      message: expect.stringContaining('at infinity'),
    });
  });
});
