import { describe, expect, it } from 'vitest';
import { withoutAnswers } from './blanks.ts';

const given = { 'f-number': 'f/8', 'focal-length': '50\u202fmm', 'sensor-width': '36\u202fmm', magnification: '1×' };

describe('a drawing without answers', () => {
  it.each([
    ['image 15\u202fmm', 'image-width', 'image …\u202fmm'],
    ['works at f/16', 'effective-f-number', 'works at f/…'],
    ['2 stops lost', 'light-loss', '… stops lost'],
    ['48\u202fmm', 'field-height', '…\u202fmm'],
    ['best f/14: 36.5 %', 'best-f-number', 'best f/…: … %'],
    ['1.9 stops too dark', undefined, '… stops too dark'],
  ])('leaves a blank where a number was found: %s', (text, quantity, left) => {
    expect(withoutAnswers(text, quantity, given)).toBe(left);
  });

  it('leaves one even where the number found is one that was chosen as well', () => {
    expect(withoutAnswers('works at f/8', 'effective-f-number', given)).toBe('works at f/…');
  });

  it.each([
    ['far away f/8, as marked', 'f-number'],
    ['f 50\u202fmm', 'focal-length'],
    ['36 × 24', 'sensor-width'],
    ['The cone of light of a 50\u202fmm lens', undefined],
    ['0 mm', 'magnification'],
    ['−2.5', undefined],
    ['200 mm', undefined],
    ['40 %', undefined],
    ['scale 1:10, across 50:1', undefined],
    ['On the sensor, image 1:2', undefined],
    ['working distance', 'working-distance'],
  ])('keeps what was chosen, the marks of axes and how it is drawn: %s', (text, quantity) => {
    expect(withoutAnswers(text, quantity, given)).toBe(text);
  });
});
