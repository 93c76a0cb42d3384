import type { TasteChoice } from '../../../engine/explore/taste/choices.ts';
import { KeptPrints } from '../../../engine/recipe/prints/kept-prints.ts';
import { togglePin } from '../../../engine/recipe/prints/pinned-prints.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import type { AppStore } from '../../app-store.ts';
import { say } from '../../words/en/wall/print.ts';
import { lineageOf } from '../run/wall-origins.ts';
import type { WallRun } from '../run/wall-run.ts';
import { variantRecipe } from './variant-recipe.ts';

/** What is done with a print of the wall by its number: kept, pinned, opened on the Bench. */
export class PrintDeeds {
  private readonly store: () => AppStore;
  private readonly run: () => WallRun;
  private readonly keptPrints = new KeptPrints();

  constructor(store: () => AppStore, run: () => WallRun) {
    this.store = store;
    this.run = run;
  }

  /** Numbers of the prints that are in the Chest. */
  kept(recipes: readonly Recipe[]): ReadonlySet<number> {
    return this.keptPrints.of(this.run().variants, recipes);
  }

  /** Pins a print, or takes its pin out. @param taught what it says of one's taste */
  pin(place: number, taught: readonly TasteChoice[]): void {
    const store = this.store();
    const variant = this.run().variants[place];
    if (variant === undefined) return;
    const { key, pulls } = variant;
    const pins = togglePin(store.project.pins ?? [], { key, pulls, lineage: lineageOf(variant) });
    store.dispatch({ kind: 'set-pins', pins, taught: pins.some((pin) => pin.key === key) ? taught : [] });
  }

  /** Keeps a print in the Chest; one that is there already is told of. @param taught what it says of one's taste */
  keep(place: number, taught: readonly TasteChoice[]): void {
    const store = this.store();
    const { variants, hung } = this.run();
    const variant = variants[place];
    if (variant === undefined || hung === null) return;
    if (this.kept(store.project.recipes).has(place)) {
      store.tell(say.printIsInChest(variant.index + 1), 'news');
      return;
    }
    try {
      store.dispatch({ kind: 'keep-recipe', recipe: variantRecipe(variant, hung.inputs.studio), taught });
    } catch (error) {
      store.refuse(sentenceOf(error), 'wall');
    }
  }

  /** Puts a print's pulls on the Bench, in place of what lies there. */
  open(place: number): void {
    const store = this.store();
    const variant = this.run().variants[place];
    if (variant !== undefined && store.dispatch({ kind: 'open-stack', pulls: variant.pulls, print: lineageOf(variant) })) store.go('bench');
  }
}
