/** A number found from measurements, and how far it may be off. */
export interface Estimate {
  readonly value: number;
  /** One standard error; null where there are just as many measurements as unknowns and nobody said how well they were read. */
  readonly standardError: number | null;
}

/** What ruler photographs tell of a lens: its numbers, that they leave them open, or that no lens takes such photographs. */
export type LensFit = FittedLens | UntoldLens | ContradictoryLens;

export interface FittedLens {
  readonly outcome: 'fitted';
  /** *f*, mm. */
  readonly focalLength: Estimate;
  /** *m₀*, to which the lens was set; a little below 0 means infinity, within its standard error. */
  readonly focusMagnification: Estimate;
  /** *h*, mm, with w + h = s: how deep behind the front rim H lies; null where no working distance was measured. */
  readonly frontPrincipalDepth: Estimate | null;
  /** In the order of the photographs. */
  readonly residuals: readonly PhotographResidual[];
  /** Photographs beyond those that the unknowns use up. */
  readonly degreesOfFreedom: number;
  /** How well field widths agree with the fit: √χ² per degree of freedom, 1 for readings as good as said; null where none is left over or nothing was said. */
  readonly misfit: number | null;
}

/** Measured less fitted. */
export interface PhotographResidual {
  readonly magnification: number;
  /** mm. */
  readonly fieldWidth: number;
  /** mm; null where it was not measured. */
  readonly workingDistance: number | null;
}

export interface UntoldLens {
  readonly outcome: 'cannot tell';
  readonly because: keyof typeof whyUntold;
}

export interface ContradictoryLens {
  readonly outcome: 'contradictory';
  readonly because: keyof typeof whyContradictory;
}

const whyUntold = {
  'no photograph': 'There is no photograph to tell anything by.',
  'one photograph':
    'One photograph cannot tell two unknowns, focal length and focus magnification: take another with a ring more or less.',
  'one extension':
    'All photographs have the same extension: every focal length fits them, with a focus magnification to match. Change the rings, not the subject.',
  'too uncertain':
    'The readings scatter as much as the rings change them: focal length and focus magnification stay open. Rings that differ more, or fields read more carefully, would tell.',
  'no ring':
    'No photograph has a ring: what the lens does by itself is known already and says nothing of its focal length.',
};

const whyContradictory = {
  'field does not shrink':
    'With more extension the field came out no narrower. No lens does that: was the focus ring turned, or two photographs swapped?',
  'past infinity':
    'By these photographs the lens would be focused far past infinity. No lens is: was the length of a ring or a field misread?',
};

/** Sentences that say what photographs told, did not tell, or cannot have told. Numbers are left to whoever shows them. */
export function lensFitWords(
  fit: UntoldLens | ContradictoryLens | Pick<FittedLens, 'outcome' | 'focalLength' | 'frontPrincipalDepth'>,
): readonly string[] {
  if (fit.outcome === 'cannot tell') return [whyUntold[fit.because]];
  if (fit.outcome === 'contradictory') return [whyContradictory[fit.because]];
  const words = ['The photographs fix focal length and focus magnification.'];
  if (fit.focalLength.standardError === null) {
    words.push('They fix them just so: with one more photograph one could tell how well.');
  }
  if (fit.frontPrincipalDepth === null) {
    words.push('No working distance was measured, so that the place of the front principal plane stays open.');
  } else if (fit.frontPrincipalDepth.standardError === null) {
    words.push('One more working distance would tell how well the place of the front principal plane is known.');
  }
  return words;
}
