/**
 * Where a room's work begins, for those who skip what stands before it.
 * @returns the first shown element in it, or in the trees of its parts, that carries data-begin; null when there is none
 */
export function beginningOf(part: Element | ShadowRoot): HTMLElement | null {
  for (const each of part.querySelectorAll<HTMLElement>('*')) {
    if (each.dataset['begin'] !== undefined && each.getClientRects().length > 0) return each;
    const within = each.shadowRoot === null ? null : beginningOf(each.shadowRoot);
    if (within !== null) return within;
  }
  return null;
}
