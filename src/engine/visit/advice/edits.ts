import { defined, entryAt } from '../../base/at.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import { swatchLab } from '../../ink/film/swatch.ts';
import type { Ink, Lab } from '../../ink/types.ts';
import type { Recipe } from '../../recipe/types.ts';
import { recipeOf, studioOfRecipe } from '../../recipe/write.ts';
import type { Pull } from '../../stack/types.ts';
import { inkId, stocksOfInk, withInk } from '../lent/borrowed-ink.ts';
import { type Lay, Lays, layOfText, layText } from '../problem/lays.ts';
import { registerRecipes, type Registry } from '../registry.ts';
import { wholeFigures } from '../visit-figures.ts';
import type { VisitRunInput } from '../visit-problem.ts';
import type { VisitInput } from '../visit.ts';

/** A change to a visit that a printer would think of. Screens are named as in the visit; null means all of them. */
export type Edit =
  | { kind: 'ink'; screen: string | null; /** In so many of its commonest inks, others as the nearest of these; absent = 1. */ most?: 2 }
  | { kind: 'offset'; /** At its commonest offset alone. */ screen: string | null }
  | { kind: 'snap' /** Offsets that the table cannot tell apart, drawn as one. */ }
  | { kind: 'strokes' /** One stroke where there were several. */ }
  | { kind: 'sheets'; /** Of all runs of the visit. */ run: number; fewer: number }
  | { kind: 'beds'; beds: number }
  | { kind: 'days'; days: number }
  | { kind: 'night' /** Set-ups that are put off to the next morning, begun the evening before. */ };

/** What most sheets of a screen are pulled with. */
export interface Commonest {
  /** All that it has in the visit, by how many sheets have them, most first. */
  inks: Ink[];
  lay: Lay;
  /** How many offsets it has in the visit. */
  lays: number;
}

/** A visit's runs that print anything, the frames and buckets they share, and what each frame mostly does. */
export class VisitHabits {
  readonly input: VisitInput;
  readonly used: VisitRunInput[];
  readonly registry: Registry;
  readonly commonest: ReadonlyMap<string, Commonest>;
  readonly lays: Lays;

  constructor(input: VisitInput) {
    this.input = input;
    this.used = input.runs.filter((run) => run.sheets > 0);
    this.registry = registerRecipes(this.used.map((run) => run.recipe));
    const all = this.used.flatMap(({ recipe, sheets }, r) =>
      recipe.pulls.map((pull) => ({ screen: this.screenOf(r, pull), lay: pull, sheets, ink: this.inkOf(r, pull) })),
    );
    this.lays = new Lays(all, wholeFigures(input.press).registrationMm);
    const inks = new Map(this.registry.inks.map(({ key, ink }) => [key, ink]));
    this.commonest = new Map(
      this.registry.screens.map(({ key }) => {
        const own = all.filter(({ screen }) => screen === key);
        const byInk = counted(own.map(({ ink, sheets }) => [ink, sheets]));
        const byLay = counted(own.map(({ lay, sheets }) => [layText(lay), sheets]));
        const most = byInk.map((name) => defined(inks.get(name)));
        return [key, { inks: most, lay: layOfText(entryAt(byLay, 0)), lays: byLay.length }];
      }),
    );
  }

  screenOf(r: number, pull: Pull): string {
    return defined(entryAt(this.registry.screenKey, r).get(pull.screen));
  }

  inkOf(r: number, pull: Pull): string {
    return defined(entryAt(this.registry.inkKey, r).get(pull.ink));
  }

  /** The recipe of a used run after edits, under a name of its own; the same object where they change nothing of it. */
  recipeAfter(r: number, edits: readonly Edit[], name: string): Recipe {
    const { recipe } = entryAt(this.used, r);
    let { inks } = recipe;
    const carried = (ink: Ink): string => {
      inks = withInk(
        inks,
        ink,
        stocksOfInk(
          ink,
          this.used.map((run) => run.recipe),
        ),
      );
      return inkId(ink, inks).id;
    };
    const pulls = recipe.pulls.map((pull) => this.pullAfter(r, pull, edits, carried));
    if (pulls.every((pull, at) => pull === recipe.pulls[at])) return recipe;
    const { id, title, note } = recipe;
    return recipeOf(pulls, studioOfRecipe({ ...recipe, inks }), { id: `${id} ${name}`, title: `${title}, ${name}`, note, parent: id });
  }

  private pullAfter(r: number, pull: Pull, edits: readonly Edit[], carried: (ink: Ink) => string): Pull {
    const screen = this.screenOf(r, pull);
    const most = defined(this.commonest.get(screen));
    let after = pull;
    const change = (to: Partial<Pull>): void => {
      if (Object.entries(to).some(([key, value]) => after[key as keyof Pull] !== value)) after = { ...after, ...to };
    };
    for (const edit of edits) {
      const here = 'screen' in edit && (edit.screen === null || edit.screen === screen);
      if (edit.kind === 'ink' && here) {
        const kept = most.inks.slice(0, edit.most ?? 1);
        const key = this.inkOf(r, pull);
        if (kept.every((ink) => this.keyOf(ink) !== key)) change({ ink: carried(this.nearest(r, pull, kept)) });
      }
      if (edit.kind === 'offset' && here) change(most.lay);
      if (edit.kind === 'snap') change(layOfText(this.lays.textOf(screen, pull)));
      if (edit.kind === 'strokes') change({ strokes: 1 });
    }
    return after;
  }

  /** The ink of some that comes nearest to a pull's own on the paper. */
  private nearest(r: number, pull: Pull, inks: readonly Ink[]): Ink {
    const { paper, inks: own } = entryAt(this.used, r).recipe;
    const on = (ink: Ink): Lab => swatchLab(ink, paper.reflectance);
    const was = on(defined(own.find(({ id }) => id === pull.ink)));
    const far = new Map(inks.map((ink) => [ink, deltaE2000(was, on(ink))]));
    return inks.reduce((a, b) => (defined(far.get(b)) < defined(far.get(a)) ? b : a));
  }

  private keyOf(ink: Ink): string | undefined {
    return this.registry.inks.find((each) => each.ink === ink)?.key;
  }

  /** The visit after edits, recipes that changed under ids of their own; all but the night, which is no matter of what is printed. */
  inputAfter(edits: readonly Edit[], name: string): VisitInput {
    let r = -1;
    const runs = this.input.runs.map((run, at): VisitRunInput => {
      if (run.sheets === 0) return run;
      r++;
      const recipe = this.recipeAfter(r, edits, name);
      const fewer = edits.reduce((sum, edit) => (edit.kind === 'sheets' && edit.run === at ? sum + edit.fewer : sum), 0);
      return fewer === 0 && recipe === run.recipe ? run : { ...run, recipe, sheets: run.sheets - fewer };
    });
    const press = { ...this.input.press };
    for (const edit of edits) {
      if (edit.kind === 'beds') press.beds = edit.beds;
      if (edit.kind === 'days') press.days = edit.days;
    }
    const { atHand: _plan, longer: _longer, ...rest } = this.input;
    return { ...rest, runs, press };
  }
}

/** Names by how often they come, most first; of equals the lesser name. */
function counted(all: readonly (readonly [string, number])[]): string[] {
  const counts = new Map<string, number>();
  for (const [name, count] of all) counts.set(name, (counts.get(name) ?? 0) + count);
  return [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)).map(([name]) => name);
}
