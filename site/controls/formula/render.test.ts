import { describe, expect, it } from 'vitest';
import { depthOfFieldFormula } from '#core/depth/depth-of-field.formula.ts';
import { depthOfFieldCloseUpFormula } from '#core/depth/depth-of-field-close-up.formula.ts';
import { motionBlurTogetherFormula } from '#core/exposure/motion-blur-together.formula.ts';
import { numericFormula, symbolicFormula } from './render.ts';

/** The MathML half of a rendered formula as bare text. */
function spoken(html: string): string {
  return /<math.*?<\/math>/s.exec(html)![0].replaceAll(/<[^>]*>/g, '');
}

/** Each number printed as the name of its quantity. */
function asThemselves({ gives, from }: { readonly gives: string; readonly from: readonly string[] }) {
  return Object.fromEntries([gives, ...from].map((id) => [id, `|${id}|`]));
}

describe('a formula', () => {
  it('in letters keeps them side by side, each marked with its quantity', () => {
    const html = symbolicFormula(depthOfFieldCloseUpFormula.tex);
    expect(spoken(html)).toBe('Tc=2\u2009c\u2009Nwm2');
    expect(html).toContain('data-quantity="effective-f-number"');
  });

  it('in letters calls what is summed up by its part alone where a phone holds no more', () => {
    const html = symbolicFormula(motionBlurTogetherFormula.tex);
    const ems = Number(/--ems:([\d.]+)/.exec(html)![1]);
    expect(ems).toBeLessThan(30);
    expect(spoken(html).replaceAll('\u00a0', ' ')).toBe('motion blur=turning2+sideways2+subject2');
    expect(html).toContain('data-quantity="turning.motion-blur"');
  });

  it('in numbers has a sign between those that are multiplied, and a slot for each', () => {
    const html = numericFormula(depthOfFieldCloseUpFormula, asThemselves(depthOfFieldCloseUpFormula));
    expect(spoken(html)).toBe(
      'Tc=2×|circle-of-confusion|×|effective-f-number||magnification|2=|depth-of-field-close-up|',
    );
    expect(html.match(/class="number" data-number=/g)).toHaveLength(4);
  });

  it('in numbers takes a unit to the power together with its number', () => {
    const numbers = spoken(
      numericFormula(depthOfFieldFormula, {
        'circle-of-confusion': '6 mm',
        'entrance-pupil-distance': '6 mm',
        'entrance-pupil': '6 mm',
        magnification: '0.5',
        'depth-of-field': '6 mm',
      }),
    );
    expect(numbers).toContain('0.52×(6 mm)2−(6 mm)2');
  });
});
