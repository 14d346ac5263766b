import {
  converter,
  differenceEuclidean,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  type Color,
  type Lrgb,
  type Rgb,
} from 'culori';

/** How a colour looks to one kind of eye. */
export type Eye = (colour: string | Color) => Color;

const linearLight = converter('lrgb');
const encoded = converter('rgb');

/** Distance of two colours in OKLab; about 0.02 is just noticeable side by side. */
export const distance = differenceEuclidean('oklab');

/** culori types its filters loosely; they map colours to colours of the same mode. */
type Filter = (colour: Color) => Color;
const filters: Readonly<Record<'protan' | 'deutan' | 'tritan', Filter>> = {
  protan: filterDeficiencyProt(1) as Filter,
  deutan: filterDeficiencyDeuter(1) as Filter,
  tritan: filterDeficiencyTrit(1) as Filter,
};

const unit = (value: number) => Math.min(1, Math.max(0, value));
const clipped = <C extends Rgb | Lrgb>(colour: C): C => ({
  ...colour,
  r: unit(colour.r),
  g: unit(colour.g),
  b: unit(colour.b),
});

const seeing = (look: (filter: Filter) => Eye): Readonly<Record<keyof typeof filters, Eye>> => ({
  protan: look(filters.protan),
  deutan: look(filters.deutan),
  tritan: look(filters.tritan),
});

/**
 * Dichromats after Machado, Oliveira & Fernandes, IEEE Trans. Vis. Comput. Graph. 15, 1291 (2009), severity 1.
 * The matrices act on linear light; culori applies them to whatever numbers it is handed, so it is handed those.
 */
export const dichromats = seeing((filter) => (colour) => {
  const { r, g, b } = linearLight(colour) as Lrgb;
  return clipped({ ...(filter({ mode: 'rgb', r, g, b }) as Rgb), mode: 'lrgb' });
});

/** The same matrices on encoded values: how many programs apply them; kept as a second, harsher opinion. */
export const dichromatsEncoded = seeing((filter) => (colour) => clipped(filter(encoded(colour) as Rgb) as Rgb));

/** Three kinds of cones. */
export const trichromat: Eye = (colour) => linearLight(colour) as Lrgb;

/** Least OKLab distance among *colours* as *eye* sees them. */
export function leastDistance(colours: readonly (string | Color)[], eye: Eye): number {
  const seen = colours.map(eye);
  return Math.min(...seen.flatMap((one, index) => seen.slice(0, index).map((other) => distance(one, other))));
}
