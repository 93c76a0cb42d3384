import { say } from '../words/en/output/room.ts';

/** Says which signs a PDF shows as boxes. @param missing as the page writer found them, at least one */
export function missingWords(missing: readonly string[]): string {
  const shown = missing.slice(0, 8).join(' ');
  return say.pdfIsSavedBut(shown, missing.length > 8);
}
