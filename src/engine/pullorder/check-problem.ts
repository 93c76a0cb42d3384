import { EngineError } from '../base/error.ts';
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
  if (!Array.isArray(sheets)) throw input('The problem must have a list of sheets.', ['sheets']);
  if (sheets.length > MAX_SHEETS) {
    throw new EngineError('pullorder.too-large', `The visit has ${sheets.length} sheets, more than ${MAX_SHEETS}: plan it in parts.`, {
      path: ['sheets'],
    });
  }
  sheets.forEach((sheet: unknown, s) => checkSheet(sheet, s));
}

function checkSheet(sheet: unknown, s: number): void {
  const { pulls, overlaps } = (sheet ?? {}) as { pulls?: unknown; overlaps?: unknown };
  const where = `Sheet ${s + 1}`;
  if (!Array.isArray(pulls)) throw input(`${where} must have a list of pulls.`, ['sheets', s, 'pulls']);
  if (!Array.isArray(overlaps)) throw input(`${where} must have a list of overlaps.`, ['sheets', s, 'overlaps']);
  if (pulls.length > MAX_PULLS_A_SHEET) {
    throw new EngineError('pullorder.too-large', `${where} has ${pulls.length} pulls, more than ${MAX_PULLS_A_SHEET}: split its stack.`, {
      path: ['sheets', s, 'pulls'],
    });
  }
  pulls.forEach((pull: unknown, p) => {
    const { screen, ink, offset } = (pull ?? {}) as Record<string, unknown>;
    const ok = typeof screen === 'string' && typeof ink === 'string' && (offset === undefined || typeof offset === 'string');
    if (!ok) throw input(`${where}, pull ${p + 1} must name its screen, ink and (or not) offset as text.`, ['sheets', s, 'pulls', p]);
  });
  overlaps.forEach((pair: unknown, i) => {
    const [a, b] = Array.isArray(pair) && pair.length === 2 ? (pair as unknown[]) : [];
    const ok =
      Number.isInteger(a) && Number.isInteger(b) && (a as number) >= 0 && (a as number) < (b as number) && (b as number) < pulls.length;
    if (!ok) {
      throw new EngineError(
        'pullorder.overlap',
        `${where}, overlap ${i + 1} is [${String(a)}, ${String(b)}]: give two positions, the earlier first, from 0 to ${pulls.length - 1}.`,
        { path: ['sheets', s, 'overlaps', i] },
      );
    }
  });
}

function input(message: string, path: (string | number)[]): EngineError {
  return new EngineError('pullorder.input', message, { path });
}
