import type { course } from '#site/course.ts';

/**
 * What people look for who do not know our words yet, by the lesson that helps them: what they want, what they have, what went wrong. A phrase that is typed
 * just so leads there first.
 */
export const beginners: Readonly<Record<(typeof course)[number]['slug'], string>> = {
  'life-size': 'macro, macro photography, close-up photography, how big, reproduction ratio, life size',
  'on-the-barrel': 'lens markings, numbers on a lens, lens mount, prime lens',
  'focusing-close':
    'will not focus, lens does not focus, too close to focus, minimum focus distance, cannot get closer',
  extension: 'extension tubes, macro tubes, tubes',
  'close-up-lenses': 'close-up filter, close up filter, magnifying glass, macro filter',
  'working-distance': 'too close, insect flies away, scares the insect, lens hits the subject',
  reversed: 'reverse lens, reversed lens, lens backwards, old lens',
  'beyond-life-size': 'extreme macro, microscope, more than 1:1, bigger than life size',
  'effective-aperture': 'darker close up, loses light, finder too dark, f-number changes',
  'depth-of-field': 'out of focus, only the eye is sharp, not everything sharp, blurry background, bokeh, depth',
  diffraction: 'soft at f/22, soft pictures, soft images, not sharp, unsharp',
  'best-aperture': 'best aperture, sharpest aperture, which aperture',
  'holding-still':
    'tripod, monopod, handheld, hand-held, by hand, shaky, shaking, camera shake, blurry, blurred, blurry pictures, motion blur, wind, shutter speed, self-timer, image stabiliser',
  'placing-focus': 'focus point, where to focus, tilt, parallel to the subject',
  'exposure-and-flash':
    'flash too bright, flash too dark, too bright, too dark, overexposed, underexposed, white picture, black picture, exposure, camera settings, flash settings',
  'size-of-light':
    'diffuser, softbox, harsh light, harsh shadows, hard shadows, soft light, lighting, reflections, shiny',
  stacking: 'focus stacking, focus stack, focus bracketing, how many shots',
  merging: 'halo, halos, ghosting, blend the frames',
  'choosing-kit': 'what to buy, which lens to buy, budget, cheap, expensive, gear, equipment, beginner kit',
  'planning-a-picture': 'insects, bugs, flowers, water drops, checklist, recipe, step by step, camera setup',
  'soap-film': 'soap bubble, bubbles, rainbow colours',
};
