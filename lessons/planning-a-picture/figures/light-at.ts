/** What shines on the subject: how far from it and how wide, mm. */
export interface Light {
  readonly flashDistance: number;
  readonly sourceSize: number;
}

/** Between the axis and the light, seen from the subject. */
export const lean = Math.PI / 3;
/** Of the way to the light, what goes along the axis and what goes up. */
export const [along, up] = [Math.cos(lean), Math.sin(lean)];

/** How high above the axis the light reaches, mm. */
export const heightOf = ({ flashDistance, sourceSize }: Light): number => flashDistance * up + (sourceSize * along) / 2;

/** How high above the axis it ends below, mm; below 0 where it is across that. */
export const lowestOf = ({ flashDistance, sourceSize }: Light): number => flashDistance * up - (sourceSize * along) / 2;
