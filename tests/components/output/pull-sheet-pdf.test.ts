import fontkit from '@pdf-lib/fontkit';
import { PDFDocument } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import type { MadePlan } from '../../../src/components/output/made-plan.ts';
import { PAGE_SIZES, PageWriter, PT_PER_MM } from '../../../src/components/output/page-writer.ts';
import { pullSheetPdf } from '../../../src/components/output/pull-sheet-pdf.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { planVisit, type PressPlan } from '../../../src/engine/visit/visit.ts';
import { pageFonts as fonts } from '../../helpers/page-fonts.ts';
import { pdfPages, pdfTexts } from '../../helpers/pdf-text.ts';
import { smallProject } from '../../helpers/small-project.ts';

/** A PNG of one pixel, 8-bit grey. */
const PIXEL = Uint8Array.from(
  Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==', 'base64'),
);

const project = smallProject();
const first = recipeOf(project.bench, project.drawer, { id: 'a', title: 'Ebb → “flood” Żółw Ωλ' });
const turned = recipeOf([...project.bench].reverse(), project.drawer, { id: 'b', title: 'Turned' });

function made(sheets: number): MadePlan {
  const input = {
    runs: [
      { recipe: first, sheets },
      { recipe: turned, sheets: 2 },
    ],
    minDeltaE: 1,
    press: project.press,
    seed: 'x',
  };
  let plan: PressPlan | null = null;
  for (const step of planVisit(input, 100)) plan = step;
  return { plan: plan!, input, recipes: [first, turned] };
}

describe('pullSheetPdf', () => {
  it('should give pages of the size that was asked for, which another reader opens', async () => {
    for (const size of ['A4', 'Letter'] as const) {
      const asked: string[] = [];
      const { bytes, missing } = await pullSheetPdf(made(3), {
        size,
        fonts,
        heading: 'Slack tide',
        picture: (recipe, pulls) => {
          asked.push(`${recipe}:${pulls.map((pull) => pull.id).join()}`);
          return Promise.resolve(PIXEL);
        },
      });
      expect(missing).toEqual([]);
      const read = await PDFDocument.load(bytes);
      expect(read.getTitle()).toBe('Pull sheet: Slack tide');
      expect(read.getPageCount()).toBeGreaterThanOrEqual(5);
      for (const page of read.getPages()) {
        // ISO 216: A4 is 210 × 297 mm; ANSI/ASME Y14.1: letter is 8.5 × 11 in.
        expect(page.getWidth() / 72).toBeCloseTo(size === 'A4' ? 210 / 25.4 : 8.5, 3);
        expect(page.getHeight() / 72).toBeCloseTo(size === 'A4' ? 297 / 25.4 : 11, 3);
      }
      // Each state is drawn once, however often it is shown.
      expect(new Set(asked).size).toBe(asked.length);
    }
  });

  it('should need more pages for more sheets and survive pictures that are missing', async () => {
    const pages = async (sheets: number): Promise<number> => {
      const { bytes } = await pullSheetPdf(made(sheets), { size: 'A4', fonts, heading: 'x', picture: () => Promise.resolve(null) });
      return (await PDFDocument.load(bytes)).getPageCount();
    };
    expect(await pages(450)).toBeGreaterThanOrEqual(await pages(2));
  });
});

describe('gridPages', () => {
  it('should show the whole visit at a glance: every set-up a row, every sheet a column', async () => {
    const visit = made(4);
    const pages = await pdfPages(
      (await pullSheetPdf(visit, { size: 'A4', fonts, heading: 'x', picture: () => Promise.resolve(null) })).bytes,
    );
    const grid = pages.filter((page) => page.startsWith('Set-up grid'));
    expect(grid).toHaveLength(1);
    const lines = grid[0]!.split('\n');
    for (const { number } of visit.plan.sheets) expect(lines).toContain(String(number));
    for (const card of visit.plan.cards) expect(lines).toContain(`${card.screen.key} ${card.screen.name}`);
    expect(lines.filter((line) => visit.plan.cards.some((card) => line.startsWith(card.ink.key))).length).toBe(visit.plan.cards.length);
  });
  it('should say of a set-up that waits what to do as well, and when the visit ends', async () => {
    const visit = made(3);
    const plan = { ...visit.plan, times: visit.plan.times.map((time) => ({ ...time, waitMinutes: 12, waitFor: ['Rust'] })) };
    const pages = await pdfPages(
      (await pullSheetPdf({ ...visit, plan }, { size: 'A4', fonts, heading: 'x', picture: () => Promise.resolve(null) })).bytes,
    );
    const days = pages.filter((page) => page.startsWith('Days\n')).join('\n');
    expect(days.match(/wait 12 min: Rust dries/g)).toHaveLength(plan.cards.length);
    expect(days.match(/^(mount|mount again|new ink|new offset)(, (new ink|new offset))*$/gm)!.length).toBeGreaterThanOrEqual(plan.mounts);
    expect(pages[0]!.replaceAll(/\s+/g, ' ')).toMatch(/It ends on day \d+ at \d+:\d\d/);
  });

  it('should tell long names in full where paper is cut', async () => {
    const visit = made(3);
    const title = 'A name so long that it takes more than one line of its column';
    const plan = { ...visit.plan, recipes: visit.plan.recipes.map((recipe) => ({ ...recipe, title })) };
    const pages = await pdfPages(
      (await pullSheetPdf({ ...visit, plan }, { size: 'A4', fonts, heading: 'x', picture: () => Promise.resolve(null) })).bytes,
    );
    const supplies = pages
      .slice(
        pages.findIndex((page) => page.startsWith('Screens\n')),
        pages.findIndex((page) => page.startsWith('Set-up 1\n')),
      )
      .join('\n');
    expect(supplies.replaceAll(/\s+/g, ' ')).toContain('its column');
    expect(supplies).not.toContain('…');
  });

  it('should lay the page on its long side for many sheets, and leave the next one upright', async () => {
    const runs = Array.from({ length: 20 }, (_, i) =>
      recipeOf(i % 2 === 0 ? project.bench : [...project.bench].reverse(), project.drawer, { id: `r${i}`, title: `R${i}` }),
    );
    const input = { runs: runs.map((recipe) => ({ recipe, sheets: 3 })), minDeltaE: 1, press: project.press, seed: 'x' };
    let plan: PressPlan | null = null;
    for (const step of planVisit(input, 50)) plan = step;
    const { bytes } = await pullSheetPdf(
      { plan: plan!, input, recipes: runs },
      { size: 'A4', fonts, heading: 'x', picture: () => Promise.resolve(null) },
    );
    const turned = (await PDFDocument.load(bytes)).getPages().map((page) => page.getWidth() > page.getHeight());
    const pages = await pdfPages(bytes);
    expect(turned.some(Boolean)).toBe(true);
    expect(turned).toEqual(pages.map((page) => page.startsWith('Set-up grid')));
  });
});

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
