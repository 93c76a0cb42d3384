import { cutText } from '../base/bounds.ts';
import type { Problem } from '../base/error.ts';
import type { Ink } from '../ink/types.ts';
import type { Screen, Shape } from '../shapes/types.ts';
import type { Pull } from '../stack/types.ts';
import { say } from '../words/en/recipe/recipe.ts';

interface Holder {
  shapes: readonly Shape[];
  screens: readonly Screen[];
  inks: readonly Ink[];
}

/** The first id that stands twice in a list. */
export function doubles(fileName: string, list: string, ids: readonly string[]): Problem[] {
  const seen = new Set<string>();
  for (const [i, id] of ids.entries()) {
    if (seen.has(id)) {
      return [
        {
          code: 'reference.double',
          message: say.idIsWhichEntry(fileName, list, i, cutText(id)),
          where: `${list}[${i}].id`,
        },
      ];
    }
    seen.add(id);
  }
  return [];
}

function unknown(fileName: string, where: string, id: string, list: string): Problem {
  return {
    code: 'reference.unknown',
    message: say.namesWhichIsNot(fileName, where, cutText(id), list),
    where,
  };
}

/**
 * Checks that screens name shapes, and mixes inks, that are there.
 * @returns one problem for each name that leads nowhere or stands twice
 */
export function checkHolder(holder: Holder, fileName: string): Problem[] {
  const lists = ['shapes', 'screens', 'inks'] as const;
  const problems = lists
    .flatMap((list) =>
      doubles(
        fileName,
        list,
        holder[list].map(({ id }) => id),
      ),
    )
    .concat(checkMixes(holder.inks, fileName));
  const shapes = new Set(holder.shapes.map((shape) => shape.id));
  for (const [s, screen] of holder.screens.entries()) {
    for (const [p, placed] of screen.placed.entries()) {
      if (!shapes.has(placed.shape)) {
        problems.push(unknown(fileName, `screens[${s}].placed[${p}].shape`, placed.shape, 'shapes'));
      }
    }
  }
  return problems;
}

/** Mixes are weighed from stock inks, so an ink in one must be there and be no mix itself. */
function checkMixes(inks: readonly Ink[], fileName: string): Problem[] {
  const known = new Map(inks.map((ink) => [ink.id, ink]));
  const problems: Problem[] = [];
  for (const [i, ink] of inks.entries()) {
    for (const [p, part] of (ink.mix ?? []).entries()) {
      const where = `inks[${i}].mix[${p}].ink`;
      const stock = known.get(part.ink);
      if (stock === undefined) problems.push(unknown(fileName, where, part.ink, 'inks'));
      else if (stock.mix !== undefined) {
        problems.push({
          code: 'reference.mix-of-mix',
          message: say.namesWhichIsItself(fileName, where, cutText(part.ink)),
          where,
        });
      }
    }
  }
  return problems;
}

/**
 * Checks that pulls name screens and inks that are there.
 * @param list where the pulls stand in the file, for the sentence: `pulls` or `bench`
 */
export function checkPulls(pulls: readonly Pull[], holder: Holder, list: string, fileName: string): Problem[] {
  const problems = doubles(
    fileName,
    list,
    pulls.map((pull) => pull.id),
  );
  const screens = new Set(holder.screens.map((screen) => screen.id));
  const inks = new Set(holder.inks.map((ink) => ink.id));
  for (const [i, pull] of pulls.entries()) {
    if (!screens.has(pull.screen)) problems.push(unknown(fileName, `${list}[${i}].screen`, pull.screen, 'screens'));
    if (!inks.has(pull.ink)) problems.push(unknown(fileName, `${list}[${i}].ink`, pull.ink, 'inks'));
  }
  return problems;
}
