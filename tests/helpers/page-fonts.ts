import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { PageFonts } from '../../src/components/ui/page-fonts.ts';

const file = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(fileURLToPath(new URL(`../../node_modules/dejavu-fonts-ttf/ttf/${name}.ttf`, import.meta.url))));

/** The fonts of the PDFs as the app loads them, from the disk. */
export const pageFonts: PageFonts = { plain: file('DejaVuSansCondensed'), bold: file('DejaVuSansCondensed-Bold') };
