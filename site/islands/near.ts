/** Comes true once the reader is within a window's height of *place*: time enough to fetch what it needs. */
export function near(place: Element): Promise<void> {
  return new Promise((done) => {
    const observer = new IntersectionObserver(
      (entries) => {
        if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
        observer.disconnect();
        done();
      },
      { rootMargin: '100%' },
    );
    observer.observe(place);
  });
}
