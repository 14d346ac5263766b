import { subjectDepthOfTilt } from '#core/depth/subject-depth-of-tilt.formula.ts';
import { diffuserDistance } from '#core/light/diffuser-distance.formula.ts';
import { penumbra } from '#core/light/penumbra.formula.ts';
import { sourceAngle } from '#core/light/source-angle.formula.ts';
import { hiddenBand } from '#core/stack/hidden-band.formula.ts';

type Tilted = Parameters<typeof subjectDepthOfTilt>[0];
type Band = Parameters<typeof hiddenBand>[0];
type Shadow = Parameters<typeof penumbra>[0];
type Light = Parameters<typeof sourceAngle>[0];

export function ours(given: Tilted | Band | Shadow | Light) {
  if ('subjectTilt' in given) return { subjectDepth: subjectDepthOfTilt(given) };
  if ('entrancePupil' in given) return { hiddenBand: hiddenBand(given) };
  if ('edgeHeight' in given) return { penumbra: penumbra(given) };
  const angle = sourceAngle(given);
  return { sourceAngle: angle, flashDistance: diffuserDistance({ ...given, sourceAngle: angle }) };
}
