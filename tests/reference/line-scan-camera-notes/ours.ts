import { closeFocusFocalLength } from '#core/gaussian/close-focus-focal-length.formula.ts';
import { extensionForMagnification } from '#core/gaussian/extension-for-magnification.formula.ts';
import { magnificationFromField } from '#core/gaussian/magnification-from-field.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

const extension = (lens: { magnification: number; focalLength: number }) => ({
  extension: extensionForMagnification({ ...lens, focusMagnification: 0 }),
});

export const ours = oursById({
  'line-scan-magnification': (line: { sensorWidth: number; fieldWidth: number }) => ({
    magnification: magnificationFromField(line),
    inverseMagnification: 1 / magnificationFromField(line),
  }),
  // The note leaves the distance between the principal planes out of its example.
  'line-scan-focal-length': (given: { magnification: number; focusDistance: number }) => ({
    focalLength: closeFocusFocalLength({ ...given, principalSeparation: 0 }),
  }),
  'line-scan-extension': extension,
  'line-scan-life-size': extension,
});
