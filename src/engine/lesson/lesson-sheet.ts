import { inkOfOpacity } from '../ink/mix/opacity.ts';
import type { Ink } from '../ink/types.ts';
import type { PictureLimits } from '../order/groups/order-difference.ts';
import type { Pull } from '../stack/types.ts';
import type { Studio } from '../studio/studio.ts';

/** An ink that a lesson makes clearer or more opaque than it is. */
export interface InkChange {
  ink: string;
  /** −1 clear to 1 opaque; see inkOfOpacity. */
  opacity: number;
}

/** All that a lesson is printed from. */
export interface LessonSheet {
  title: string;
  /** With its inks as they are. */
  studio: Studio;
  /** The pulls that are permuted, 2 to 6. */
  pulls: readonly Pull[];
  inks: readonly InkChange[];
  limits: PictureLimits;
}

const known = new WeakMap<readonly Ink[], { name: string; studio: Studio }>();

/**
 * The studio that a lesson prints from: that given, its changed inks as clear or opaque as they were made.
 * @returns the same object for the same studio and changes, as long as no others were asked for of its inks
 * @throws EngineError as inkOfOpacity
 */
export function lessonStudio(studio: Studio, changes: readonly InkChange[]): Studio {
  const real = changes.filter(({ ink, opacity }) => opacity !== 0 && studio.inks.some(({ id }) => id === ink));
  if (real.length === 0) return studio;
  const name = JSON.stringify(real);
  const before = known.get(studio.inks);
  if (before?.name === name && sameBut(before.studio, studio)) return before.studio;
  const ground = { reflectance: studio.paper.reflectance, surface: studio.surface };
  const inks = studio.inks.map((ink) => {
    const change = real.find((each) => each.ink === ink.id);
    return change === undefined ? ink : inkOfOpacity(ink, change.opacity, ground);
  });
  const made = { ...studio, inks };
  known.set(studio.inks, { name, studio: made });
  return made;
}

function sameBut(made: Studio, studio: Studio): boolean {
  return Object.entries(studio).every(([key, value]) => key === 'inks' || made[key as keyof Studio] === value);
}

/** The changes with one ink as clear or opaque as asked, and no others that change nothing. */
export function withOpacity(changes: readonly InkChange[], ink: string, opacity: number): InkChange[] {
  return [...changes.filter((each) => each.ink !== ink), ...(opacity === 0 ? [] : [{ ink, opacity }])];
}

/** How clear or opaque an ink was made; 0 where it is as it is. */
export function opacityOf(changes: readonly InkChange[], ink: string): number {
  return changes.find((each) => each.ink === ink)?.opacity ?? 0;
}
