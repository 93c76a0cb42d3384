import { PDFDocument } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { PAGE_SIZES, PageWriter, PT_PER_MM } from '../../../src/components/press/pdf/page-writer.ts';
import { passportsOf } from '../../../src/components/press/pdf/passports.ts';
import { pullSheetPdf } from '../../../src/components/press/pdf/pull-sheet-pdf.ts';
import type { MadePlan } from '../../../src/components/press/plan-run.ts';
import { screensToMake } from '../../../src/components/press/supply-figures.ts';
import { planVisit, type PressPlan } from '../../../src/engine/output/visit.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { smallProject } from '../../helpers/small-project.ts';

/** A PNG of one pixel, 8-bit grey. */
const PIXEL = Uint8Array.from(
  Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==', 'base64'),
);

const project = smallProject();
const first = recipeOf(project.bench, project.drawer, { id: 'a', title: 'Ebb → “flood” Ωλ' });
const turned = recipeOf([...project.bench].reverse(), project.drawer, { id: 'b', title: 'Turned' });

function made(sheets: number): MadePlan {
  const input = { runs: [{ recipe: first, sheets }, { recipe: turned, sheets: 2 }], minDeltaE: 1, press: project.press, seed: 'x' };
  let plan: PressPlan | null = null;
  for (const step of planVisit(input, 100)) plan = step;
  return { plan: plan!, input, recipes: [first, turned] };
}

describe('pullSheetPdf', () => {
  it('should give pages of the size that was asked for, which another reader opens', async () => {
    for (const size of ['A4', 'Letter'] as const) {
      const asked: string[] = [];
      const bytes = await pullSheetPdf(made(3), {
        size,
        heading: 'Slack tide',
        picture: (recipe, pulls) => {
          asked.push(`${recipe}:${pulls.map((pull) => pull.id).join()}`);
          return Promise.resolve(PIXEL);
        },
      });
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
      const bytes = await pullSheetPdf(made(sheets), { size: 'A4', heading: 'x', picture: () => Promise.resolve(null) });
      return (await PDFDocument.load(bytes)).getPageCount();
    };
    expect(await pages(450)).toBeGreaterThanOrEqual(await pages(2));
  });
});

describe('PageWriter', () => {
  it('should write what the fonts have and replace what they lack', async () => {
    const out = await PageWriter.open('A4', 'x');
    expect(out.written('12 × 4 mm, “Ebb”, µm, m²')).toBe('12 × 4 mm, “Ebb”, µm, m²');
    expect(out.written('→ −3\tŭ Ω')).toBe('> -3 u ?');
    expect(out.width).toBeCloseTo(PAGE_SIZES.A4[0] * PT_PER_MM, 9);
  });
});

describe('passportsOf', () => {
  it('should hold every sheet once, with all the set-ups that it goes through', () => {
    const visit = made(5);
    const all = passportsOf(visit);
    expect(all.flatMap(({ sheets }) => sheets).sort((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    for (const { sheets, setUps } of all) {
      for (const [at, card] of visit.plan.cards.entries()) {
        for (const sheet of sheets) expect(card.sheets.includes(sheet)).toBe(setUps.includes(at));
      }
    }
  });
});

describe('screensToMake', () => {
  it('should count each frame once, with film as large as its sheet', () => {
    const visit = made(2);
    const { screens, filmM2 } = screensToMake(visit);
    const { widthMm, heightMm } = first.paper;
    expect(screens.map(({ screen }) => screen.key).sort()).toEqual(['1', '2', '3']);
    expect(screens.reduce((sum, { mounts }) => sum + mounts, 0)).toBe(visit.plan.mounts);
    expect(filmM2).toBeCloseTo((3 * widthMm * heightMm) / 1e6, 9);
  });
});
