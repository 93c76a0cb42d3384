/**
 * A listener for keys in a dialog: undo takes back a step made there, and nothing is undone in the
 * project behind it.
 * @param undo takes back a step; none where there is nothing of its own to take back
 */
export function ownUndo(undo: () => void = () => {}): (event: KeyboardEvent) => void {
  return (event) => {
    const key = event.key.toLowerCase();
    if (!(event.ctrlKey || event.metaKey) || (key !== 'z' && key !== 'y')) return;
    event.stopPropagation();
    // In a field, the browser takes back what was typed.
    if (event.composedPath()[0] instanceof HTMLInputElement) return;
    event.preventDefault();
    if (key === 'z' && !event.shiftKey) undo();
  };
}
