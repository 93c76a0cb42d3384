/** What Safari sends for two fingers on a trackpad; other browsers send a wheel with Ctrl. No standard has it (from memory). */
interface Pinch extends Event {
  /** How far the fingers are apart, against where they began. */
  scale: number;
  clientX: number;
  clientY: number;
}

/**
 * Hears pinches on a trackpad where they come as gesture events, and keeps them from scaling the page.
 * @param busy whether fingers on the screen do it already, which come as gesture events as well
 * @param zoom is told how many times closer since the last, and round which place of the window
 */
export function hearTrackpadPinch(
  element: EventTarget,
  { busy, zoom, signal }: { busy(): boolean; zoom(ratio: number, at: { clientX: number; clientY: number }): void; signal?: AbortSignal },
): void {
  let before = 1;
  const hear = (event: Event): void => {
    event.preventDefault();
    const { scale, clientX, clientY } = event as Pinch;
    if (event.type === 'gesturechange' && scale > 0 && !busy()) zoom(scale / before, { clientX, clientY });
    before = event.type === 'gesturechange' && scale > 0 ? scale : 1;
  };
  for (const name of ['gesturestart', 'gesturechange', 'gestureend'])
    element.addEventListener(name, hear, signal === undefined ? {} : { signal });
}
