import { sourceSizeForMirror } from '#core/light/source-size-for-mirror.formula.ts';
import { subjectDepthAslant } from '#core/light/subject-depth-aslant.formula.ts';

type Mirrored = Parameters<typeof sourceSizeForMirror>[0] & Parameters<typeof subjectDepthAslant>[0];

/** What the core makes of a row, in base units: the keys of its `expected`. */
export function ours(mirrored: Mirrored) {
  return { sourceSize: sourceSizeForMirror(mirrored), subjectDepth: subjectDepthAslant(mirrored) };
}
