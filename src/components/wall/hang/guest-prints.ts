import type { Variant } from '../../../engine/explore/types.ts';
import type { Pin } from '../../../engine/recipe/prints/pinned-prints.ts';
import { pinnedPlaces } from '../../../engine/recipe/prints/pinned-prints.ts';
import type { WallBatch } from '../../../workers/api/wall-api.ts';
import { say } from '../../words/en/wall/hang.ts';
import type { SceneHolder } from '../surface/scene-holder.ts';
import type { Hanging } from './hanging.ts';

/** Which prints of a wall are pinned, and the pinned prints of other walls that hang after its own. */
export class GuestPrints {
  private readonly hanging: Hanging;
  private readonly holder: SceneHolder;
  /** From here on hang pinned prints of other walls; −1 when none do. */
  private from = -1;

  constructor(hanging: Hanging, holder: SceneHolder) {
    this.hanging = hanging;
    this.holder = holder;
  }

  /** Whether a print was found on another wall and is only pinned to this one. */
  has(place: number): boolean {
    return this.from >= 0 && place >= this.from;
  }

  /** How many of the prints that hang are the wall's own. */
  own(found: number): number {
    return this.from < 0 ? found : this.from;
  }

  /** Hangs pinned prints of other walls after the wall's own. */
  add(batch: WallBatch): void {
    const [first] = batch.tiles;
    if (first === undefined) return;
    if (this.from < 0) this.from = first.variant.index;
    this.hanging.facts.add(batch);
    this.holder.with((scene) => {
      scene.add(batch);
      scene.lay(batch.found);
    });
  }

  /** Makes room where pinned prints of other walls hang; they are hung again when the wall stands. */
  forget(): void {
    this.hanging.pinned = new Set();
    this.holder.with((scene) => scene.setPinned(this.hanging.pinned));
    if (this.from < 0) return;
    const { facts } = this.hanging;
    facts.keys.length = Math.min(facts.keys.length, this.from);
    facts.measures.length = Math.min(facts.measures.length, this.from);
    this.from = -1;
    this.holder.with((scene) => scene.setNames(new Map()));
  }

  /**
   * Sees which prints are pinned.
   * @returns whether others are than before, and all must hang anew
   */
  follow(pins: readonly Pin[], variants: readonly Variant[]): boolean {
    const pinned = pinnedPlaces(pins, variants);
    if ([...pinned].join() === [...this.hanging.pinned].join()) return false;
    this.hanging.pinned = pinned;
    this.holder.with((scene) => scene.setPinned(pinned));
    this.name(variants);
    return true;
  }

  /** Prints of other walls have numbers of other walls. */
  private name(variants: readonly Variant[]): void {
    const guests = this.from < 0 ? [] : variants.slice(this.from);
    const names = new Map(
      guests.map((_, i): [number, string] => [this.from + i, this.hanging.pinned.has(this.from + i) ? say.pinned : say.otherWall]),
    );
    this.holder.with((scene) => scene.setNames(names));
  }
}
