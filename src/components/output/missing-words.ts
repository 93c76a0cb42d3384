/** Says which signs a PDF shows as boxes. @param missing as the page writer found them, at least one */
export function missingWords(missing: readonly string[]): string {
  const shown = missing.slice(0, 8).join(' ');
  return `The PDF is saved, but its letters lack ${shown}${missing.length > 8 ? ' and others' : ''}: a box stands for each. Print from the browser to have them.`;
}
