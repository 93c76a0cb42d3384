/** The first element under a root that a selector fits, through shadow roots too; null when there is none. */
export function deepFind(root: ParentNode, selector: string): Element | null {
  for (const each of root.querySelectorAll('*')) {
    if (each.matches(selector)) return each;
    const found = each.shadowRoot === null ? null : deepFind(each.shadowRoot, selector);
    if (found !== null) return found;
  }
  return null;
}

/** Brings an element into the middle of the view and opens the folds that it lies in. */
export function showUnfolded(element: Element): void {
  for (let at: Node | null = element; at !== null; at = at instanceof ShadowRoot ? at.host : at.parentNode)
    if (at instanceof HTMLDetailsElement) at.open = true;
  element.scrollIntoView({ block: 'center' });
}
