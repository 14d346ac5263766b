import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { wedgeFilmThickness } from './wedge-film.ts';

const film = { thicknessAtTop: 0, thicknessAtBottom: 0.001, down: 0.5 };

describe('wedgeFilmThickness', () => {
  it('is half of the bottom’s halfway down a film that is nothing at its top', () => {
    expect(wedgeFilmThickness(film)).toBe(0.0005);
  });

  it('is what was given at either end', () => {
    const wedge = { ...film, thicknessAtTop: 0.00001 };
    expect([0, 1].map((down) => wedgeFilmThickness({ ...wedge, down }))).toEqual([0.00001, 0.001]);
  });

  it.each([{ down: -0.1 }, { down: 1.1 }, { thicknessAtTop: -1 }, { thicknessAtBottom: NaN }])(
    'refuses %o',
    (wrong) => {
      expect(() => wedgeFilmThickness({ ...film, ...wrong })).toThrow(OutOfRange);
    },
  );
});
