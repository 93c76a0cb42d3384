import { entryAt } from '../../../engine/base/at.ts';
import { rangesText } from '../../../engine/base/words.ts';
import { frameState } from '../../../engine/explore/prepare/frames.ts';
import type { SheetAsPulled } from '../../../engine/log/as-pulled.ts';
import { checkLog } from '../../../engine/log/check.ts';
import { alikeSheets } from '../../../engine/log/now/chosen.ts';
import type { Project } from '../../../engine/project/types.ts';
import { studioOfRecipe } from '../../../engine/recipe/write.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { workshopOf } from '../../../engine/visit/lent/workshop.ts';
import type { AppStore } from '../../app-store.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import { aimsOf } from '../../ui/next/next-sheets.ts';
import type { NextChoice, NextSheet } from '../../ui/next/what-next.ts';
import { say } from '../../words/en/press/next.ts';
import type { GoOn } from './go-on.ts';

/** Screens of the drawer that are made, and its inks: what may be fetched to the press. */
function drawerMade({ drawer, frames }: Pick<Project, 'drawer' | 'frames'>): Studio {
  return { ...drawer, screens: drawer.screens.filter(({ id }) => frameState(id, frames) === 'made') };
}

/** Why nothing can follow on a sheet, in a sentence; undefined when something can. */
function refusal({ number, spoiled }: SheetAsPulled, { head, events, pairs }: LogKeeper): string | undefined {
  if (spoiled) return say.sheetIsSpoiledChoose(number);
  if (head === null) return undefined;
  const own = new Set(events.filter((event) => event.sheet === number).map(({ id }) => `event ${id}`));
  const wrong = checkLog(head, events, pairs).find(({ where = '' }) => own.has(where));
  return wrong === undefined ? undefined : say.whatIsOnIt(wrong.message);
}

/** A sheet of the log as one that something is to follow on: as it was pulled, with all that the visit has. */
export function sheetNext(store: AppStore, log: LogKeeper, number: number): NextSheet | null {
  const sheet = log.sheets.find((each) => each.number === number);
  if (sheet === undefined) return null;
  const { project, relative } = store;
  const recipe = entryAt(log.recipes, sheet.recipe);
  const left = recipe.pulls.length - sheet.done.length;
  const alike = alikeSheets(sheet, log.sheets)
    .map((each) => each.number)
    .sort((a, b) => a - b);
  const others = log.recipes.filter((each) => each !== recipe);
  const planned = { name: recipe.title, pulls: recipe.pulls, studio: studioOfRecipe(recipe) };
  return {
    name: say.sheetDown(number, sheet.pulls.length),
    pulls: sheet.pulls,
    workshop: workshopOf(recipe, others, drawerMade(project)),
    aims: [{ ...planned, name: say.asItWasPlanned(recipe.title) }, ...aimsOf(project)],
    take: say.letItGoOn,
    note: say.orderOfRestIs(left > 0),
    relative,
    options: [
      ...(left > 0 ? [{ name: 'planned', label: left === 1 ? say.thenPullThatWas : say.thenPullsThatWere(left) }] : []),
      ...(alike.length > 0
        ? [
            {
              name: 'alike',
              label: say.sheetsTooWithSame(alike.length, rangesText(alike)),
            },
          ]
        : []),
    ],
    refused: refusal(sheet, log),
  };
}

/** What a choice for a sheet comes to. */
export function goOnOf({ more, studio, options }: NextChoice, log: LogKeeper, number: number): GoOn {
  const sheet = log.sheets.find((each) => each.number === number);
  const alike = sheet === undefined || !options.has('alike') ? [] : alikeSheets(sheet, log.sheets).map((each) => each.number);
  return { numbers: [number, ...alike], more, studio, planned: options.has('planned') };
}
