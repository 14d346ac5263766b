/** A question of a photographer, and the formulas that answer it. */
export interface Question {
  readonly asks: string;
  /** The lesson of the course whose subject it is, by slug; none where no lesson goes so far. */
  readonly taughtIn: string | undefined;
  /** What each formula is called, by the name of its file, in the order of the sheet. */
  readonly formulas: Readonly<Record<string, string>>;
}

/** Questions of one kind, under the shortest of them. */
export interface Subject {
  readonly id: string;
  readonly asks: string;
  readonly questions: readonly Question[];
}

const question = (asks: string, taughtIn: string | undefined, formulas: Question['formulas']): Question => ({
  asks,
  taughtIn,
  formulas,
});

/** What a photographer wants to know, roughly in the order of the course; every formula of the core stands under one question. */
export const subjects: readonly Subject[] = [
  {
    id: 'how-large',
    asks: 'How large?',
    questions: [
      question('How large is it on the sensor?', 'life-size', {
        magnification: 'Magnification',
        'magnification-from-field': 'Magnification from a photographed ruler',
        'image-width': 'Width of the image on the sensor',
        'magnification-from-frame-fill': 'Magnification for a share of the picture width',
      }),
      question('How much of it fills the picture?', 'life-size', {
        'frame-fill': 'Share of the picture width that it takes',
        'field-width': 'Field width',
        'field-height': 'Field height',
      }),
      question('How fine is the detail I get of it?', 'life-size', {
        'pixels-per-millimetre': 'Pixels to a millimetre of the subject',
      }),
      question('What does the size of my sensor change?', 'life-size', { 'crop-factor': 'Crop factor' }),
      question('How wide does a lens see?', 'on-the-barrel', {
        'angle-of-view-far': 'Angle of view, far away',
        'angle-of-view': 'Angle of view, close up',
      }),
      question('How large does a lens make it at this distance?', 'focusing-close', {
        'magnification-of-subject': 'Magnification from the subject distance',
        'magnification-at-focus-distance': 'Magnification from the distance on the ring',
        'magnification-from-travel': 'Magnification from how far the lens moves out',
        'focus-travel': 'How far the lens moves out',
      }),
    ],
  },
  {
    id: 'what-to-add',
    asks: 'What must I add?',
    questions: [
      question('What does an extension ring give, and which one do I need?', 'extension', {
        'magnification-from-extension': 'Magnification with a ring',
        'extension-for-magnification': 'Ring for a magnification',
      }),
      question('What does a close-up lens give?', 'close-up-lenses', {
        'magnification-with-close-up-lens': 'Magnification with a close-up lens',
        'magnification-of-close-up-lens': 'Magnification with a close-up lens, the lens at infinity',
        'close-up-power-for-magnification': 'Close-up lens for a magnification',
        'colour-blur': 'Blur of blue where red is sharp',
        'colour-spread-of-close-up-lens': 'Colour fringe of a close-up lens, at the subject',
        'colour-spread-at-sensor': 'Colour fringe of a close-up lens, at the sensor',
      }),
      question('What does a lens give back to front?', 'reversed', {
        'magnification-of-reversed-lens': 'Magnification of a reversed lens',
        'extension-for-reversed-lens': 'Ring for a reversed lens',
      }),
      question('What goes far past life size?', 'beyond-life-size', {
        'magnification-of-coupled-lenses': 'Magnification of two lenses, face to face',
        'magnification-of-infinity-objective': 'Magnification of a microscope objective',
        'magnification-with-converter': 'Magnification with a converter',
        'magnification-with-ring-behind-converter': 'Magnification of a ring behind a converter',
        'magnification-with-rings-around-converter': 'Magnification of a converter between rings',
        'converter-factor-with-ring-behind': 'Factor of a converter with a ring behind it',
      }),
    ],
  },
  {
    id: 'how-near',
    asks: 'How near?',
    questions: [
      question('How much room is left in front of the lens?', 'extension', {
        'subject-distance': 'Subject distance',
        'working-distance': 'Working distance',
        'working-distance-from-marks': 'Working distance from what is printed',
      }),
      question('Which lens leaves me the room I need?', 'working-distance', {
        'focal-length-for-working-distance': 'Focal length for a working distance',
      }),
      question('And with a close-up lens, reversed, or into a tank?', 'close-up-lenses', {
        'working-distance-of-close-up-lens': 'Working distance of a close-up lens, the lens at infinity',
        'working-distance-with-close-up-lens': 'Working distance with a close-up lens',
        'working-distance-of-reversed-lens': 'Working distance of a reversed lens',
        'working-distance-of-racked-out-reversed-lens': 'The same, focus ring and rear glass counted',
        'working-distance-with-converter': 'Working distance with a converter',
        'working-distance-into-tank': 'Working distance through the wall of a tank',
      }),
      question('How far from the sensor does it focus?', 'focusing-close', {
        'focus-distance': 'Focus distance',
        'nearest-focus-distance': 'Nearest focus distance',
      }),
      question('How far from the sensor does the lens stand?', 'focusing-close', {
        'image-distance': 'Image distance',
        'image-distance-of-subject': 'Image distance from the subject distance',
      }),
      question('What is the focal length of my lens close up?', 'focusing-close', {
        'close-focus-focal-length': 'Focal length from the closest focus',
        'focal-length-from-conjugates': 'Focal length from two distances',
      }),
      question('From where does the lens see the subject?', 'depth-of-field', {
        'entrance-pupil-distance': 'Distance to the entrance pupil',
      }),
      question('From where does a reversed lens see it?', 'reversed', {
        'entrance-pupil-distance-of-reversed-lens': 'Distance to the entrance pupil of a reversed lens',
      }),
    ],
  },
  {
    id: 'how-much-light',
    asks: 'How much light?',
    questions: [
      question('How wide is the opening?', 'on-the-barrel', {
        'entrance-pupil': 'Entrance pupil',
        'f-number-from-aperture': 'F-number from the opening',
        'exit-pupil': 'Exit pupil',
        'stopped-down': 'Stops from wide open',
      }),
      question('Which f-number counts close up?', 'extension', {
        'effective-f-number': 'Effective f-number',
        'light-loss': 'Light lost, in stops',
      }),
      question('And with a converter, a close-up lens, a lens reversed?', 'effective-aperture', {
        'effective-f-number-with-close-up-lens': 'Effective f-number with a close-up lens',
        'effective-f-number-with-converter': 'Effective f-number with a converter',
        'effective-f-number-of-reversed-lens': 'Effective f-number of a reversed lens',
        'entrance-pupil-of-reversed-lens': 'Entrance pupil of a reversed lens',
        'effective-f-number-of-coupled-lenses': 'Effective f-number of two lenses, face to face',
        'effective-f-number-of-objective': 'Effective f-number of a microscope objective',
        'effective-f-number-of-objective-on-lens': 'Effective f-number of an objective on a lens',
      }),
      question('What do I set, how long, and why is the finder dark?', 'effective-aperture', {
        'f-number-for-effective-f-number': 'F-number to set for a cone',
        'corrected-exposure-time': 'Exposure time from a hand meter',
        'finder-loss': 'Light lost in an optical finder',
      }),
      question('How wide is the cone, as microscopes count it?', 'depth-of-field', {
        'numerical-aperture': 'Numerical aperture',
      }),
    ],
  },
  {
    id: 'how-much-is-sharp',
    asks: 'How much is sharp?',
    questions: [
      question('How much blur do I allow?', 'depth-of-field', {
        'circle-of-confusion-by-width': 'Circle of confusion by the picture’s width',
        'circle-of-confusion-by-diagonal': 'Circle of confusion by the sensor’s diagonal',
        'circle-of-confusion-by-viewing': 'Circle of confusion by print and eye',
        'circle-of-confusion-by-pixels': 'Circle of confusion by pixels',
      }),
      question('How deep is the sharp part?', 'depth-of-field', {
        'depth-of-field-close-up': 'Depth of field, close-up form',
        'depth-of-field': 'Depth of field',
        'near-limit': 'Near limit',
        'far-limit': 'Far limit',
      }),
      question('And with any chain of lenses, or under water?', undefined, {
        'depth-of-field-of-cone': 'Depth of field of any chain',
        'near-limit-of-cone': 'Near limit of any chain',
        'far-limit-of-cone': 'Far limit of any chain',
        'depth-of-field-in-medium': 'Depth of field under water',
      }),
      question('How thin can the sharp part get?', 'depth-of-field', {
        'wave-depth': 'Least depth by diffraction',
      }),
      question('Where do I focus for the horizon?', 'depth-of-field', {
        'hyperfocal-distance': 'Hyperfocal distance',
        'hyperfocal-distance-from-pupil': 'Hyperfocal distance from the entrance pupil',
      }),
      question('How deep is a subject that stands at an angle?', 'placing-focus', {
        'subject-depth-of-tilt': 'Depth of a tilted subject',
        'sharp-width-of-tilt': 'How much of a tilted subject is sharp',
        'f-number-for-depth': 'F-number for a depth',
      }),
      question('How does the background look?', 'working-distance', {
        'background-blur': 'Blur of the background',
        'background-width': 'Width of the background',
      }),
    ],
  },
  {
    id: 'how-far-to-stop-down',
    asks: 'How far to stop down?',
    questions: [
      question('How large is a point with the best of lenses?', 'diffraction', {
        'airy-diameter': 'Airy disc',
      }),
      question('How fine a pattern comes through?', 'diffraction', {
        'cutoff-frequency': 'Cutoff of a perfect lens',
        contrast: 'Contrast of a fine pattern',
        'nyquist-frequency': 'Finest pattern of the pixels',
        'spatial-frequency-of-circle': 'Pattern as fine as the circle of confusion',
      }),
      question('Which f-number for this subject?', 'best-aperture', {
        'best-effective-f-number': 'Best effective f-number for a depth',
        'balanced-f-number': 'Balanced f-number',
        'defocus-blur-of-ends': 'Blur at the ends of a depth',
        'defocus-aberration': 'Defocus in waves, from the blur',
        'defocus-aberration-of-depth': 'Defocus in waves, from the depth',
      }),
      question('Will one frame do?', 'choosing-kit', {
        'subject-depth-in-one-frame': 'Deepest subject that one frame holds',
        'finest-effective-f-number': 'Effective f-number at which one frame holds most',
        'effective-f-number-for-depth': 'Effective f-number for a depth, with diffraction',
      }),
    ],
  },
  {
    id: 'how-to-hold-still',
    asks: 'How do I hold it still?',
    questions: [
      question('How fast must the shutter be?', 'holding-still', {
        'slowest-exposure-time': 'Slowest exposure time by hand',
        'motion-blur-turning-about-sensor': 'Blur by a camera that turns',
        'motion-blur-turning-about-pupil': 'Blur by a camera that turns about the lens',
        'motion-blur-sideways': 'Blur by a camera that sways',
        'motion-blur-together': 'Blur by all that moves',
        'exposure-time-for-motion-blur': 'Slowest exposure time from a measured blur',
      }),
      question('And if the subject moves?', 'holding-still', {
        'exposure-time-for-subject-speed': 'Slowest exposure time for a moving subject',
        'motion-blur-of-subject': 'Blur by a moving subject',
        'subject-speed-of-swing': 'Speed of what swings',
      }),
      question('How many frames until one is in focus?', 'placing-focus', {
        'keeper-frames': 'Frames for one in focus',
        'keeper-share': 'Share of frames in focus',
      }),
      question('Where does the focus go when I turn to frame?', 'placing-focus', {
        'focus-offset-of-turn': 'Focus left behind by a turn',
      }),
    ],
  },
  {
    id: 'what-exposure',
    asks: 'What exposure?',
    questions: [
      question('Which time, which ISO?', 'exposure-and-flash', {
        'exposure-time-from-luminance': 'Exposure time from the subject’s brightness',
        'exposure-time-from-illuminance': 'Exposure time from the light on the subject',
        'iso-from-luminance': 'ISO for an exposure',
        'metered-luminance': 'Brightness from a metered exposure',
      }),
      question('How much light is to spare?', 'choosing-kit', { 'stops-in-hand': 'Stops in hand' }),
      question('Which settings give the same exposure?', 'exposure-and-flash', {
        'exposure-value': 'Exposure value',
        'light-value': 'Light value',
      }),
      question('How clean is the picture?', 'holding-still', {
        electrons: 'Electrons in a pixel',
        'signal-to-noise': 'Signal to noise',
        'iso-at-full-well': 'Lowest ISO of a sensor',
      }),
    ],
  },
  {
    id: 'how-to-light',
    asks: 'How do I light it?',
    questions: [
      question('Which settings for my flash?', 'exposure-and-flash', {
        'f-number-for-flash': 'F-number to set for a flash',
        'effective-f-number-from-guide-number': 'Effective f-number from the guide number',
        'flash-power-for-f-number': 'Power of the flash for an f-number',
        'flash-underexposure': 'Stops by which a flash falls short',
        'background-underexposure': 'Stops that a flash loses behind the subject',
      }),
      question('How much does daylight add?', 'exposure-and-flash', {
        'ambient-underexposure': 'Stops by which daylight falls short',
        'ambient-share': 'Daylight’s share of the picture',
        'ambient-share-of-full-exposure': 'Daylight’s share of a full exposure',
      }),
      question('How soft is the light?', 'size-of-light', {
        'source-angle': 'Width of a light, seen from the subject',
        'diffuser-distance': 'Distance for a width of light',
        penumbra: 'Soft edge of a shadow',
      }),
      question('How much light does my lens take away?', 'working-distance', {
        'lens-shadow': 'Shadow of the lens under an even sky',
      }),
      question('How bright is it on the subject?', 'size-of-light', {
        'illuminance-by-inverse-square': 'Light from a small source',
        'illuminance-from-disc': 'Light from a broad source',
        'lighting-difference': 'Main light against fill light',
        'lighting-ratio': 'Lit side against shadow side',
      }),
      question('How large is its reflection?', 'size-of-light', {
        'catchlight-width-paraxial': 'Reflection of a light in a ball',
        'ball-radius-from-catchlight': 'Radius of a ball from its reflection',
      }),
    ],
  },
  {
    id: 'how-many-frames',
    asks: 'How many frames?',
    questions: [
      question('How many, and how far apart?', 'stacking', {
        'frame-step': 'Step from frame to frame',
        'frame-count': 'Frames of a stack',
        'stack-travel': 'Travel of a stack',
        'depth-of-stack': 'Depth that so many frames hold',
      }),
      question('How long does a stack take?', 'stacking', {
        'stack-time': 'Time for a stack',
        'stack-time-in-turn': 'Time for a stack, wait after wait',
        'frames-before-deadline': 'Frames before time is up',
      }),
      question('How do the frames fit together?', 'merging', {
        'scale-change-on-rail': 'Change of size on a rail',
        'scale-change-focusing': 'Change of size by focusing',
        'edge-shift': 'Shift at the side of the picture',
        'hidden-band': 'Half-hidden band beside an edge',
      }),
    ],
  },
  {
    id: 'why-coloured',
    asks: 'Why does it shine, or show colours?',
    questions: [
      question('Why is a bubble coloured?', 'soap-film', {
        'bright-wavelength': 'Colour that a film shows',
        'bright-film-thickness': 'Thickness of a film from its colour',
        'refraction-angle': 'Angle inside the film',
        'film-reflectance': 'Light that a film sends back',
        'film-reflectance-of-two-beams': 'Light that a film sends back, from two beams',
      }),
      question('How large a light does a mirror need?', 'soap-film', {
        'source-size-for-mirror': 'Light that fills a mirror',
        'subject-depth-aslant': 'Depth of a flat subject seen aslant',
      }),
      question('How much does a shiny surface send back?', 'soap-film', {
        'surface-reflectance-s': 'Light that a surface sends back, across the plane of reflection',
        'surface-reflectance-p': 'Light that a surface sends back, in the plane of reflection',
      }),
    ],
  },
];

/** The formulas that go on the card in the bag, by the names of their files: what a day out with a camera asks for. */
export const onCard: ReadonlySet<string> = new Set([
  'magnification',
  'magnification-from-field',
  'field-width',
  'pixels-per-millimetre',
  'crop-factor',
  'magnification-from-extension',
  'extension-for-magnification',
  'magnification-with-close-up-lens',
  'magnification-of-close-up-lens',
  'magnification-of-reversed-lens',
  'magnification-of-coupled-lenses',
  'magnification-with-converter',
  'subject-distance',
  'working-distance',
  'working-distance-of-close-up-lens',
  'working-distance-of-reversed-lens',
  'focus-distance',
  'close-focus-focal-length',
  'entrance-pupil',
  'entrance-pupil-distance',
  'effective-f-number',
  'light-loss',
  'effective-f-number-with-close-up-lens',
  'effective-f-number-with-converter',
  'effective-f-number-of-reversed-lens',
  'circle-of-confusion-by-width',
  'circle-of-confusion-by-viewing',
  'depth-of-field-close-up',
  'depth-of-field',
  'hyperfocal-distance',
  'subject-depth-of-tilt',
  'background-blur',
  'airy-diameter',
  'best-effective-f-number',
  'motion-blur-turning-about-sensor',
  'motion-blur-of-subject',
  'keeper-frames',
  'exposure-time-from-illuminance',
  'f-number-for-flash',
  'ambient-share',
  'source-angle',
  'penumbra',
  'frame-step',
  'frame-count',
  'stack-travel',
  'stack-time',
]);
