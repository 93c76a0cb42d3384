import { entryAt } from '../../engine/base/at.ts';
import { rangesText } from '../../engine/base/words.ts';
import { passportsOf } from '../../engine/visit/passports.ts';
import { counted } from '../ui/words.ts';
import { howWords } from '../words/offset-words.ts';
import { recipeLetter } from '../words/plan-words.ts';
import type { PlanPages } from './plan-pages.ts';

/** For each kind of sheet its whole stack, first down first. */
export async function passportPages({ out, made, draw }: PlanPages): Promise<void> {
  const { plan } = made;
  out.newPage();
  out.heading('Sheets');
  for (const { recipe, sheets, setUps } of passportsOf(plan)) {
    const picture = 110;
    // A passport stands on one page where one can hold it.
    out.need(Math.min(out.height - 140, Math.max(picture, 46 + setUps.length * 19) + 24));
    out.rule();
    out.y += 8;
    const top = out.y;
    const width = await draw(recipe, entryAt(made.recipes, recipe).pulls, { x: out.left, y: top, height: picture });
    const x = out.left + width + 16;
    out.paragraph(`${recipeLetter(recipe)} ${plan.recipes[recipe]?.title ?? ''}`, { size: 15, bold: true, x });
    out.paragraph(`${sheets.length === 1 ? 'Sheet' : 'Sheets'} ${rangesText(sheets)}, each ${counted(setUps.length, 'set-up')}`, { x });
    out.y = Math.max(out.y, top) + 4;
    const page = out.doc.getPageCount();
    for (const at of setUps) {
      const card = entryAt(plan.cards, at);
      out.need(20);
      const from = out.doc.getPageCount() === page ? x : out.left;
      out.box({ x: from, y: out.y + 1 }, 11);
      out.line(`${card.number}`, { x: from + 18, y: out.y }, { bold: true });
      out.line(`${card.screen.key} ${card.screen.name}`, { x: from + 42, y: out.y }, { bold: true, most: 130 });
      out.line(howWords(card), { x: from + 178, y: out.y }, { size: 11, most: out.right - from - 178 });
      out.y += 19;
    }
    if (out.doc.getPageCount() === page) out.y = Math.max(out.y, top + picture);
    out.y += 10;
  }
}
