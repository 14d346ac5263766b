import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { equalEnergy } from './illuminants.ts';
import { mostReflected, soapFilmColour, soapFilmReflectance } from './soap-film-colour.ts';

const film = { filmThickness: 0.0003, refractiveIndex: 1.33, incidenceAngle: 0 };

describe('soapFilmReflectance', () => {
  it('is at most 7.7 % for soapy water seen squarely', () => {
    const brightest = soapFilmReflectance({ ...film, filmThickness: 0.0001 }, 0.000532);
    expect(brightest).toEqual(closeTo(mostReflected(film), { relative: 1e-14, because: 'a few roundings' }));
    expect(brightest).toEqual(closeTo(0.0771, { absolute: 5e-5, because: 'printed to four decimals' }));
  });

  it('is the mean of both polarisations and not that of one with the mean surface', () => {
    const slanting = { ...film, incidenceAngle: 1.2 };
    expect(soapFilmReflectance(slanting, 0.00055)).toBeGreaterThan(0);
    expect(soapFilmReflectance({ ...film, incidenceAngle: Math.PI / 2 }, 0.00055)).toEqual(
      closeTo(1, { relative: 1e-9, because: 'grazing light is mirrored' }),
    );
  });

  it('tends to nothing without a change of index, and refuses a film of air', () => {
    const almost = { ...film, refractiveIndex: 1 + 1e-9, incidenceAngle: 0.4 };
    expect(soapFilmReflectance(almost, 0.00055)).toBeLessThan(1e-17);
    expect(() => soapFilmReflectance({ ...film, refractiveIndex: 1, incidenceAngle: 0.4 }, 0.00055)).toThrow(
      /refractive-index is 1/,
    );
  });

  it('refuses two beams where they would send back more than there was', () => {
    expect(() => soapFilmReflectance({ ...film, incidenceAngle: 1.4 }, 0.00055, 'two')).toThrow(OutOfRange);
    expect(soapFilmReflectance({ ...film, incidenceAngle: 0.5 }, 0.00055, 'two')).toBeGreaterThan(0);
  });
});

describe('soapFilmColour', () => {
  it('looks aslant as a thinner film does straight on: the second yellow greener and then blue, the first yellow silver', () => {
    const at = (filmThickness: number, incidenceAngle: number) => {
      const [red, green, blue] = soapFilmColour({ ...film, filmThickness, incidenceAngle }).screen;
      return { red, green, blue };
    };
    const isYellow = ({ red, green, blue }: ReturnType<typeof at>) => Math.min(red, green) > 1.4 * blue;
    const [first, second] = [0.000155, 0.000335];
    expect(isYellow(at(first, 0)) && isYellow(at(second, 0))).toBe(true);
    const { red, green, blue } = at(first, Math.PI / 3);
    expect(Math.min(red, green, blue)).toBeGreaterThan(0.8 * Math.max(red, green, blue));
    const halfway = at(second, Math.PI / 4);
    expect(halfway.green).toBeGreaterThan(Math.max(halfway.red, halfway.blue));
    const aside = at(second, Math.PI / 3);
    expect(aside.blue).toBeGreaterThan(Math.max(aside.red, aside.green));
  });

  it('is black for a film much thinner than light’s wavelength', () => {
    const { tristimulus, screen } = soapFilmColour({ ...film, filmThickness: 0.000002 });
    expect(tristimulus[1]).toBeLessThan(1e-4);
    expect(Math.max(...screen)).toBeLessThan(0.05);
  });

  it('is nearly white at 100 nm', () => {
    const { screen } = soapFilmColour({ ...film, filmThickness: 0.0001 });
    expect(Math.min(...screen)).toBeGreaterThan(0.95);
  });

  it('goes to grey for a thick film, whose bands crowd', () => {
    const { linear } = soapFilmColour({ ...film, filmThickness: 0.02 });
    expect(Math.max(...linear) / Math.min(...linear)).toBeLessThan(1.01);
  });

  it('turns towards blue seen slantwise', () => {
    const yellow = soapFilmColour({ ...film, filmThickness: 0.00032 }).linear;
    const slanting = soapFilmColour({ ...film, filmThickness: 0.00032, incidenceAngle: 0.9 }).linear;
    expect(yellow[0]).toBeGreaterThan(yellow[2]);
    expect(slanting[2]).toBeGreaterThan(slanting[0]);
  });

  it('says whether the screen shows the colour as it is', () => {
    const tooPure = soapFilmColour({ ...film, filmThickness: 0.00048 });
    expect(tooPure.isExact).toBe(false);
    expect(Math.min(...tooPure.linear)).toBeLessThan(0);
    expect(Math.min(...tooPure.screen)).toBeGreaterThanOrEqual(0);
    expect(soapFilmColour({ ...film, filmThickness: 0.00002 }).isExact).toBe(true);
  });

  it('darkens in step when more light is to show as white, and takes another light', () => {
    const [once, twice] = [0.08, 0.16].map((whiteAt) => soapFilmColour(film, { whiteAt }).linear);
    const because = 'a few roundings';
    expect(once).toEqual(twice!.map((light) => closeTo(2 * light, { relative: 1e-14, because })));
    expect(soapFilmColour(film, { illuminant: equalEnergy }).tristimulus).not.toEqual(soapFilmColour(film).tristimulus);
    expect(soapFilmColour(film, { beams: 'two' }).tristimulus[1]).toBeGreaterThan(soapFilmColour(film).tristimulus[1]);
  });

  it.each([-0.0001, 0.2, NaN, Infinity])('refuses a film %s mm thick', (filmThickness) => {
    expect(() => soapFilmColour({ ...film, filmThickness })).toThrow(OutOfRange);
  });

  it('refuses an index that no film has, before it adds up ripples without end', () => {
    expect(() => soapFilmColour({ ...film, refractiveIndex: 1e6 })).toThrow(/refractive-index is 1000000/);
  });

  it('refuses a white of nothing', () => {
    expect(() => soapFilmColour(film, { whiteAt: 0 })).toThrow(/film-reflectance is 0/);
  });
});
