import { lenses } from '#site/state/crate.ts';
import { lampWidths } from '#site/state/crate-light.ts';

/** What shines on the film, by how wide it is, mm. */
export const sources = {
  head: { label: 'a bare flash head, 60 mm', 'source-size': lampWidths.head },
  paper: { label: 'diffusing paper, 100 mm', 'source-size': lampWidths.paper },
  bowl: { label: 'a bowl, 160 mm', 'source-size': lampWidths.bowl },
  card: { label: 'a white card, 300 mm', 'source-size': lampWidths.card },
} as const;

/** One wavelength each from the middle of what people call by that name (common practice). */
export const colours = {
  blue: { label: 'blue, 450 nm', wavelength: 0.00045 },
  green: { label: 'green, 550 nm', wavelength: 0.00055 },
  red: { label: 'red, 650 nm', wavelength: 0.00065 },
} as const;

/** The film in its wire frame, upright, mm. */
export const frame = { width: 60, height: 40 } as const;

/** Thinnest and thickest film of the lesson, mm: two layers of soap with hardly any water between, and so thick that it shows white. */
export const thinnest = 0.000005;
export const thickest = 0.003;

const macro = lenses['lens-90'];
/** The crate's 90 mm macro lens where a drawing has to put a lens: how far its foremost rim is before H, and how wide, mm. */
export const drawnLens = { frontPrincipalDepth: macro['front-principal-depth'], rim: macro['rim-diameter'] } as const;
