import { entryAt } from '../../base/at.ts';
import type { Pull } from '../../stack/types.ts';
import { Describer, type Descriptor } from '../look/descriptor.ts';
import { hash128 } from '../look/picture-key.ts';
import type { Explorer } from '../search/explorer.ts';
import { Finder } from '../search/finder.ts';
import type { TasteGuide } from '../taste/taste-guide.ts';
import type { DerivedKind, ExploreInput, Lineage, Variant } from '../types.ts';

/** What is to be found from which prints. */
export interface DerivedRequest {
  kind: DerivedKind;
  /** One print; two, first and second, for 'between' and 'cross'; for 'taste' those it likes, best first. */
  parents: readonly DerivedParent[];
  /** How many prints; for 'between' how many steps lie between the two, at most. */
  count: number;
  /** What is liked, for 'taste'. */
  taste?: TasteGuide | undefined;
}

/** A print that others are found from. */
export interface DerivedParent {
  id: string;
  pulls: readonly Pull[];
}

/** The seed of what comes from prints: it names them, and what was asked. */
function derivedSeed({ kind, parents, taste }: DerivedRequest): string {
  if (kind === 'taste') return tasteSeed(parents, taste);
  const first = entryAt(parents, 0).id;
  if (kind !== 'between' && kind !== 'cross') return `(${first}) ${kind}`;
  const second = entryAt(parents, 1).id;
  return kind === 'between' ? `(${first}) to (${second})` : `(${first}) × (${second})`;
}

/** Prints that a taste likes are many, and each may itself have come of many: only a short name of them all can stand in a seed. */
function tasteSeed(parents: readonly DerivedParent[], taste: TasteGuide | undefined): string {
  const choices = taste?.choices.map(({ way, chosen, over }) => [way, chosen.key, ...over.map(({ key }) => key)]);
  const { towards, unsure, relative } = taste ?? {};
  return `as chosen ${hash128(JSON.stringify([parents.map(({ id }) => id), choices, towards, unsure, relative]))}`;
}

/** What all ways of finding share. */
export abstract class Derived implements Explorer {
  abstract readonly asked: number;
  reason = '';
  found = 0;
  protected readonly input: ExploreInput;
  protected readonly request: DerivedRequest;
  protected readonly seed: string;
  protected readonly finder: Finder;
  protected readonly describer: Describer;
  protected readonly seen = new Set<string>();
  private readonly looks: Descriptor[] = [];

  /** @param composed as a Describer's */
  constructor(input: ExploreInput, request: DerivedRequest, composed = false) {
    this.seed = derivedSeed(request);
    this.input = { ...input, explore: { ...input.explore, seed: this.seed } };
    this.request = request;
    this.finder = new Finder(this.input);
    this.describer = new Describer(input.drawer, composed);
  }

  abstract step(draws: number): Variant[];

  get done(): boolean {
    return this.found >= this.asked || this.reason !== '';
  }

  lookOf(index: number): Descriptor | null {
    return this.looks[index] ?? null;
  }

  /**
   * The next print of the wall.
   * @param parents those that it comes from
   */
  protected hang({ pulls, key }: Variant, look: Descriptor, parents = this.request.parents): Variant {
    const lineage: Lineage = { kind: this.request.kind, parents: parents.map(({ id }) => id), seed: this.seed };
    const index = this.found++;
    this.looks.push(look);
    return { id: `${this.seed}:${index}`, seed: this.seed, index, pulls, key, lineage };
  }
}
