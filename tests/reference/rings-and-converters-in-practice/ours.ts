import { magnificationWithRingsAroundConverter } from '#core/rig/magnification-with-rings-around-converter.formula.ts';

type Given = Omit<Parameters<typeof magnificationWithRingsAroundConverter>[0], 'workingConverterFactor'>;

export function ours(given: Given) {
  // Without a ring behind it a converter works at what is engraved.
  return {
    magnification: magnificationWithRingsAroundConverter({ ...given, workingConverterFactor: given.converterFactor }),
  };
}
