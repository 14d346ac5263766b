/** A clear layer in air, and light of one wavelength that falls on it. */
export interface Layer {
  readonly refractiveIndex: number;
  readonly thickness: number;
  /** Outside, rad, below π/2. */
  readonly incidenceAngle: number;
  readonly wavelength: number;
}

/**
 * What comes back from a layer and what goes through, by the characteristic matrix of the fields at its two faces: another route than
 * adding up beams.
 *
 * M = [[cos φ, i sin φ/η], [i η sin φ, cos φ]], η = n cos θ' (s) or n/cos θ' (p)
 */
export function throughOneLayer(layer: Layer, polarisation: 's' | 'p'): { reflected: number; transmitted: number } {
  const { refractiveIndex: n, thickness, incidenceAngle, wavelength } = layer;
  const inside = Math.sqrt(1 - (Math.sin(incidenceAngle) / n) ** 2);
  const outside = Math.cos(incidenceAngle);
  const admittance = polarisation === 's' ? n * inside : n / inside;
  const air = polarisation === 's' ? outside : 1 / outside;
  const phase = (2 * Math.PI * n * thickness * inside) / wavelength;
  // E and H at the front for E = 1, H = air at the back; the imaginary parts are those of the off-diagonal terms.
  const field = { real: Math.cos(phase), imaginary: (Math.sin(phase) * air) / admittance };
  const flux = { real: air * Math.cos(phase), imaginary: admittance * Math.sin(phase) };
  const incoming = squared(air * field.real + flux.real, air * field.imaginary + flux.imaginary);
  const outgoing = squared(air * field.real - flux.real, air * field.imaginary - flux.imaginary);
  return { reflected: outgoing / incoming, transmitted: (4 * air * air) / incoming };
}

function squared(real: number, imaginary: number): number {
  return real ** 2 + imaginary ** 2;
}
