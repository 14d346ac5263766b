/** A lesson with its kinds of problem, in the order in which sheets of an edition know them. */
export type EditionLesson = readonly [slug: string, kinds: readonly string[]];

/**
 * What a sheet's address counts by: lessons and their kinds of problem, by place. An edition never changes, so that every printed sheet keeps its
 * problems; when a lesson gains a kind, the next letter gets a list of its own and new sheets are made by that.
 */
export const editions: Readonly<Record<string, readonly EditionLesson[]>> = {
  a: [
    [
      'life-size',
      [
        'ruler-photograph',
        'field-of-a-body',
        'image-on-the-sensor',
        'pixels-on-a-millimetre',
        'what-changes-the-image',
      ],
    ],
    [
      'on-the-barrel',
      ['opening-width', 'stops-between', 'stops-on', 'room-from-marks', 'size-at-closest', 'which-mark'],
    ],
    ['focusing-close', ['travel', 'size-on-the-scale', 'sensor-to-subject', 'image-side', 'floor', 'inside']],
    ['extension', ['ring-on-a-lens', 'ring-for-a-size', 'room-left', 'light-paid']],
    [
      'close-up-lenses',
      [
        'how-large',
        'one-on-the-other',
        'on-a-focused-lens',
        'nearer',
        'which-power',
        'blue-before-red',
        'light-through',
        'ring-or-lens',
      ],
    ],
    ['working-distance', ['room', 'longer-lens', 'shortest-lens', 'strip', 'smear', 'shadow', 'which-lens']],
    ['reversed', ['how-large', 'how-much-room', 'which-tube', 'cone-turned-round', 'racked-out', 'which-lens']],
    [
      'beyond-life-size',
      ['coupled-size', 'coupled-cone', 'ring-before', 'ring-behind', 'converter-light', 'objective', 'room'],
    ],
    ['effective-aperture', ['cone', 'stops', 'hand-meter', 'inside', 'mark-to-set', 'who-knows']],
    [
      'depth-of-field',
      [
        'depth-at-a-size',
        'depth-from-a-distance',
        'another-aperture',
        'another-lens',
        'circle-by-viewing',
        'how-far-behind',
      ],
    ],
    ['diffraction', ['disc-on-the-sensor', 'finest-pattern', 'contrast-left', 'where-it-begins']],
    ['best-aperture', ['balanced', 'deeper', 'end-blur', 'airy', 'frames-instead', 'which']],
    [
      'holding-still',
      [
        'turning-streak',
        'slowest-with-stabilisation',
        'walking-subject',
        'two-causes',
        'flower-in-the-wind',
        'price-in-iso',
        'what-holds-it',
      ],
    ],
    [
      'placing-focus',
      [
        'how-far-may-it-lean',
        'f-number-for-a-lean',
        'share-in-focus',
        'frames-for-one',
        'always-too-near',
        'focus-then-turn',
        'turn-or-stop-down',
      ],
    ],
    [
      'exposure-and-flash',
      [
        'flash-close-up',
        'how-much-power',
        'how-far-the-flash',
        'held-in-the-light',
        'behind-the-lens',
        'daylight-share',
        'black-background',
        'what-freezes-it',
        'too-short-for-the-flash',
      ],
    ],
    [
      'size-of-light',
      [
        'how-wide-it-looks',
        'how-near-the-diffuser',
        'soft-edge',
        'catchlight-on-the-sensor',
        'nearer-by-so-much',
        'ball-from-its-catchlight',
        'main-and-fill',
        'which-is-softest',
      ],
    ],
    [
      'stacking',
      ['step-of-the-rail', 'how-many-frames', 'how-long', 'before-it-melts', 'a-tilted-stamp', 'rail-ring-or-neither'],
    ],
    ['merging', ['behind-the-edge', 'aperture-for-a-rim', 'whole-stack-on-the-rail', 'at-the-side', 'what-helps']],
    [
      'choosing-kit',
      [
        'shortest-rings',
        'which-close-up-lens',
        'what-a-turned-lens-gives',
        'which-keeps-its-distance',
        'what-stands-against-it',
        'which-part-for-the-money',
        'will-one-frame-do',
        'stops-to-spare',
      ],
    ],
    [
      'planning-a-picture',
      [
        'ring-for-this-picture',
        'frames-for-this-one',
        'one-frame-or-a-stack',
        'shutter-or-flash',
        'how-deep-in-time',
        'time-for-the-loss',
        'what-first',
      ],
    ],
    [
      'soap-film',
      [
        'first-bright',
        'dark-again',
        'seen-aslant',
        'which-colour',
        'how-much-comes-back',
        'how-large-a-diffuser',
        'what-comes-next',
      ],
    ],
  ],
};

/** The edition by which new sheets are made. */
export const newest = Object.keys(editions).at(-1)!;
