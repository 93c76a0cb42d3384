import { EngineError } from '../base/error.ts';
import { say } from '../words/en/pullorder/pullorder.ts';
import { MAX_PULLS_A_SHEET } from './model.ts';
import type { PlanProblem } from './types.ts';

/** Most sheets in one problem, alike or not. */
const MAX_SHEETS = 100_000;

/**
 * Refuses a problem that cannot be planned, naming sheet and pull counted from 1.
 * @throws EngineError 'pullorder.input' (not the stated shape), 'pullorder.overlap' (positions out
 *   of range or not a < b), 'pullorder.too-large'
 */
export function checkProblem(problem: PlanProblem): void {
  const sheets: unknown = (problem as { sheets?: unknown } | null | undefined)?.sheets;
  if (!Array.isArray(sheets)) throw input(say.problemMustHaveList, ['sheets']);
  if (sheets.length > MAX_SHEETS) {
    throw new EngineError('pullorder.too-large', say.visitHasSheetsMore(sheets.length, MAX_SHEETS), {
      path: ['sheets'],
    });
  }
  sheets.forEach((sheet: unknown, s) => checkSheet(sheet, s));
}

function checkSheet(sheet: unknown, s: number): void {
  const { pulls, overlaps } = (sheet ?? {}) as { pulls?: unknown; overlaps?: unknown };
  const where = `Sheet ${s + 1}`;
  if (!Array.isArray(pulls)) throw input(say.mustHaveListOf(where), ['sheets', s, 'pulls']);
  if (!Array.isArray(overlaps)) throw input(say.mustHaveListOfOverlaps(where), ['sheets', s, 'overlaps']);
  if (pulls.length > MAX_PULLS_A_SHEET) {
    throw new EngineError('pullorder.too-large', say.hasPullsMoreThan(where, pulls.length, MAX_PULLS_A_SHEET), {
      path: ['sheets', s, 'pulls'],
    });
  }
  pulls.forEach((pull: unknown, p) => {
    const { screen, ink, offset } = (pull ?? {}) as Record<string, unknown>;
    const ok = typeof screen === 'string' && typeof ink === 'string' && (offset === undefined || typeof offset === 'string');
    if (!ok) throw input(say.pullMustNameIts(where, p + 1), ['sheets', s, 'pulls', p]);
  });
  overlaps.forEach((pair: unknown, i) => {
    const [a, b] = Array.isArray(pair) && pair.length === 2 ? (pair as unknown[]) : [];
    const ok =
      Number.isInteger(a) && Number.isInteger(b) && (a as number) >= 0 && (a as number) < (b as number) && (b as number) < pulls.length;
    if (!ok) {
      throw new EngineError(
        'pullorder.overlap',
        say.overlapIsGiveTwo({ where, i: i + 1, a: String(a), b: String(b), pulls: pulls.length - 1 }),
        { path: ['sheets', s, 'overlaps', i] },
      );
    }
  });
}

function input(message: string, path: (string | number)[]): EngineError {
  return new EngineError('pullorder.input', message, { path });
}
