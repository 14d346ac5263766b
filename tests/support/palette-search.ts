/**
 * Looks for the hues of the quantities: `node tests/support/palette-search.ts [how many] [seed]` prints, for both themes, colours
 * as far apart as it can get them for the worst of four eyes, while letters in them stay legible. Simulated annealing; seconds.
 */
import { converter, displayable, formatHex, wcagContrast, type Oklch } from 'culori';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { dark, light, type Palette } from '#site/styles/palette.ts';
import { dichromats, distance, trichromat } from './eyes.ts';

const count = Number(process.argv[2] ?? 6);
const steps = 60_000;

/** Beyond the test's own limits: no letter so dark or grey that it passes for ink, no line so strong that the page shouts. */
const chroma = { least: 0.09, most: 0.17 };
const lightness = { least: 0.37, most: 0.9 };
const legible = 4.52;
/** Hues that people can name and point out to each other, the same by day and by night. */
const hueSpacing = 26;
const hueDrift = 18;

const themes = [light, dark];
const eyes = [trichromat, dichromats.protan, dichromats.deutan, dichromats.tritan];
const oklab = converter('oklab');
const seenBy = (colour: Oklch | string) => eyes.map((eye) => oklab(eye(colour)));
type Seen = ReturnType<typeof seenBy>;
/** One hue in both themes. */
type Hue = readonly { readonly colour: Oklch; readonly seen: Seen }[];

/** The same seed, the same search. */
const random = chanceFrom(Number(process.argv[3] ?? 1));

const between = ({ least, most }: { least: number; most: number }) => least + random() * (most - least);
const turn = (one: Oklch, other: Oklch) => Math.abs((((((one.h ?? 0) - (other.h ?? 0)) % 360) + 540) % 360) - 180);

function allowed(colour: Oklch, { ground, paper, lit }: Palette): boolean {
  const inRange =
    colour.c >= chroma.least && colour.c <= chroma.most && colour.l >= lightness.least && colour.l <= lightness.most;
  return (
    inRange && displayable(colour) && [ground, paper, lit].every((surface) => wcagContrast(colour, surface) >= legible)
  );
}

/** A legible colour of about hue *h*: some hues have no dark colour as strong as is asked for, so the hue may drift. */
function anyAllowed(palette: Palette, h: number): Oklch {
  for (let drift = 0; ; drift += 0.05) {
    const colour: Oklch = {
      mode: 'oklch',
      l: between(lightness),
      c: between(chroma),
      h: h + drift * (2 * random() - 1),
    };
    if (allowed(colour, palette)) return colour;
  }
}

const gap = (one: Seen, other: Seen) => Math.min(...one.map((colour, eye) => distance(colour!, other[eye]!)));
const inks = themes.map(({ ink }) => seenBy(ink));

function gaps(hues: readonly Hue[]): number[] {
  return themes.flatMap((_, theme) => {
    const seen = [inks[theme]!, ...hues.map((hue) => hue[theme]!.seen)];
    return seen.flatMap((one, index) => seen.slice(0, index).map((other) => gap(one, other)));
  });
}

/** Every pair counts, the closest most: a soft minimum leads the search where the hard one is flat. */
const softLeast = (hues: readonly Hue[]) =>
  -Math.log(gaps(hues).reduce((sum, each) => sum + Math.exp(-200 * each), 0)) / 200;

function nudged(hue: Hue, reach: number): Hue {
  const theme = Math.floor(2 * random());
  const near = () => reach * (random() + random() - 1);
  const { l, c, h = 0 } = hue[theme]!.colour;
  const colour: Oklch = { mode: 'oklch', l: l + 0.3 * near(), c: c + 0.2 * near(), h: (h + 120 * near() + 360) % 360 };
  return allowed(colour, themes[theme]!) ? hue.with(theme, { colour, seen: seenBy(colour) }) : hue;
}

function isNameable(hue: Hue, others: readonly Hue[]): boolean {
  if (turn(hue[0]!.colour, hue[1]!.colour) > hueDrift) return false;
  return others.every((other) =>
    themes.every((_, theme) => turn(hue[theme]!.colour, other[theme]!.colour) >= hueSpacing),
  );
}

const first = 360 * random();
let hues: Hue[] = Array.from({ length: count }, (_, index) =>
  themes.map((palette) => {
    const colour = anyAllowed(palette, (first + (360 * index) / count) % 360);
    return { colour, seen: seenBy(colour) };
  }),
);
let worth = softLeast(hues);
for (let step = 0; step < steps; step += 1) {
  const cold = 1 - step / steps;
  const at = Math.floor(random() * count);
  const hue = nudged(hues[at]!, 0.3 * cold + 0.02);
  if (hue === hues[at] || !isNameable(hue, hues.toSpliced(at, 1))) continue;
  const trial = hues.with(at, hue);
  const gained = softLeast(trial) - worth;
  if (gained < 0 && random() >= Math.exp(gained / (0.008 * cold ** 2 + 1e-6))) continue;
  hues = trial;
  worth += gained;
}

const inOrder = hues.toSorted((one, other) => (one[0]!.colour.h ?? 0) - (other[0]!.colour.h ?? 0));
for (const [theme, name] of ['light', 'dark'].entries())
  console.log(name, ...inOrder.map((hue) => formatHex(hue[theme]!.colour)));
console.log(`least OKLab distance ${Math.min(...gaps(hues)).toFixed(3)}`);
