import type { WantedPrint } from '../../../engine/explore/prepare/prepare.ts';
import type { Variant } from '../../../engine/explore/types.ts';
import type { Project } from '../../../engine/project/types.ts';
import { printTitle } from '../../../engine/recipe/lineage.ts';
import { KeptPrints } from '../../../engine/recipe/prints/kept-prints.ts';
import { pinnedPlaces } from '../../../engine/recipe/prints/pinned-prints.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import { say } from '../../words/en/wall/prepare.ts';
import { lineageOf } from '../run/wall-origins.ts';

/** Which prints one would like to pull. */
export interface Sources {
  selected: boolean;
  pinned: boolean;
  kept: boolean;
  wall: boolean;
}

/** The wall as it hangs, and what is selected of it. */
export interface HungPrints {
  variants: readonly Variant[];
  /** Places on the wall. */
  selected: ReadonlySet<number>;
}

function wanted(name: string, pulls: readonly Pull[], weight: number): WantedPrint {
  return { name, screens: pulls.map(({ screen }) => screen), inks: pulls.map(({ ink }) => ink), weight };
}

/**
 * The prints that are chosen. One counts once for each of selected, pinned and kept that it is, and once
 * when it is none. Kept prints that do not hang count where the drawer has their screens.
 */
export function chosenPrints(project: Pick<Project, 'pins' | 'recipes' | 'drawer'>, hung: HungPrints, sources: Sources): WantedPrint[] {
  const { variants, selected } = hung;
  const pinned = pinnedPlaces(project.pins ?? [], variants);
  const kept = new KeptPrints().of(variants, project.recipes);
  const seed = variants[0]?.seed;
  const prints = variants.flatMap((variant, place) => {
    const marks = { selected: selected.has(place), pinned: pinned.has(place), kept: kept.has(place), wall: true };
    if (!(['selected', 'pinned', 'kept', 'wall'] as const).some((mark) => marks[mark] && sources[mark])) return [];
    const weight = Number(marks.selected) + Number(marks.pinned) + Number(marks.kept);
    const name = variant.seed === seed ? say.no(variant.index + 1) : printTitle(lineageOf(variant));
    return [wanted(name, variant.pulls, Math.max(1, weight))];
  });
  if (!sources.kept) return prints;
  const screens = new Set(project.drawer.screens.map(({ id }) => id));
  const hangs = new Set(variants.map(({ id }) => id));
  const others = project.recipes.filter(
    ({ seed: from, index, pulls }) => !hangs.has(`${from}:${index}`) && pulls.every((pull) => screens.has(pull.screen)),
  );
  return [...prints, ...others.map(({ title, pulls }) => wanted(title, pulls, 1))];
}
