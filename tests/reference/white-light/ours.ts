import { photopicLight } from '#core/wave/photopic-light.ts';
import { photopicEnergyProfile, photopicProfile } from '#core/wave/photopic-spread.ts';
import { photopicTransfer } from '#core/wave/photopic-transfer.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Pattern {
  effectiveFNumber: number;
  waves: number;
  frequency: number[];
}

const transfers = ({ effectiveFNumber, waves, frequency }: Pattern) => ({
  transfer: frequency.map((spatialFrequency) =>
    photopicTransfer({ spatialFrequency, effectiveFNumber, defocusAberration: waves, sphericalAberration: 0 }),
  ),
});

const inFocus = { effectiveFNumber: 16, defocusAberration: 0, sphericalAberration: 0 };
const shareAt = (nanometres: number) =>
  photopicLight.find(({ wavelength }) => Math.round(wavelength * 1e6) === nanometres)?.share ?? 0;

export const ours = oursById({
  // Shares add up to one; the table is 0.954 at 540 nm.
  'luminous-efficiency': ({ wavelength }: { wavelength: number[] }) => ({
    efficiency: wavelength.map((nanometres) => (0.954 * shareAt(nanometres)) / shareAt(540)),
  }),
  'white-mean-wavelength': () => ({
    wavelength: photopicLight.reduce((sum, { wavelength, share }) => sum + wavelength * share, 0),
  }),
  'white-otf-in-focus': transfers,
  'white-otf-one-wave': transfers,
  'white-otf-three-waves': transfers,
  'white-airy-pattern': ({ radius }: { radius: number[] }) => ({
    intensity: radius.map((imageRadius) => photopicProfile({ ...inFocus, imageRadius }, 2).intensities[1] as number),
    energy: radius.map((imageRadius) => photopicEnergyProfile({ ...inFocus, imageRadius }, 2).shares[1] as number),
  }),
});
