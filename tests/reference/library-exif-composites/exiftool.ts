import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** What a camera writes into a picture. */
export interface Shot {
  /** mm */
  readonly focalLength: number;
  readonly fNumber: number;
  /** m */
  readonly subjectDistance: number;
  /** Of a lens on 36 × 24 mm with the same field, whole mm as the tag wants it. */
  readonly equivalentFocalLength: number;
  /** s */
  readonly exposureTime: number;
  readonly iso: number;
}

/** What ExifTool makes of it, in its own units and by its own conventions. */
export interface Composites {
  readonly scaleFactor: number;
  readonly circleOfConfusion: number;
  readonly hyperfocal: number;
  readonly near: number;
  /** Infinity where ExifTool writes 0. */
  readonly far: number;
  readonly fieldAngle: number;
  readonly lightValue: number;
}

/** True where a perl is found to run ExifTool with. */
export const perlIsThere = spawnSync('perl', ['-v']).status === 0;

const program = createRequire(import.meta.url)('exiftool-vendored.pl') as string;

function exiftool(args: readonly string[]): string {
  const { status, stdout, stderr } = spawnSync('perl', [program, '-@', '-'], {
    input: args.join('\n'),
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`ExifTool failed: ${stderr}`);
  return stdout;
}

export const exiftoolVersion = () => exiftool(['-ver']).trim();

/** Writes each shot's tags into a metadata file of its own and has ExifTool compute from them. */
export function compositesOf(shots: readonly Shot[]): readonly Composites[] {
  const folder = mkdtempSync(join(tmpdir(), 'exif-'));
  try {
    const files = shots.map((_, index) => join(folder, `${String(index).padStart(3, '0')}.exif`));
    exiftool(shots.flatMap((shot, index) => [...tagsOf(shot), '-o', files[index] as string, '-execute']));
    return (JSON.parse(exiftool(['-j', '-n', '-Composite:all', ...files])) as Record<string, unknown>[]).map(
      readComposites,
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function tagsOf(shot: Shot): readonly string[] {
  return [
    `-FocalLength=${shot.focalLength}`,
    `-FNumber=${shot.fNumber}`,
    `-SubjectDistance=${shot.subjectDistance}`,
    `-FocalLengthIn35mmFormat=${shot.equivalentFocalLength}`,
    `-ExposureTime=${shot.exposureTime}`,
    `-ISO=${shot.iso}`,
  ];
}

function readComposites(tags: Readonly<Record<string, unknown>>): Composites {
  const [near, far] = String(tags['DOF']).split(' ').map(Number) as [number, number];
  return {
    scaleFactor: Number(tags['ScaleFactor35efl']),
    circleOfConfusion: Number(tags['CircleOfConfusion']),
    hyperfocal: Number(tags['HyperfocalDistance']),
    near,
    far: far === 0 ? Infinity : far,
    fieldAngle: Number(tags['FOV']),
    lightValue: Number(tags['LightValue']),
  };
}
