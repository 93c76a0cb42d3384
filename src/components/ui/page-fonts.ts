import boldUrl from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url';
import plainUrl from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url';
import { say } from '../words/en/ui/room.ts';

/** The two TrueType fonts that a PDF is written in. */
export interface PageFonts {
  plain: Uint8Array;
  bold: Uint8Array;
}

let fonts: Promise<PageFonts> | undefined;

async function bytesOf(url: string): Promise<Uint8Array> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(say.fontCouldNotBe(answer.status));
  return new Uint8Array(await answer.arrayBuffer());
}

/** The fonts of the PDFs, out of the app itself; loaded when the first PDF is made. */
export function pageFonts(): Promise<PageFonts> {
  fonts ??= Promise.all([bytesOf(plainUrl), bytesOf(boldUrl)]).then(([plain, bold]) => ({ plain, bold }));
  // A failure must not stay: the next try asks again.
  fonts.catch(() => (fonts = undefined));
  return fonts;
}
