import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { readPrinted } from '#tests/support/printed.ts';
import { describeReference } from '#tests/support/reference.ts';
import cases from './cases.json';
import { compositesOf, exiftoolVersion, perlIsThere, type Shot } from './exiftool.ts';
import { ours } from './ours.ts';

describeReference(cases, ours);

const number = (printed: number | string) => readPrinted(printed).number;
const shotOf = ({ inputs }: (typeof cases)[number]): Shot => ({
  focalLength: number(inputs.focalLength),
  equivalentFocalLength: number(inputs.equivalentFocalLength),
  fNumber: inputs.fNumber,
  subjectDistance: number(inputs.subjectDistance),
  exposureTime: number(inputs.exposureTime),
  iso: inputs.iso,
});

describe('ExifTool as installed', () => {
  const titled = perlIsThere
    ? 'still says what was recorded'
    : 'was not asked: perl is not installed, and ExifTool needs it';

  it.skipIf(!perlIsThere)(titled, () => {
    const lastDigit = { relative: 1e-13, because: 'ExifTool prints fifteen digits' };
    const recorded = cases.map(({ expected }) =>
      Object.fromEntries(Object.entries(expected).map(([tag, printed]) => [tag, closeTo(number(printed), lastDigit)])),
    );
    expect(compositesOf(cases.map(shotOf))).toEqual(recorded);
    const version = `ExifTool ${exiftoolVersion()},`;
    for (const { source } of cases) expect(source).toContain(version);
  });
});
