import type { SheetAsPulled } from '../as-pulled.ts';
import { standing } from '../events.ts';
import type { LogEvent } from '../types.ts';
import { type FoundFigure, foundFigure, median } from './found-figure.ts';

/** Ticks in one go say when somebody ticked, not how long a pull takes. */
const LEAST_TICKS = 4;
/** A longer pause was no pull: lunch, a talk, a screen to clean. */
const LONGEST_PULL_MS = 15 * 60_000;
/** Quicker than anybody pulls by hand: sheets ticked together. */
const SHORTEST_PULL_MS = 10_000;

/** Pulls that follow each other with one screen in one ink. */
interface Run {
  kind: string;
  /** When the last was ticked. */
  lastMs: number;
  /** From tick to tick, what further strokes take left out. */
  gaps: number[];
}

/**
 * How many pulls of one stroke an hour were made, by the times of the ticks: in each run of one screen in
 * one ink the middle of the times from sheet to sheet, pauses left out.
 * @param sheets as pulled, by whose pulls a tick's screen and ink are known
 * @param strokeSeconds what each further stroke of a pull takes
 * @returns null where no set-up was ticked sheet by sheet
 */
export function pullsAnHour(sheets: readonly SheetAsPulled[], events: readonly LogEvent[], strokeSeconds = 0): FoundFigure | null {
  const bySheet = new Map(sheets.map((sheet) => [sheet.number, sheet]));
  const runs: Run[] = [];
  for (const event of standing(events)) {
    if (!('pulls' in event)) continue;
    const pull = pullOf(event.pulls, bySheet.get(event.sheet));
    const kind = pull === undefined ? '' : JSON.stringify([pull.screen, pull.ink]);
    const last = runs.at(-1);
    if (last?.kind === kind) {
      const gap = event.atMs - last.lastMs;
      if (gap >= SHORTEST_PULL_MS && gap <= LONGEST_PULL_MS) last.gaps.push(gap - 1000 * strokeSeconds * ((pull?.strokes ?? 1) - 1));
      last.lastMs = event.atMs;
    } else runs.push({ kind, lastMs: event.atMs, gaps: [] });
  }
  const told = runs.map(({ gaps }) => gaps.filter((gap) => gap > 0)).filter((gaps) => gaps.length >= LEAST_TICKS - 1);
  return foundFigure(told.map((gaps) => 3_600_000 / median(gaps)));
}

/** The pull that a tick tells of; undefined where nobody knows. */
function pullOf(ids: readonly string[], sheet: SheetAsPulled | undefined): SheetAsPulled['pulls'][number] | undefined {
  return sheet?.pulls.find(({ id }) => ids.some((each) => id === each || id.startsWith(`${each}~`)));
}
