/** The first element under a root that a selector fits, through shadow roots too; null when there is none. */
export function deepFind(root: ParentNode, selector: string): Element | null {
  for (const each of root.querySelectorAll('*')) {
    if (each.matches(selector)) return each;
    const found = each.shadowRoot === null ? null : deepFind(each.shadowRoot, selector);
    if (found !== null) return found;
  }
  return null;
}
