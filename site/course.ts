/** The course in its order. A lesson that is not written yet stands here with its question, so that readers see where the course goes. */
export const course = [
  { slug: 'life-size', question: 'How big is it on the sensor?' },
  { slug: 'on-the-barrel', question: 'What do the numbers on a lens say?' },
  { slug: 'focusing-close', question: 'Why does a lens refuse to focus closer?' },
  { slug: 'extension', question: 'What does each extension ring give?' },
  { slug: 'close-up-lenses', question: 'Rings or a close-up lens?' },
  { slug: 'working-distance', question: 'How far away can I stay?' },
  { slug: 'reversed', question: 'What does a lens do back to front?' },
  { slug: 'beyond-life-size', question: 'How far past life size can I go?' },
  { slug: 'effective-aperture', question: 'Why does f/8 stop being f/8?' },
  { slug: 'depth-of-field', question: 'How much is sharp?' },
  { slug: 'diffraction', question: 'When does stopping down stop helping?' },
  { slug: 'best-aperture', question: 'Which f-number for this subject?' },
  { slug: 'holding-still', question: 'How fast must the shutter be?' },
  { slug: 'placing-focus', question: 'How do I put the plane where I want it?' },
  { slug: 'exposure-and-flash', question: 'What settings do I start from?' },
  { slug: 'size-of-light', question: 'Why is a small light soft here?' },
  { slug: 'stacking', question: 'How many frames, how far apart?' },
  { slug: 'merging', question: 'What does merging do, and why the halos?' },
  { slug: 'choosing-kit', question: 'What should I carry, or buy?' },
  { slug: 'planning-a-picture', question: 'How do I get from subject to settings?' },
  { slug: 'soap-film', question: 'Why is a bubble coloured?' },
] as const;

/** A page's address within the site, wherever the site is put. */
export function pathTo(path: string): string {
  return `${import.meta.env.BASE_URL.replace(/\/$/, '')}/${path}`;
}
