import { Describer, type Look } from '../look/descriptor.ts';
import { rearranged } from '../places/asked.ts';
import type { ExploreInput, Variant } from '../types.ts';
import { Finder } from './finder.ts';

/** The first attempt at a candidate, with what it looks like. */
export interface FirstDraw {
  variant: Variant;
  look: Look;
}

/**
 * Draws first attempts at candidates, apart from the search that takes them: any number of these, on
 * any machine, draw the same for the same input, so that a search may have them drawn elsewhere.
 */
export class FirstDraws {
  private readonly finder: Finder;
  private readonly describer: Describer;

  /** @throws EngineError as Finder, when the input contradicts itself */
  constructor(input: ExploreInput) {
    this.finder = new Finder(input);
    this.describer = new Describer(input.drawer, rearranged(input.explore));
  }

  /** @returns null when the attempt came to nothing */
  of(candidate: number): FirstDraw | null {
    return firstDraw(this.finder, this.describer, candidate);
  }
}

/** The same by a finder and a describer of one input. */
export function firstDraw(finder: Finder, describer: Describer, candidate: number): FirstDraw | null {
  const variant = finder.draw(candidate, 0);
  return variant === null ? null : { variant, look: describer.look(variant.pulls) };
}
