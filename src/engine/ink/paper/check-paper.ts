import type { Problem } from '../../base/error.ts';
import { PAPER_PROPORTION, PAPER_SIDE_MM, within } from '../../base/limits.ts';
import { say } from '../../words/en/ink/paper.ts';
import type { Paper } from '../types.ts';

/**
 * What is wrong with a paper's measures as typed.
 * @returns no problems when the printable part lies on the sheet
 */
export function checkPaper(paper: Omit<Paper, 'reflectance'>): Problem[] {
  const { widthMm, heightMm, printable } = paper;
  const problems: Problem[] = [];
  const tell = (code: string, message: string, where: string): void => {
    problems.push({ code, message, where });
  };
  for (const [where, value, side] of [
    ['widthMm', widthMm, say.wide],
    ['heightMm', heightMm, say.high],
  ] as const) {
    if (!within(PAPER_SIDE_MM, value)) {
      tell('paper.size', say.sheetIsMmGive(value, side, PAPER_SIDE_MM.most), where);
    }
  }
  const [short, long] = [Math.min(widthMm, heightMm), Math.max(widthMm, heightMm)];
  if (problems.length === 0 && long > PAPER_PROPORTION * short) {
    tell('paper.size', say.sheetIsMmGiveLong(widthMm, heightMm, PAPER_PROPORTION), 'heightMm');
  }
  if (problems.length > 0) return problems;
  if (!(printable.widthMm > 0 && printable.heightMm > 0)) {
    tell('paper.no-printable', say.printablePartHasNo, 'printable');
  } else if (!(printable.xMm >= 0 && printable.yMm >= 0)) {
    tell('paper.off-sheet', say.printablePartBeginsOff, 'printable');
  } else if (printable.xMm + printable.widthMm > widthMm + 1e-9 || printable.yMm + printable.heightMm > heightMm + 1e-9) {
    tell(
      'paper.off-sheet',
      say.printablePartReachesMm(printable.xMm + printable.widthMm, printable.yMm + printable.heightMm, widthMm, heightMm),
      'printable',
    );
  }
  return problems;
}
