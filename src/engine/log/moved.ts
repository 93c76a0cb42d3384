import { defined, entryAt } from '../base/at.ts';
import type { Recipe } from '../recipe/types.ts';
import { layText } from '../visit/problem/lays.ts';
import { registerRecipes } from '../visit/registry.ts';
import { standing } from './events.ts';
import type { LogEvent, VisitHead } from './types.ts';

type Replaced = Extract<LogEvent, { kind: 'replaced' }>;

/** A sheet that became one of another recipe when it took a spoiled one's place. */
export interface MovedSheet {
  /** The recipe that it is of since, index into the visit's. */
  recipe: number;
  /** What says so. */
  event: Replaced;
  /** For each id of its first recipe's pulls that was on it, that of the same pull in the other. */
  ids: ReadonlyMap<string, string>;
  /** Ids of the events that tell of it in the words of its first recipe. */
  before: ReadonlySet<string>;
}

/**
 * Finds pulls of one recipe in another: the same screen, ink, offset and strokes on the same paper.
 * @param ids of the first recipe's pulls, each once, as they were printed
 * @returns their positions in the other, or null when one is not there
 */
export function samePulls(one: Recipe, ids: readonly string[], other: Recipe): number[] | null {
  const { paper } = one;
  if (paper.widthMm !== other.paper.widthMm || paper.heightMm !== other.paper.heightMm || paper.name !== other.paper.name) return null;
  const { screenKey, inkKey } = registerRecipes([one, other]);
  const kind = (r: number, pull: Recipe['pulls'][number]): string =>
    JSON.stringify([entryAt(screenKey, r).get(pull.screen), entryAt(inkKey, r).get(pull.ink), layText(pull), pull.strokes]);
  const kinds = other.pulls.map((pull) => kind(1, pull));
  const taken = new Set<number>();
  const found = ids.map((id) => {
    const pull = one.pulls.find((each) => each.id === id);
    const at = pull === undefined ? -1 : kinds.findIndex((each, i) => !taken.has(i) && each === kind(0, pull));
    taken.add(at);
    return at;
  });
  return found.includes(-1) ? null : found;
}

/** Ids of the pulls that were on a sheet as planned before something happened; null when one went otherwise. */
function idsBefore(own: readonly LogEvent[]): string[] | null {
  if (own.some(({ kind }) => kind === 'otherwise' || kind === 'spoiled' || kind === 'extra')) return null;
  return [...new Set(own.flatMap((event) => (event.kind === 'pulled' ? event.pulls : [])))];
}

/**
 * The sheets of a visit that are of another recipe than they were to become, since they took the place
 * of a sheet of that one with the same pulls on them.
 */
export function movedSheets(head: VisitHead, events: readonly LogEvent[]): Map<number, MovedSheet> {
  const recipeOf = new Map(head.sheets.map(({ number, recipe }) => [number, recipe]));
  const moved = new Map<number, MovedSheet>();
  const counts = standing(events);
  for (const event of counts) {
    if (event.kind !== 'replaced') continue;
    const [from, to] = [recipeOf.get(event.by), moved.get(event.sheet)?.recipe ?? recipeOf.get(event.sheet)];
    if (from === undefined || to === undefined || from === to || moved.has(event.by)) continue;
    const until = counts.findIndex(({ id }) => id === event.id);
    const own = counts.slice(0, until).filter(({ sheet }) => sheet === event.by);
    const ids = idsBefore(own);
    const found = ids === null ? null : samePulls(entryAt(head.recipes, from), ids, entryAt(head.recipes, to));
    if (ids === null || found === null) continue;
    const { pulls } = entryAt(head.recipes, to);
    const before = new Set(own.map(({ id }) => id));
    moved.set(event.by, { recipe: to, event, before, ids: new Map(ids.map((id, i) => [id, entryAt(pulls, defined(found[i])).id])) });
  }
  return moved;
}

/** The events of a moved sheet in the words of its other recipe. */
export function inOtherWords(events: readonly LogEvent[], { ids, before }: MovedSheet): LogEvent[] {
  return events.map((event) =>
    event.kind === 'pulled' && before.has(event.id) ? { ...event, pulls: event.pulls.map((id) => ids.get(id) ?? id) } : event,
  );
}
