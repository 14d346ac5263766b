import { brightFilmThickness } from '#core/light/bright-film-thickness.formula.ts';
import { refractionAngle } from '#core/light/refraction-angle.formula.ts';
import { soapFilmColour } from '#core/light/soap-film-colour.ts';
import { oursById, type Answer } from '#tests/support/reference-case.ts';

interface Slanting {
  refractiveIndex: number;
  incidenceAngle: number[];
}
const water = 4 / 3;
const colourOf = (filmThickness: number) =>
  soapFilmColour({ filmThickness, refractiveIndex: water, incidenceAngle: 0 });
const luminance = (filmThickness: number) => colourOf(filmThickness).tristimulus[1];

/** Degrees on the circle of hues, from −45 to 315; and how far from grey, 0 to 1. */
function hueAndPurity([red, green, blue]: readonly number[] & { length: 3 }): { hue: number; purity: number } {
  const [r, g, b] = [red as number, green as number, blue as number];
  const most = Math.max(r, g, b);
  const spread = most - Math.min(r, g, b);
  const sixth = most === r ? (g - b) / spread : most === g ? 2 + (b - r) / spread : 4 + (r - g) / spread;
  return { hue: ((60 * sixth + 45 + 360) % 360) - 45, purity: spread / most };
}

const looks = (filmThickness: number) => hueAndPurity(colourOf(filmThickness).screen);
const hues = ({ thickness }: { thickness: number[] }): Answer => ({ hue: thickness.map((each) => looks(each).hue) });

/** The thickness of a ring's most luminous part, by steps of a tenth of a nanometre around where yellow is brightest. */
function mostLuminous(interferenceOrder: number): number {
  const about = brightFilmThickness({
    refractiveIndex: water,
    wavelength: 0.00056,
    refractionAngle: 0,
    interferenceOrder,
  });
  const steps = Array.from({ length: 601 }, (_, index) => about + (index - 300) * 1e-7);
  return steps.reduce((best, thickness) => (luminance(thickness) > luminance(best) ? thickness : best));
}

const brightest = luminance(mostLuminous(1));
const shares = ({ thickness }: { thickness: number[] }) => ({
  luminanceShare: thickness.map((each) => luminance(each) / brightest),
});

const whiteness = (given: { thickness: number[] }) => ({
  ...shares(given),
  purity: given.thickness.map((each) => looks(each).purity),
});

const special = {
  'opticks-2.19-refraction': (given: Slanting) => ({
    refractionAngle: given.incidenceAngle.map((incidenceAngle) =>
      refractionAngle({ ...given, incidenceAngle: Math.min(incidenceAngle, Math.PI / 2) }),
    ),
  }),
  'opticks-2.19-thickness': (given: Slanting) => ({
    thickness: given.incidenceAngle.map((angle) => {
      const incidenceAngle = Math.min(angle, Math.PI / 2);
      const inside = refractionAngle({ ...given, incidenceAngle });
      const [slanting, square] = [inside, 0].map((refractionAngle) =>
        brightFilmThickness({ ...given, wavelength: 0.00055, refractionAngle, interferenceOrder: 1 }),
      ) as [number, number];
      return (10 * slanting) / square;
    }),
  }),
  'opticks-2.2-luminous': ({ orders }: { orders: number[] }) => ({ thickness: orders.map(mostLuminous) }),
  'opticks-2.2-black': shares,
  'opticks-2.2-white': whiteness,
  'silver-film': whiteness,
};

const named = Array.from({ length: 27 }, (_, index) => `opticks-2.2-${String(index + 1).padStart(2, '0')}`);
const captioned = ['grass-green', 'bright-red', 'purple', 'crimson', 'violet'].map((name) => `soap-microscopy-${name}`);

export const ours = oursById({
  ...special,
  ...Object.fromEntries([...named, ...captioned].map((id) => [id, hues])),
});
