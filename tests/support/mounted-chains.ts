import fc from 'fast-check';
import type { Part } from '#core/rig/part.ts';
import { camera, on, ring, unitLenses } from './rig-parts.ts';
import { valueIn } from './sample.ts';

/** Random chains of every kind that photographers mount, an infinity objective on a lens among them, irises from f/1.4 to f/32. */
export const chains: fc.Arbitrary<readonly Part[]> = fc
  .record({
    kind: fc.constantFrom('lens', 'turned', 'converter', 'close-up', 'coupled', 'tube', 'objective on a lens'),
    main: unitLenses,
    front: unitLenses,
    fNumber: valueIn([1.4, 32]),
    frontFNumber: valueIn([1.4, 16]),
    at: valueIn([0, 1]),
    extension: valueIn([1, 150]),
    gap: valueIn([0, 60]),
    power: valueIn([1, 20]),
    times: valueIn([2, 20]),
    aperture: valueIn([0.05, 0.5]),
  })
  .map(({ kind, main, front, fNumber, frontFNumber, at, extension, gap, power, times, aperture }) => {
    const objective: Part = {
      part: 'objective',
      objectiveMagnification: times,
      numericalAperture: aperture,
      workingDistance: 15,
      design: { tubeFocalLength: 200 },
      parfocalDistance: 45,
    };
    const body: Part = { ...camera, registerDistance: main.registerDistance } as Part;
    switch (kind) {
      case 'lens':
        return [body, ring(extension), on(main, { at, fNumber })];
      case 'turned':
        return [body, ring(extension), on(main, { fNumber, reversed: true })];
      case 'converter':
        return [
          body,
          { part: 'converter', converterFactor: 1.4, converterLength: 20, registerDistance: main.registerDistance },
          on(main, { at, fNumber }),
        ];
      case 'close-up':
        return [
          body,
          on(main, { at, fNumber }),
          ring(gap),
          { part: 'close-up lens', closeUpPower: power, clearAperture: 50 },
        ];
      case 'coupled':
        return [body, on(main, { at, fNumber }), ring(gap), on(front, { fNumber: frontFNumber, reversed: true })];
      case 'tube':
        return [
          body,
          ring(extension),
          { part: 'tube lens', focalLength: body.part === 'camera' ? extension + body.registerDistance : 200 },
          ring(gap),
          objective,
        ];
      default:
        return [body, on(main, { fNumber }), ring(gap), objective];
    }
  });
