import { entryAt } from '../../../engine/base/at.ts';
import { minutesText } from '../../../engine/base/words.ts';
import { srgbHexFromLab } from '../../../engine/colour/screen-colour.ts';
import { stackMinutesOf } from '../../../engine/ink/film/drying.ts';
import { paperToCut } from '../../../engine/visit/paper-needs.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import { fixed } from '../../../engine/words/language.ts';
import { say } from '../../words/en/output/papers.ts';
import { gramsText, recipeLetter } from '../../words/plan-words.ts';
import { GRAMS_NOTE, inkSplit, leftBehindWords, OVERS_NOTE, TEST_SHEET_NOTE, testSheetName } from '../../words/supply-words.ts';
import type { MadePlan } from '../made-plan.ts';
import { cell, type PaperBlock, type PaperCell, type PaperTable } from './paper-blocks.ts';

const TICK: PaperCell = { lines: [], box: true };

/** Ink, stock ink and paper to have ready. */
export function supplyBlocks(made: MadePlan): PaperBlock[] {
  const { plan } = made;
  const mixed = plan.cards.some((card) => card.ink.stocks.length > 1);
  return [
    inkTable(plan),
    ...(mixed ? [stockTable(plan)] : []),
    { kind: 'text', text: leftBehindWords(plan, made.input.press), size: 'small', soft: true },
    { kind: 'text', text: GRAMS_NOTE, size: 'small', soft: true },
    paperTable(made),
    { kind: 'text', text: plan.testSheet === true ? TEST_SHEET_NOTE : OVERS_NOTE, size: 'small', soft: true },
  ];
}

function inkTable(plan: PressPlan): PaperTable {
  const inks = new Map(plan.cards.map((card) => [card.ink.key, card.ink.ink]));
  return {
    kind: 'table',
    title: say.ink,
    columns: [
      { head: '', share: 0.05 },
      { head: say.ink, share: 0.43 },
      { head: say.mix, share: 0.13 },
      { head: say.printed, share: 0.13 },
      { head: say.printOnAfter, share: 0.13 },
      { head: say.stackAfter, share: 0.13 },
    ],
    rows: plan.inks.map((need) => {
      const ink = inks.get(need.key);
      const split = inkSplit(need);
      return {
        cells: [
          TICK,
          {
            lines: [{ text: need.name, bold: true }, ...(split === '' ? [] : [{ text: split, size: 'small' as const, soft: true }])],
            ...(ink === undefined ? {} : { swatch: srgbHexFromLab(ink.overWhite) }),
          },
          cell(`${gramsText(need.grams)} g`, { bold: true }),
          cell(`${fixed(need.areaM2, 2)} m²`),
          cell(ink === undefined ? '' : minutesText(ink.dryMinutes)),
          cell(ink === undefined ? '' : minutesText(stackMinutesOf(ink))),
        ],
      };
    }),
  };
}

function stockTable(plan: PressPlan): PaperTable {
  return {
    kind: 'table',
    title: say.weighedOutOfThese,
    columns: [
      { head: '', share: 0.05 },
      { head: say.stockInk, share: 0.43 },
      { head: say.toHave, share: 0.52 },
    ],
    rows: plan.stocks.map(({ name, grams }) => ({
      cells: [TICK, cell(name, { bold: true }), cell(`${gramsText(grams)} g`, { bold: true })],
    })),
  };
}

function paperTable({ plan, recipes }: MadePlan): PaperTable {
  const rows = plan.recipes.map(({ title }, r) => {
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
  });
  if (plan.testSheet === true) rows.push([testSheetName(plan), '', '', '', '', '1']);
  return {
    kind: 'table',
    title: say.paper,
    columns: [
      { head: '', share: 0.05 },
      { head: say.recipe, share: 0.23 },
      { head: say.paper, share: 0.36 },
      { head: say.sheets2, share: 0.09 },
      { head: say.overs, share: 0.09 },
      { head: say.proofs, share: 0.09 },
      { head: say.cut, share: 0.09 },
    ],
    rows: rows.map((texts) => ({
      cells: [TICK, ...texts.map((text, i) => cell(text, i === 1 ? { size: 'small' } : { bold: i === 0 || i === texts.length - 1 }))],
    })),
  };
}
