import { defined, entryAt, num } from '../../../engine/base/at.ts';
import { MEASURES } from '../../../engine/explore/measure/variant-measures.ts';
import type { Variant } from '../../../engine/explore/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { numberLocale } from '../../../engine/words/language.ts';
import { wallTools } from '../../../workers/client/client.ts';
import type { PlanSpec } from '../../canvas/plan/wall-plan.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/wall/hang.ts';
import { type MeasureKey, PrintFacts } from '../print/print-facts.ts';
import { originOf } from '../run/wall-origins.ts';
import { placeAlong } from './measure-axis.ts';
import { TasteHang } from './taste-hang.ts';

/** How the prints are to hang. */
export interface HangChoice {
  way: 'number' | 'taste' | 'measures' | 'likeness' | 'related' | 'pulls' | 'inks';
  across: MeasureKey;
  upwards: MeasureKey;
  ranks: boolean;
  /** As one chooses: from −100, what one never chooses first, to 100, and of a hundred places those for what is open. */
  towards: number;
  unsure: number;
}

/** Least and greatest that is shown of a measure. */
export type Ranges = ReadonlyMap<MeasureKey, readonly [number, number]>;

export const BY_NUMBER: HangChoice = {
  way: 'number',
  across: 'coverage',
  upwards: 'edgeContrast',
  ranks: true,
  towards: 100,
  unsure: 20,
};

/** Which prints hang, and where: the choice, the filter, and what is known of the prints. */
export class Hanging {
  choice: HangChoice = BY_NUMBER;
  ranges: Ranges = new Map();
  /** Prints that stay first and are shown whatever the filter says. */
  pinned: ReadonlySet<number> = new Set();
  facts = new PrintFacts();
  /** Where prints hang alike side by side, by the first of them. */
  private readonly likeness = new WeakMap<Variant, Float32Array>();
  readonly taste = new TasteHang();
  private readonly embedding = new Work<Float32Array>(null);

  /** Forgets the prints; what was chosen stays for the next. */
  clear(): void {
    this.facts.clear();
    this.pinned = new Set();
    this.stop();
  }

  /** Forgets the prints as `clear`, and gives what was known of them. */
  putAside(): PrintFacts {
    const { facts } = this;
    this.facts = new PrintFacts();
    this.clear();
    return facts;
  }

  stop(): void {
    this.embedding.stop();
    this.taste.stop();
  }

  /** Whether all prints hang in the order in which they were found. */
  get plain(): boolean {
    return this.choice.way === 'number' && this.ranges.size === 0 && this.pinned.size === 0;
  }

  passes(index: number): boolean {
    if (this.pinned.has(index)) return true;
    const measures = this.facts.measures[index];
    if (measures === undefined) return this.ranges.size === 0;
    for (const [key, [low, high]] of this.ranges) if (measures[key] < low || measures[key] > high) return false;
    return true;
  }

  /** The prints that hang, by number. */
  shown(count: number): number[] {
    const found: number[] = [];
    for (let index = 0; index < count; index++) if (this.passes(index)) found.push(index);
    return found;
  }

  /**
   * Works out where the prints hang.
   * @param onProgress gets the share that is done when it takes a while
   * @returns null when something else was asked for meanwhile
   */
  async spec(variants: readonly Variant[], studio: Studio, onProgress: (share: number) => void): Promise<PlanSpec | null> {
    this.stop();
    const { choice } = this;
    if (this.plain) return { kind: 'rows', sequence: null };
    const shown = this.shown(variants.length);
    const pinnedFirst = [...this.pinned, ...shown.filter((index) => !this.pinned.has(index))];
    if (choice.way === 'number') return { kind: 'rows', sequence: pinnedFirst };
    if (choice.way === 'taste') {
      const sequence = await this.taste.arrange(this.facts, shown, choice);
      if (sequence === null) return null;
      return { kind: 'rows', sequence: [...this.pinned, ...sequence.filter((index) => !this.pinned.has(index))] };
    }
    if (choice.way === 'pulls' || choice.way === 'inks') return { kind: 'groups', groups: this.groups(pinnedFirst, choice.way) };
    if (choice.way === 'related') {
      const { familiesOf } = await import('../../../engine/recipe/prints/families.ts');
      const related = pinnedFirst.map((place) => {
        const variant = entryAt(variants, place);
        return { variant, origin: originOf(variant), place };
      });
      return { kind: 'groups', groups: familiesOf(related, studio) };
    }
    if (choice.way === 'measures') return this.byMeasures(variants.length, shown);
    const places = await this.alike(variants, onProgress);
    if (places === null) return null;
    const along = (axis: number) => Float32Array.from({ length: variants.length }, (_, index) => num(places, index * 2 + axis));
    return { kind: 'map', x: along(0), y: along(1), xAxis: null, yAxis: null, shown: new Set(shown) };
  }

  private groups(prints: readonly number[], by: 'pulls' | 'inks') {
    const found = new Map<number, number[]>();
    for (const index of prints) {
      const value = this.facts.measures[index]?.[by] ?? 0;
      const group = found.get(value);
      if (group === undefined) found.set(value, [index]);
      else group.push(index);
    }
    return [...found]
      .sort(([a], [b]) => a - b)
      .map(([value, group]) => ({
        title: `${by === 'pulls' ? say.pulls(value) : say.inks(value)}: ${group.length.toLocaleString(numberLocale())}`,
        prints: group,
      }));
  }

  private byMeasures(count: number, shown: readonly number[]): PlanSpec {
    const { across, upwards, ranks } = this.choice;
    const along = (key: MeasureKey) => {
      const words = defined(MEASURES.find((each) => each.key === key));
      return placeAlong(this.facts.column(key, count), words, ranks);
    };
    const x = along(across);
    const y = along(upwards);
    return { kind: 'map', x: x.places, y: y.places, xAxis: x.axis, yAxis: y.axis, shown: new Set(shown) };
  }

  private async alike(variants: readonly Variant[], onProgress: (share: number) => void): Promise<Float32Array | null> {
    const first = entryAt(variants, 0);
    const { seed } = first;
    const known = this.likeness.get(first);
    if (known?.length === variants.length * 2) return known;
    const { points, dimensions } = this.facts.points(Array.from(variants.keys()));
    let places: Float32Array | null = null;
    let failure: unknown = null;
    await this.embedding.start(async (control) => {
      onProgress(0);
      try {
        places = await wallTools().embed({ points, dimensions, seed }, { signal: control.signal, onProgress });
      } catch (error) {
        failure = error;
      }
      return places;
    });
    if (failure !== null) throw failure;
    if (places !== null) this.likeness.set(first, places);
    return places;
  }
}
