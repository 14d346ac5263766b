import { fftOf } from '#core/fourier/fft-plan.ts';
import { transform } from '#core/fourier/fft.ts';
import { scratchFor } from '#core/fourier/scratch.ts';
import { renderPicture } from '#core/picture/render.ts';
import type { Scene } from '#core/picture/scene.ts';
import { defocusAberration } from '#core/wave/defocus-aberration.formula.ts';
import { scaleAt } from '#core/picture/view.ts';
import { oursById } from '#tests/support/reference-case.ts';

function transformed({ length, bins }: { length: number; bins: number[] }) {
  const scratch = scratchFor(length, 1);
  for (let k = 0; k < length; k++) {
    scratch.re[k] = ((k * 37) % 101) / 101;
    scratch.im[k] = ((k * 53) % 97) / 97;
  }
  transform(fftOf(length), scratch, 1);
  return { re: bins.map((bin) => scratch.re[bin]!), im: bins.map((bin) => scratch.im[bin]!) };
}

const side = 181;
const [wavelength, effectiveFNumber, pitch, entrancePupilDistance] = [0.00055, 16, 0.003, 100];

/** Dots in every fifth place of every fifth row of the middle, the rest black, at the height 0. */
function dotted(samplePitch: number): Scene {
  const albedo = new Float32Array(3 * side * side);
  for (let k = 0; k < albedo.length; k++) {
    const place = k % (side * side);
    const [x, y] = [place % side, Math.floor(place / side)];
    const inMiddle = Math.abs(x - 90) <= 30 && Math.abs(y - 90) <= 30;
    if (inMiddle && x % 5 === 2 && y % 5 === 2) albedo[k] = ((place * 7919) % 101) / 101;
  }
  const surface = { albedo, height: new Float32Array(side * side), coverage: new Float32Array(side * side).fill(1) };
  return { columns: side, rows: side, pitch: samplePitch, depth: 0, surfaces: [surface] };
}

function rendered({ waves, places }: { waves: number; places: [number, number][] }) {
  // The offset δ beyond the sharp plane at which m² u δ/(N_w (u + δ)) is the blur of so many waves, at life size.
  const blur = waves / defocusAberration({ defocusBlur: 1, wavelength, effectiveFNumber });
  const offset = (blur * effectiveFNumber * entrancePupilDistance) / (entrancePupilDistance - blur * effectiveFNumber);
  const view = {
    ...{ magnification: 1, pupilMagnification: 1, focusHeight: offset, columns: side, rows: side },
    ...{ wavelength, effectiveFNumber, pitch, entrancePupilDistance },
  };
  const { light } = renderPicture(dotted(pitch / scaleAt(view, 0)), view);
  return { light: places.map(([x, y]) => light[y * side + x]!) };
}

export const ours = oursById({
  'transform-of-60': transformed,
  'transform-of-768': transformed,
  'dots-in-focus': rendered,
  'dots-half-a-wave-out': rendered,
  'dots-far-out': rendered,
});
