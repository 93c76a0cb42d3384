import type { Recipe } from '../../engine/recipe/types.ts';
import type { AppStore } from '../app-store.ts';
import type { MadePlan } from './plan-run.ts';

/** Rises whenever a kept plan of an older build can no longer be shown. */
const RECORD_VERSION = 1;

/** A pull order and which of its pulls are done, as the press left them. */
export interface PressRecord {
  made: MadePlan;
  /** Keys as `tickKey` gives them. */
  ticked: string[];
}

/**
 * Reads back what was kept.
 * @param parts as `recordParts` gave them, or anything else
 * @param recipes the project's; the kept plan uses them where they are still the same, so that it
 *   counts as out of date only when something changed
 * @returns null when nothing was kept or it is of another build
 */
export function readRecord(parts: Record<string, unknown>, recipes: readonly Recipe[]): PressRecord | null {
  const { made, ticks, version } = parts;
  if (version !== RECORD_VERSION || made === null || typeof made !== 'object') return null;
  const kept = made as MadePlan;
  const same = new Map<string, Recipe>();
  for (const recipe of kept.recipes) {
    const now = recipes.find((other) => other.id === recipe.id);
    same.set(recipe.id, now !== undefined && JSON.stringify(now) === JSON.stringify(recipe) ? now : recipe);
  }
  return {
    made: {
      plan: kept.plan,
      input: { ...kept.input, runs: kept.input.runs.map((run) => ({ ...run, recipe: same.get(run.recipe.id) ?? run.recipe })) },
      recipes: kept.recipes.map((recipe) => same.get(recipe.id)!),
    },
    ticked: Array.isArray(ticks) ? ticks.filter((tick) => typeof tick === 'string') : [],
  };
}

/** Keeps the pull order and its ticks beside the project, so that a visit outlives a reload. */
export class PressKeeper {
  private readonly store: AppStore;
  private readonly tell: (sentence: string) => void;

  /** @param tell hears why the pull order could not be kept */
  constructor(store: AppStore, tell: (sentence: string) => void) {
    this.store = store;
    this.tell = tell;
  }

  async read(): Promise<PressRecord | null> {
    try {
      return readRecord((await this.store.saver.openPress?.()) ?? {}, this.store.project.recipes);
    } catch {
      // Where nothing can be kept, the project's own saving says so.
      return null;
    }
  }

  keep(made: MadePlan | null): void {
    this.write({ version: RECORD_VERSION, made, ticks: [] });
  }

  keepTicks(ticked: ReadonlySet<string>): void {
    this.write({ ticks: [...ticked] });
  }

  private write(parts: Record<string, unknown>): void {
    const saved = this.store.saver.savePress?.(parts);
    saved?.catch(() => this.tell('The ticks could not be kept in this browser; print the pull sheet and tick on paper.'));
  }
}
