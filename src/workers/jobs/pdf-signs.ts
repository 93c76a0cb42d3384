import type { PDFFont } from 'pdf-lib';
import { defined } from '../../engine/base/at.ts';

/** Writes texts in the signs that a font of a PDF has, and notes those that it lacks. */
export class PdfSigns {
  private readonly known: ReadonlySet<number>;
  private readonly lacking = new Set<string>();

  /** @param font embedded from a file: its own character set is asked */
  constructor(font: PDFFont) {
    this.known = new Set(font.getCharacterSet());
  }

  /** The text; accents are taken off where need be, and a box stands for each sign that is lacking. */
  written(text: string): string {
    return [...text.normalize('NFC').replace(/\s/gu, ' ')]
      .map((sign) => {
        if (this.known.has(defined(sign.codePointAt(0)))) return sign;
        const bare = sign.normalize('NFKD').replace(/\p{M}/gu, '');
        if (bare !== '' && [...bare].every((each) => this.known.has(defined(each.codePointAt(0))))) return bare;
        this.lacking.add(sign);
        return '□';
      })
      .join('');
  }

  /** Signs that were to be written and are lacking, as they were found. */
  get missing(): readonly string[] {
    return [...this.lacking];
  }
}
