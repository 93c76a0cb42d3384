import { entryAt } from '../../engine/base/at.ts';
import { rangesText } from '../../engine/base/words.ts';
import { counted } from '../ui/words.ts';
import { CAUTIONS, CAUTIONS_DEFER } from '../words/cautions.ts';
import { beginWords, boundWords, endWords, freeSwapWords, needsWords, planHeadline, recipeLetter } from '../words/plan-words.ts';
import type { PageWriter } from './page-writer.ts';
import type { PlanPages } from './plan-pages.ts';

/** What is printed, how good the order is, room for who printed it when, the recipes, and the cautions. */
export async function coverPage(pages: PlanPages, heading: string): Promise<void> {
  const { out, made } = pages;
  const { plan } = made;
  out.paragraph('Pull sheet', { soft: true });
  out.paragraph(heading, { size: 28, bold: true });
  out.paragraph(`${counted(plan.sheets.length, 'sheet')}, ${planHeadline(plan)}`, { size: 15, bold: true });
  out.y += 4;
  out.paragraph(
    [boundWords(plan), beginWords(plan), endWords(plan), freeSwapWords(plan), needsWords(plan)].filter((words) => words !== '').join(' '),
  );
  for (const problem of plan.problems.slice(0, 3)) out.paragraph(problem.message, { bold: true });
  out.y += 18;
  const third = (out.right - out.left) / 3;
  for (const [i, word] of ['Date', 'Printer', 'Studio'].entries()) {
    out.line(word, { x: out.left + i * third, y: out.y }, { soft: true });
    out.rule({ y: out.y + 16, x: out.left + i * third + 46, to: out.left + (i + 1) * third - 14 });
  }
  out.y += 34;
  await recipeRow(pages);
  cautions(out);
}

/** Each recipe's finished print with its letter, name and sheets. */
async function recipeRow({ out, made, draw }: PlanPages): Promise<void> {
  let x = out.left;
  const height = made.recipes.length > 4 ? 88 : 130;
  for (const [r, recipe] of made.plan.recipes.entries()) {
    const { widthMm, heightMm } = entryAt(made.recipes, r).paper;
    const width = (height * widthMm) / heightMm;
    if (x + width > out.right) {
      x = out.left;
      out.y += height + 50;
    }
    if (x === out.left) out.need(height + 50);
    await draw(r, entryAt(made.recipes, r).pulls, { x, y: out.y, height });
    const cell = Math.max(width, 112);
    const name = out.lines(`${recipeLetter(r)} ${recipe.title}`, cell, { bold: true, size: 10.5 });
    for (const [i, line] of name.slice(0, 2).entries()) {
      out.line(
        i === 1 && name.length > 2 ? `${line}…` : line,
        { x, y: out.y + height + 4 + 13 * i },
        { bold: true, size: 10.5, most: cell },
      );
    }
    out.line(
      `${counted(recipe.sheets.length, 'sheet')}: ${rangesText(recipe.sheets)}`,
      { x, y: out.y + height + 4 + 13 * Math.min(2, name.length) },
      { size: 10.5, most: cell },
    );
    x += cell + 16;
  }
  out.y += height + 48;
}

/** What can hurt stands together on one page. */
function cautions(out: PageWriter): void {
  const style = { size: 11 };
  const lines = [...CAUTIONS, CAUTIONS_DEFER].reduce((sum, text) => sum + out.lines(text, out.right - out.left - 18, style).length, 0);
  out.need(40 + lines * style.size * 1.35 + CAUTIONS.length * 2);
  out.heading('Before you start');
  for (const caution of CAUTIONS) {
    out.box({ x: out.left, y: out.y + 2 }, 9);
    out.paragraph(caution, { ...style, x: out.left + 18 });
    out.y += 2;
  }
  out.paragraph(CAUTIONS_DEFER, { ...style, bold: true });
}
