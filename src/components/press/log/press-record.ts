import type { VisitHead } from '../../../engine/log/types.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import type { AppStore } from '../../app-store.ts';
import type { MadePlan } from '../../output/made-plan.ts';

/** Rises whenever a kept plan of an older build can no longer be shown. */
const RECORD_VERSION = 3;

/** A pull order and the visit that it belongs to, as the press left them. */
export interface PressRecord {
  made: MadePlan;
  /** Its log is kept apart, event by event. */
  head: VisitHead;
}

/**
 * Reads back what was kept.
 * @param parts as `recordParts` gave them, or anything else
 * @param recipes the project's; the kept plan uses them where they are still the same, so that it
 *   counts as out of date only when something changed
 * @returns null when nothing was kept or it is of another build
 */
export function readRecord(parts: Record<string, unknown>, recipes: readonly Recipe[]): PressRecord | null {
  const { made, head, version } = parts;
  if (version !== RECORD_VERSION || made === null || typeof made !== 'object' || head === null || typeof head !== 'object') return null;
  const kept = made as MadePlan;
  const visit = head as VisitHead;
  const byText = new Map(recipes.map((recipe) => [JSON.stringify(recipe), recipe]));
  const same = (recipe: Recipe): Recipe => {
    const text = JSON.stringify(recipe);
    const known = byText.get(text) ?? recipe;
    byText.set(text, known);
    return known;
  };
  return {
    made: {
      plan: kept.plan,
      input: { ...kept.input, runs: kept.input.runs.map((run) => ({ ...run, recipe: same(run.recipe) })) },
      recipes: kept.recipes.map(same),
    },
    head: { ...visit, recipes: visit.recipes.map(same) },
  };
}

/** Keeps the pull order beside the project, so that a visit outlives a reload. */
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

  keep(made: MadePlan | null, head: VisitHead | null): void {
    this.write({ version: RECORD_VERSION, made, head });
  }

  private write(parts: Record<string, unknown>): void {
    const saved = this.store.saver.savePress?.(parts);
    saved?.catch(() => this.tell('The pull order could not be kept in this browser; print the pull sheet and tick on paper.'));
  }
}
