import type { Problem } from '../../base/error.ts';
import { PAPER_PROPORTION, PAPER_SIDE_MM, within } from '../../base/limits.ts';
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
    ['widthMm', widthMm, 'wide'],
    ['heightMm', heightMm, 'high'],
  ] as const) {
    if (!within(PAPER_SIDE_MM, value)) {
      tell('paper.size', `The sheet is ${value} mm ${side}; give more than 0 and at most ${PAPER_SIDE_MM.most} mm.`, where);
    }
  }
  const [short, long] = [Math.min(widthMm, heightMm), Math.max(widthMm, heightMm)];
  if (problems.length === 0 && long > PAPER_PROPORTION * short) {
    tell(
      'paper.size',
      `The sheet is ${widthMm} × ${heightMm} mm; give a long side of at most ${PAPER_PROPORTION} times the short one.`,
      'heightMm',
    );
  }
  if (problems.length > 0) return problems;
  if (!(printable.widthMm > 0 && printable.heightMm > 0)) {
    tell('paper.no-printable', 'The printable part has no size; give it a width and a height.', 'printable');
  } else if (!(printable.xMm >= 0 && printable.yMm >= 0)) {
    tell('paper.off-sheet', 'The printable part begins off the sheet; give margins of 0 mm or more.', 'printable');
  } else if (printable.xMm + printable.widthMm > widthMm + 1e-9 || printable.yMm + printable.heightMm > heightMm + 1e-9) {
    tell(
      'paper.off-sheet',
      `The printable part reaches ${printable.xMm + printable.widthMm} × ${printable.yMm + printable.heightMm} mm from the corner, but the sheet is ${widthMm} × ${heightMm} mm; make it smaller or the sheet larger.`,
      'printable',
    );
  }
  return problems;
}
