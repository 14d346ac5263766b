import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { filmReflectanceOfTwoBeams } from './film-reflectance-of-two-beams.formula.ts';
import { filmReflectance } from './film-reflectance.formula.ts';
import { daylight, type Illuminant } from './illuminants.ts';
import { refractionAngle } from './refraction-angle.formula.ts';
import { encodedSrgb, isShowable, linearSrgb, showable, type Rgb } from './srgb.ts';
import { surfaceReflectanceP } from './surface-reflectance-p.formula.ts';
import { surfaceReflectanceS } from './surface-reflectance-s.formula.ts';
import { tristimulus, type Tristimulus } from './tristimulus.ts';

/** A film in air and the direction it is seen in. */
export type Film = Named<'film-thickness' | 'refractive-index' | 'incidence-angle'>;

/** How a film is lit and computed. */
export interface FilmView {
  /** All beams, as it is, unless said otherwise. */
  readonly beams?: 'all' | 'two';
  /** Daylight unless said otherwise. */
  readonly illuminant?: Illuminant;
  /** What share of the light sent back shows as the screen's full white, above 0; the most that the film can send back unless said otherwise. */
  readonly whiteAt?: number;
}

/** The colour of a film. */
export interface FilmColour {
  /** Relative to a perfect white in the same light. */
  readonly tristimulus: Tristimulus;
  /** Linear sRGB at the exposure asked for, before anything is done to fit the screen. */
  readonly linear: Rgb;
  /** What a screen is given, each 0 to 1; paler at the same luminance where the screen cannot show the colour. */
  readonly screen: Rgb;
  /** Whether the screen shows the colour as it is. */
  readonly isExact: boolean;
}

/**
 * The share of unpolarised light of one wavelength that a film in air sends back: the mean of s and p.
 *
 * @param film *d_f*, mm, 0 or above; *n_r*, 1 or above; *θ*, outside, rad, 0 to π/2
 * @param wavelength *λ*, in air, mm, above 0
 * @param beams all of them, or one from each surface
 * @returns 0 to 1
 * @throws OutOfRange for anything outside those ranges; with two beams also where one surface sends back more than 1/4
 *
 * Assumes one refractive index for all wavelengths: water's falls from 1.344 at 400 nm to 1.331 at 700 nm.
 * Source: filmReflectance of each polarisation. See [README](README.md#both-polarisations).
 */
export function soapFilmReflectance(film: Film, wavelength: number, beams: 'all' | 'two' = 'all'): number {
  return reflectanceOf(film, beams)(wavelength);
}

function reflectanceOf(film: Film, beams: 'all' | 'two'): (wavelength: number) => number {
  const surfaces = [surfaceReflectanceS(film), surfaceReflectanceP(film)];
  const inside = { ...film, refractionAngle: Math.min(refractionAngle(film), almostFlat) };
  const one = beams === 'all' ? filmReflectance : filmReflectanceOfTwoBeams;
  return (wavelength) =>
    surfaces.reduce((total, reflectance) => total + mirrors(reflectance, one, { ...inside, wavelength }) / 2, 0);
}

type OneWavelength = Film & Named<'refraction-angle' | 'wavelength'>;

/** At grazing incidence each surface mirrors all there is, and so does the film. */
function mirrors(reflectance: number, one: typeof filmReflectance, rest: OneWavelength): number {
  return reflectance < 1 ? one({ ...rest, reflectance }) : 1;
}

/** With an index of 1 light that grazes outside grazes inside too. */
const almostFlat = Math.PI / 2 - 1e-12;

/**
 * The colour in which a soap film reflects a white light.
 *
 * @param film as for {@link soapFilmReflectance}
 * @param view see {@link FilmView}
 * @returns see {@link FilmColour}
 * @throws OutOfRange as {@link soapFilmReflectance} does, for a film thicker than 0.1 mm or of an index above 10, and for a white of 0 or less;
 *   RangeError for an illuminant that is none
 *
 * Assumes what {@link soapFilmReflectance} assumes, and a film smooth and thin enough that light reaches across it in step: in daylight
 * colours pale beyond about 1.5 µm because the bands crowd, not because of this.
 * Source: derived in [README](README.md#from-spectrum-to-colour).
 */
export function soapFilmColour(film: Film, view: FilmView = {}): FilmColour {
  const { beams = 'all', illuminant = daylight, whiteAt = mostReflected(film) } = view;
  requireThin(film.filmThickness);
  requirePositive('film-reflectance', whiteAt);
  const colour = tristimulus(reflectanceOf(film, beams), illuminant, partsFor(film));
  const linear = linearSrgb(colour).map((light) => light / whiteAt) as unknown as Rgb;
  return { tristimulus: colour, linear, screen: encodedSrgb(showable(linear)), isExact: isShowable(linear) };
}

/** The most that a film sends back at an angle, where it is thick enough to send its two beams back in step. */
export function mostReflected({ refractiveIndex, incidenceAngle }: Omit<Film, 'filmThickness'>): number {
  const surfaces = [surfaceReflectanceS, surfaceReflectanceP].map((of) => of({ refractiveIndex, incidenceAngle }));
  return surfaces.reduce((total, reflectance) => total + (2 * reflectance) / (1 + reflectance) ** 2, 0);
}

/** Beyond this no eye sees colours, and the ripples of the spectrum would take ever longer to add up. */
function requireThin(filmThickness: number): void {
  if (!(filmThickness >= 0 && filmThickness <= 0.1)) {
    throw new OutOfRange('film-thickness', filmThickness, '0 to 0.1 mm, beyond which there are no colours');
  }
}

/** Eight samples at least to each ripple of the spectrum; ripples are closest at its short end, λ²/(2 n d) apart. */
function partsFor({ refractiveIndex, filmThickness }: Film): number {
  if (refractiveIndex > 10) throw new OutOfRange('refractive-index', refractiveIndex, 'at most 10: no film is denser');
  const ripple = shortest ** 2 / (2 * refractiveIndex * filmThickness);
  return Math.max(1, Math.ceil((8 * tableStep) / ripple));
}

const shortest = 0.00038;
const tableStep = 0.000005;
