import { defined, entryAt, i32, num } from '../base/at.ts';
import { stepCost, unpackCost, type Compiled } from './model.ts';
import type { PlanProblem, PullPlan } from './types.ts';

/** Writes words out as plans of one problem. */
export type Printer = (word: readonly number[]) => Omit<PullPlan, 'bound'>;

/**
 * Prepares a problem for writing plans out. A printed word of kinds is a plan in which every set-up
 * takes, on each sheet, every pull of its kind whose turn had come when the set-up began. Printing
 * at once never costs more than waiting: what can follow one set of printed pulls can also follow
 * any larger one.
 * @returns a function from words to plans without bounds; set-ups that print nothing are left out
 */
export function printerOf(problem: PlanProblem, compiled: Compiled): Printer {
  const { names, kindModel } = compiled;
  const kindOf = new Map(names.map((n, i) => [JSON.stringify([n.screen, n.ink, n.offset]), i]));
  const sheets = problem.sheets.map((sheet) => {
    const missing = new Int32Array(sheet.pulls.length);
    const succs: number[][] = sheet.pulls.map(() => []);
    for (const [a, b] of sheet.overlaps) {
      entryAt(succs, a).push(b);
      missing[b] = i32(missing, b) + 1;
    }
    const kinds = sheet.pulls.map((p) => defined(kindOf.get(JSON.stringify([p.screen, p.ink, p.offset ?? '']))));
    return { missing, succs, kinds };
  });
  return (word) => {
    // Ready pulls by kind, so that each set-up looks only at what it prints.
    const ready: [number, number][][] = names.map(() => []);
    const missing = sheets.map((sheet) => sheet.missing.slice());
    sheets.forEach(({ kinds }, s) => {
      for (let p = 0; p < kinds.length; p++) if (entryAt(missing, s)[p] === 0) entryAt(ready, num(kinds, p)).push([s, p]);
    });
    const setUps: PullPlan['setUps'] = [];
    let last = -1;
    let cost = 0;
    for (const kind of word) {
      const pulls = entryAt(ready, kind);
      if (pulls.length === 0) continue;
      ready[kind] = [];
      for (const [s, p] of pulls) {
        const { succs, kinds } = entryAt(sheets, s);
        const waits = entryAt(missing, s);
        for (const next of entryAt(succs, p)) {
          waits[next] = i32(waits, next) - 1;
          if (waits[next] === 0) entryAt(ready, num(kinds, next)).push([s, next]);
        }
      }
      pulls.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
      setUps.push({ ...entryAt(names, kind), pulls });
      cost += stepCost(kindModel, last, kind);
      last = kind;
    }
    const { mounts, inkChanges, registerMoves } = unpackCost(cost);
    return { setUps, mounts, inkChanges, registerMoves };
  };
}
