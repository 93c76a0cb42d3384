/**
 * A listener for `touchstart` that keeps the page from scrolling while a finger moves what it holds:
 * browsers do not all heed touch-action on the parts of an SVG.
 * @param held whether this touch shall hold; false lets the page scroll
 */
export function holdPage(held: () => boolean = () => true): { handleEvent(event: TouchEvent): void; passive: false } {
  return {
    passive: false,
    handleEvent(event) {
      // Two fingers zoom the page.
      if (event.touches.length === 1 && event.cancelable && held()) event.preventDefault();
    },
  };
}
