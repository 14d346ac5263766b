import { describe, expect, it } from 'vitest';
import prescriptions from '#tests/reference/lens-prescriptions/prescriptions.json' with { type: 'json' };
import { lensInUse } from '#core/rig/lens-in-use.ts';
import { lenses, type LensSlug } from './crate.ts';
import { glassLenses, type GlassSlug } from './glass.ts';
import { crateLens, marks } from './lens-marks.ts';

const slugs = Object.keys(lenses) as LensSlug[];
const withGlass = Object.keys(glassLenses) as GlassSlug[];

describe('a lens of the crate', () => {
  it.each(slugs)('%s is the same at its closest focus in marks and in benches', (slug) => {
    const bench = lenses[slug];
    const { closest } = marks[slug];
    expect(bench['focus-magnification']).toBe(closest['focus-magnification']);
    const used = lensInUse(crateLens(slug), closest['focus-magnification'], bench['f-number']);
    expect(used.focalLength).toBeCloseTo(bench['focal-length'], 1);
    expect(used.frontPrincipalDepth).toBeCloseTo(bench['front-principal-depth'], 1);
    expect(used.principalSeparation).toBeCloseTo(bench['principal-separation'], 1);
    expect(used.pupilMagnification).toBeCloseTo(bench['pupil-magnification'], 2);
  });

  it.each(slugs)('%s is marked with the closest distance that it has, rounded', (slug) => {
    const { closest } = marks[slug];
    const m = closest['focus-magnification'];
    const used = lensInUse(crateLens(slug), m, 8);
    const distance = used.focalLength * (2 + m + 1 / m) + used.principalSeparation;
    // Marks are whole millimetres at most, and to a per cent.
    expect(Math.abs(distance - closest['focus-distance'])).toBeLessThan(0.01 * distance);
  });

  it.each(withGlass)('%s is traced to what its marks say, at infinity and at its closest focus', (slug) => {
    const m = marks[slug].closest['focus-magnification'];
    for (const setting of [0, m / 3, m / 2, m]) {
      const [outline, glass] = [lensInUse(crateLens(slug), setting, 8), lensInUse(glassLenses[slug], setting, 8)];
      expect(outline.focalLength).toBeCloseTo(glass.focalLength, 1);
      expect(outline.principalSeparation).toBeCloseTo(glass.principalSeparation, 1);
      expect(outline.frontPrincipalDepth).toBeCloseTo(glass.frontPrincipalDepth, 1);
      expect(outline.pupilMagnification).toBeCloseTo(glass.pupilMagnification, 2);
      expect(outline.entrancePupil).toBeCloseTo(glass.entrancePupil, 1);
    }
  });

  it.each([
    ['lens-28', 'retrofocus-2', 13.9634],
    ['lens-60', 'macro-60-us-5751485', 1],
    ['lens-100', 'four-elements-100', 1],
  ] as const)('%s has the glass of the published lens %s', (slug, name, by) => {
    const published = prescriptions[name].surfaces;
    const ours = glassLenses[slug].prescription!.surfaces.slice(-published.length);
    published.forEach(({ radius, thickness, index }, place) => {
      if (typeof radius === 'number') expect(ours[place]!.radius / by / radius).toBeCloseTo(1, 8);
      else expect(ours[place]!.radius).toBe(Infinity);
      expect(ours[place]!.thickness).toBeCloseTo(thickness * by, 7);
      expect(ours[place]!.index).toBeCloseTo(index, 8);
    });
  });
});
