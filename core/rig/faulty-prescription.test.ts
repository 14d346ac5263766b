import { describe, expect, it } from 'vitest';
import { prescriptionNames, prescriptions } from '#tests/support/prescriptions.ts';
import { FaultyPrescription, requirePrescription } from './faulty-prescription.ts';
import type { Prescription, Surface } from './prescription.ts';

const singlet: Prescription = {
  surfaces: [
    { radius: 50, thickness: 5, index: 1.5 },
    { radius: -50, thickness: 45, index: 1 },
  ],
  stop: 0,
};
const withSurface = (index: number, changed: Partial<Surface>): Prescription => ({
  ...singlet,
  surfaces: singlet.surfaces.map((surface, place) => (place === index ? { ...surface, ...changed } : surface)),
});
const withSettings = (...settings: [number, Record<number, number>][]): Prescription => ({
  ...singlet,
  settings: settings.map(([focusMagnification, thickness]) => ({ focusMagnification, thickness })),
});

describe('requirePrescription', () => {
  it.each(prescriptionNames)('accepts a lens that has been built: %s', (name) => {
    expect(requirePrescription(prescriptions[name])).toBe(prescriptions[name]);
  });

  const faults: readonly [string, Prescription, number | null, RegExp][] = [
    ['no surface', { surfaces: [], stop: 0 }, null, /no surface/],
    ['a stop beyond the last surface', { ...singlet, stop: 2 }, null, /stop is at surface 2, of 2/],
    ['a radius of zero', withSurface(0, { radius: 0 }), 0, /radius is 0/],
    ['a missing radius', withSurface(1, { radius: NaN }), 1, /radius is NaN/],
    ['an index below that of air', withSurface(0, { index: 0.9 }), 0, /index is 0.9/],
    ['an index of nothing transparent', withSurface(0, { index: 15 }), 0, /index is 15/],
    ['glass up to the sensor', withSurface(1, { index: 1.5 }), 1, /behind the last surface is 1.5/],
    ['a negative thickness', withSurface(0, { thickness: -1 }), 0, /thickness is -1/],
    ['a thickness without end', withSurface(1, { thickness: Infinity }), 1, /thickness is Infinity/],
    ['a clear aperture wider than the sphere', withSurface(0, { clearAperture: 101 }), 0, /clear aperture is 101/],
    ['a clear aperture of zero', withSurface(1, { clearAperture: 0 }), 1, /clear aperture is 0/],
    ['a clear aperture below zero', withSurface(0, { clearAperture: -1 }), 0, /clear aperture is -1/],
    [
      'surfaces that meet within their clear aperture',
      {
        ...singlet,
        surfaces: singlet.surfaces.map((surface) => ({ ...surface, clearAperture: 40 })),
      },
      0,
      /meets the next surface.*edge is -3\.\d+ mm/,
    ],
    ['settings that do not start at infinity', withSettings([0.1, {}]), null, /setting 0 has .* 0.1/],
    ['settings that do not come nearer', withSettings([0, {}], [0.5, {}], [0.5, {}]), null, /setting 2 has .* 0.5/],
    ['a setting that moves what is not there', withSettings([0, { 7: 3 }]), null, /moves surface 7, of 2/],
    ['a setting in which glass crosses glass', withSettings([0, {}], [1, { 0: -2 }]), 0, /thickness is -2/],
  ];

  it.each(faults)('refuses %s, with the surface and the reason', (_, prescription, surface, reason) => {
    const attempt = () => requirePrescription(prescription);
    expect(attempt).toThrow(FaultyPrescription);
    expect(attempt).toThrow(reason);
    expect(attempt).toThrow(expect.objectContaining({ surface }));
  });
});
