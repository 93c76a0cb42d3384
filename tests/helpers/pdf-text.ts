import { decodePDFRawStream, PDFArray, PDFDict, PDFDocument, PDFName, type PDFPage, PDFRawStream, PDFRef } from 'pdf-lib';

/** A text as a page shows it: the glyphs, and what they say by the font's own table. */
export interface ShownText {
  glyphs: number[];
  text: string;
  /** The TrueType program that draws the glyphs. */
  program: Uint8Array;
}

/**
 * Reads the texts of a PDF back, from what stands in the file alone: content streams, each font's
 * ToUnicode table and font program (ISO 32000-1, 9.4 and 9.10). Fonts with two-byte codes only.
 * @returns for each page its texts in the order of drawing
 */
export async function pdfTexts(bytes: Uint8Array): Promise<ShownText[][]> {
  const doc = await PDFDocument.load(bytes);
  return doc.getPages().map(textsOf);
}

/** The same as one string a page, a line for each text. */
export async function pdfPages(bytes: Uint8Array): Promise<string[]> {
  return (await pdfTexts(bytes)).map((texts) => texts.map(({ text }) => text).join('\n'));
}

function streamText(stream: PDFRawStream): string {
  return Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1');
}

function textsOf(page: PDFPage): ShownText[] {
  const { context } = page.doc;
  const contents = page.node.Contents();
  const streams = contents instanceof PDFArray ? contents.asArray().map((ref) => context.lookup(ref)) : [contents];
  const content = streams.map((stream) => streamText(stream as PDFRawStream)).join('\n');
  const fonts = page.node.Resources()!.lookup(PDFName.of('Font'), PDFDict);
  const known = new Map<string, { table: Map<number, string>; program: Uint8Array }>();
  const out: ShownText[] = [];
  let font = '';
  for (const match of content.matchAll(/\/(\S+) [\d.]+ Tf|<([0-9A-Fa-f]*)> Tj/g)) {
    if (match[1] !== undefined) {
      font = match[1];
      continue;
    }
    if (!known.has(font)) known.set(font, fontOf(fonts.lookup(PDFName.of(font), PDFDict)));
    const { table, program } = known.get(font)!;
    const glyphs = (match[2]!.match(/.{4}/g) ?? []).map((code) => parseInt(code, 16));
    out.push({ glyphs, text: glyphs.map((glyph) => table.get(glyph) ?? '\ufffd').join(''), program });
  }
  return out;
}

function fontOf(font: PDFDict): { table: Map<number, string>; program: Uint8Array } {
  const cmap = streamText(font.lookup(PDFName.of('ToUnicode')) as PDFRawStream);
  const table = new Map<number, string>();
  for (const block of cmap.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
    for (const [, code, units] of block[1]!.matchAll(/<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>/g)) {
      table.set(parseInt(code!, 16), String.fromCharCode(...units!.match(/.{4}/g)!.map((unit) => parseInt(unit, 16))));
    }
  }
  const [descendant] = font.lookup(PDFName.of('DescendantFonts'), PDFArray).asArray();
  const dict = descendant instanceof PDFRef ? font.context.lookup(descendant, PDFDict) : (descendant as PDFDict);
  const program = dict.lookup(PDFName.of('FontDescriptor'), PDFDict).lookup(PDFName.of('FontFile2')) as PDFRawStream;
  return { table, program: decodePDFRawStream(program).decode() };
}
