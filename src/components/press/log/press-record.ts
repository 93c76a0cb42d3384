import type { VisitHead } from '../../../engine/log/types.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import type { AppStore } from '../../app-store.ts';
import { digestOf, orderParts, RECORD_VERSION } from '../../keep/order-parts.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { say } from '../../words/en/press/log.ts';

const UNREADABLE = say.pullOrderThatWas;

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
 * @returns null when nothing was kept, or what cannot be read
 */
export function readRecord(parts: Record<string, unknown>, recipes: readonly Recipe[]): PressRecord | null {
  const { version } = parts;
  const kept = parts['made'] as MadePlan | null | undefined;
  const visit = parts['head'] as VisitHead | null | undefined;
  const lists = [kept?.plan?.cards, kept?.input?.runs, kept?.recipes, visit?.recipes, visit?.sheets];
  if (version !== RECORD_VERSION || !kept || !visit || !lists.every(Array.isArray)) return null;
  // Orders kept before had none.
  if (parts['digest'] !== undefined && parts['digest'] !== digestOf(kept, visit)) return null;
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

/** Whether an order was kept at all: a project without one leaves both of its parts empty. */
function somethingKept({ made, head }: Record<string, unknown>): boolean {
  return (made ?? null) !== null || (head ?? null) !== null;
}

/** Keeps the pull order beside the project, so that a visit outlives a reload. */
export class PressKeeper {
  private readonly store: AppStore;
  private readonly tell: (sentence: string) => void;

  /** @param tell hears why the pull order could not be kept or read */
  constructor(store: AppStore, tell: (sentence: string) => void) {
    this.store = store;
    this.tell = tell;
  }

  /** The order as it was kept; null when none was, or, which is told, when it cannot be read. */
  async read(): Promise<PressRecord | null> {
    try {
      const parts = (await this.store.saver.openPress?.()) ?? {};
      const record = readRecord(parts, this.store.project.recipes);
      if (record === null && somethingKept(parts)) this.tell(UNREADABLE);
      return record;
    } catch {
      this.tell(UNREADABLE);
      return null;
    }
  }

  keep(made: MadePlan | null, head: VisitHead | null): void {
    this.write(orderParts(made, head));
  }

  private write(parts: Record<string, unknown>): void {
    const saved = this.store.saver.savePress?.(parts);
    saved?.catch(() => this.tell(say.pullOrderCouldNot));
  }
}
