import { entryAt, num } from '../../engine/base/at.ts';
import { minutesText } from '../../engine/base/words.ts';
import { stackMinutesOf } from '../../engine/ink/film/drying.ts';
import { paperToCut } from '../../engine/visit/paper-needs.ts';
import { screensToMake } from '../../engine/visit/screens-to-make.ts';
import type { PressPlan } from '../../engine/visit/visit.ts';
import { counted } from '../ui/words.ts';
import { gramsText, recipeLetter } from '../words/plan-words.ts';
import { GRAMS_NOTE, OVERS_NOTE, TEST_SHEET_NOTE } from '../words/supply-words.ts';
import type { MadePlan } from './made-plan.ts';
import type { PageWriter } from './page-writer.ts';

/** From line to line where a cell takes several. */
const LINE_PT = 14;

/** Rows with a box to tick each; the first column takes what the others leave. */
function rows(out: PageWriter, heads: readonly string[], widths: readonly number[], entries: readonly (readonly string[])[]): void {
  const first = out.right - out.left - 20 - widths.reduce((sum, width) => sum + width, 0);
  const all = [first, ...widths];
  const styleOf = (i: number): { bold: boolean } => ({ bold: i === 0 || i === all.length - 1 });
  const wrapped = (entry: readonly string[]): string[][] => entry.map((cell, i) => out.lines(cell, num(all, i) - 8, styleOf(i)));
  const put = (cells: readonly (readonly string[])[], head: boolean): void => {
    let x = out.left + 20;
    for (const [i, lines] of cells.entries()) {
      for (const [l, line] of lines.entries())
        out.line(line, { x, y: out.y + l * LINE_PT }, { ...(head ? { size: 10, soft: true } : styleOf(i)), most: num(all, i) - 8 });
      x += num(all, i);
    }
  };
  out.need(60);
  put(
    heads.map((head) => [head]),
    true,
  );
  out.y += 15;
  out.rule();
  for (const entry of entries) {
    const cells = wrapped(entry);
    const more = (Math.max(...cells.map((lines) => lines.length)) - 1) * LINE_PT;
    out.need(24 + more);
    out.y += 5;
    out.box({ x: out.left, y: out.y + 1 }, 11);
    put(cells, false);
    out.y += 17 + more;
    out.rule();
  }
  out.y += 6;
}

/** Screens, ink, stock ink and paper to have ready. */
export function supplyPages(out: PageWriter, made: MadePlan): void {
  out.newPage();
  out.heading('Screens');
  screenRows(out, made);
  out.heading('Ink');
  inkRows(out, made.plan);
  out.paragraph(GRAMS_NOTE, { size: 10, soft: true });
  out.heading('Paper');
  paperRows(out, made);
  out.paragraph(made.plan.testSheet === true ? TEST_SHEET_NOTE : OVERS_NOTE, { size: 10, soft: true });
}

function screenRows(out: PageWriter, { plan, recipes }: MadePlan): void {
  const { screens, filmM2 } = screensToMake(plan, recipes);
  rows(
    out,
    ['Screen', 'Mesh', 'First in', 'Mounted', 'Film positive'],
    [100, 66, 66, 70],
    screens.map(({ screen, first, mounts, areaM2 }) => [
      `${screen.key} ${screen.name}`,
      `${screen.mesh.threadsPerCm}/cm, ${screen.mesh.threadUm} µm`,
      `set-up ${first}`,
      counted(mounts, 'time'),
      `${areaM2.toFixed(3)} m²`,
    ]),
  );
  out.paragraph(`${counted(screens.length, 'screen')} to make, ${filmM2.toFixed(2)} m² of film positives, as large as the sheets.`);
}

/** Inks, and the stock inks that mixes are weighed out of. */
function inkRows(out: PageWriter, plan: PressPlan): void {
  rows(
    out,
    ['Ink', 'Printed', 'Print on after', 'Stack after', 'Mix'],
    [66, 88, 80, 70],
    plan.inks.map((need) => {
      const ink = plan.cards.find((card) => card.ink.key === need.key)?.ink.ink;
      return [
        need.name,
        `${need.areaM2.toFixed(2)} m²`,
        ink === undefined ? '' : minutesText(ink.dryMinutes),
        ink === undefined ? '' : minutesText(stackMinutesOf(ink)),
        `${gramsText(need.grams)} g`,
      ];
    }),
  );
  if (plan.cards.some((card) => card.ink.stocks.length > 1)) {
    out.need(80);
    out.paragraph('Weighed out of these stock inks', { bold: true });
    rows(
      out,
      ['Stock ink', 'To have'],
      [90],
      plan.stocks.map(({ name, grams }) => [name, `${gramsText(grams)} g`]),
    );
  }
}

function paperRows(out: PageWriter, { plan, recipes }: MadePlan): void {
  rows(
    out,
    ['Recipe', 'Paper', 'Sheets', 'Overs', 'Proofs', 'Cut'],
    [216, 46, 42, 46, 36],
    plan.recipes.map(({ title }, r) => {
      const { paper } = entryAt(recipes, r);
      const { good, overs, proofs, cut } = paperToCut(plan.sheets.filter((sheet) => sheet.recipe === r));
      return [
        `${recipeLetter(r)} ${title}`,
        `${paper.name}, ${paper.widthMm} × ${paper.heightMm} mm`,
        `${good}`,
        `${overs}`,
        `${proofs}`,
        `${cut}`,
      ];
    }),
  );
}
