import { describe, expect, it } from 'vitest';
import { readChain } from '#site/chain/chain-text.ts';
import { builtChain } from './answers.ts';
import { usualConditions } from './conditions.ts';
import { wordsOfStep } from './step-words.ts';

const said = (text: string) => {
  const built = builtChain(readChain(text).chain, usualConditions);
  if (built.kind !== 'built') throw new Error(built.why);
  return wordsOfStep(built.answers).replaceAll('\u202f', ' ');
};

describe('what the step of a stack goes by', () => {
  it('is said where diffraction leaves more depth than geometry', () => {
    // λ/NA² = 0.00055 mm / 0.28², rounded.
    const objective =
      'my-objective:objective-magnification=10:numerical-aperture=0.28:working-distance=34:tube-focal-length=200';
    expect(
      said(`my-camera:sensor-width=17.3:sensor-height=13:register-distance=44,lens-200:far:f4,${objective}`),
    ).toMatch(/^Step and frames go by the depth of field, [\d.]+ µm, .* over more, 7\.0\d µm: /);
  });

  it('goes without saying elsewhere', () => {
    expect(said('body-36,ring-24,lens-50')).toBe('');
    expect(said('body-36,lens-50:far')).toBe('');
  });
});
