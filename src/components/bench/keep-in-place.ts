/**
 * Does something that may lay content out above an element, and scrolls so that the element stays where it was seen.
 * @param act what is laid out by the next frame
 */
export async function keepInPlace(element: Element, act: () => void): Promise<void> {
  const before = element.getBoundingClientRect().top;
  act();
  await new Promise((drawn) => requestAnimationFrame(drawn));
  const moved = element.getBoundingClientRect().top - before;
  if (Math.abs(moved) >= 1) scrollerOf(element).scrollBy({ top: moved });
}

/** The nearest element about it that scrolls up and down, through slots and shadow roots; else the page. */
function scrollerOf(element: Element): Element {
  for (let at = around(element); at !== null; at = around(at)) {
    if (at.scrollHeight > at.clientHeight && /auto|scroll/u.test(getComputedStyle(at).overflowY)) return at;
  }
  return document.scrollingElement ?? document.documentElement;
}

function around(element: Element): Element | null {
  const root = element.getRootNode();
  return element.assignedSlot ?? element.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
}
