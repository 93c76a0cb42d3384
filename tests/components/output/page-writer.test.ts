import fontkit from '@pdf-lib/fontkit';
import { describe, expect, it } from 'vitest';
import { PAGE_SIZES, PageWriter, PT_PER_MM } from '../../../src/components/output/page-writer.ts';
import { pageFonts as fonts } from '../../helpers/page-fonts.ts';
import { pdfTexts } from '../../helpers/pdf-text.ts';

describe('PageWriter', () => {
  it('should write names of other scripts with the glyphs of the font, found again by any reader', async () => {
    // Polish, Czech, Greek, Cyrillic, Vietnamese and signs that a pull sheet uses.
    const names = [
      'Łucja Wiśniewska-Żółć',
      'Žižková Ďáblice',
      'Ευγενία Παπαδοπούλου',
      'Екатерина Щёголева',
      'Nguyễn Thị Ánh',
      '→ 12.5 ↑ −3 mm, µm, m², ≤ “Ebb” □',
    ];
    const out = await PageWriter.open('A4', 'x', fonts);
    for (const [i, name] of names.entries()) out.line(name, { x: 40, y: 40 + 20 * i }, { bold: i % 2 === 1 });
    expect(out.missing).toEqual([]);
    const [page] = await pdfTexts(await out.close(''));
    expect(page!.slice(0, names.length).map(({ text }) => text)).toEqual(names);
    const known = { plain: fontkit.create(fonts.plain), bold: fontkit.create(fonts.bold) };
    for (const [i, { glyphs, text, program }] of page!.slice(0, names.length).entries()) {
      const put = fontkit.create(program);
      const whole = i % 2 === 1 ? known.bold : known.plain;
      for (const [at, sign] of [...text].entries()) {
        // The outline that the file draws is the outline that the typeface has for the sign.
        const outline = put.getGlyph(glyphs[at]!).path.toSVG();
        expect(outline).toBe(whole.glyphForCodePoint(sign.codePointAt(0)!).path.toSVG());
        expect(outline === '').toBe(sign === ' ');
      }
    }
  });
  it('should put a box for what the fonts lack, and say so', async () => {
    const out = await PageWriter.open('A4', 'x', fonts);
    expect(out.signs.written('潮 tide\t潮')).toBe('□ tide □');
    expect(out.missing).toEqual(['潮']);
    expect(out.signs.written('e\u0301')).toBe('é');
  });
  it('should break a word that is wider than its place', async () => {
    const out = await PageWriter.open('A4', 'x', fonts);
    const lines = out.lines(`a ${'w'.repeat(60)} b`, 100);
    expect(lines.length).toBeGreaterThan(3);
    for (const line of lines) expect(out.widthOf(line)).toBeLessThanOrEqual(100);
    expect(lines.join('').replaceAll(' ', '')).toBe(`a${'w'.repeat(60)}b`);
  });
  it('should be as wide as its paper', async () => {
    const out = await PageWriter.open('A4', 'x', fonts);
    expect(out.width).toBeCloseTo(PAGE_SIZES.A4[0] * PT_PER_MM, 9);
  });
});
