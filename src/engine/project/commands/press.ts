import type { Draft } from 'immer';
import { EngineError } from '../../base/error.ts';
import { MOST_SHEETS } from '../../base/limits.ts';
import type { Edition } from '../../log/edition/edition.ts';
import { FATES } from '../../log/edition/fates.ts';
import type { Recipe } from '../../recipe/types.ts';
import { say } from '../../words/en/project/commands.ts';
import type { PressSettings, Project, VisitRun } from '../types.ts';
import { find, ID } from './checks.ts';
import { keepRecipe } from './chest.ts';
import { fields, list, oneOf, optional, requireFields, text, whole } from './fields.ts';
import { fieldsOf, type RulesOf } from './rule.ts';

/** What can be done to the next visit, the studio's figures and the editions. */
export type PressCommand =
  | { kind: 'set-visit'; runs: VisitRun[] }
  | { kind: 'thin-visit'; recipes: Recipe[]; runs: VisitRun[]; press: Partial<PressSettings> }
  /** A print's sections come beside it, and are printed as often in its stead. */
  | { kind: 'cut-recipe'; recipe: string; sections: Recipe[] }
  | { kind: 'set-press'; change: Partial<PressSettings> }
  | { kind: 'set-edition'; edition: Edition; /** What is typed digit by digit, to be undone as one. */ part?: 'counts' };

const WORDS = text({ least: 0, most: 1000 });
const COUNT = whole({ least: 0, most: MOST_SHEETS });
const YES_OR_NO = oneOf([true, false]);
const EDITION = fields({
  recipe: ID,
  counts: fields({
    impressions: whole({ least: 1, most: MOST_SHEETS }),
    ap: COUNT,
    pp: COUNT,
    hc: COUNT,
    bat: YES_OR_NO,
    variable: YES_OR_NO,
  }),
  words: fields({
    artist: WORDS,
    title: WORDS,
    year: WORDS,
    workshop: WORDS,
    dates: WORDS,
    rejects: WORDS,
    approved: WORDS,
    other: WORDS,
  }),
  fates: list(fields({ screen: ID, fate: oneOf(FATES), by: WORDS, when: WORDS }), 200),
  spares: optional(COUNT),
  visit: optional(ID),
  marks: list(fields({ sheet: whole({ least: 1, most: 100_000 }), mark: text({ least: 0, most: 40 }) }), MOST_SHEETS),
});

function setVisit(draft: Draft<Project>, runs: readonly VisitRun[]): void {
  for (const run of runs) {
    find(draft.recipes, run.recipe, 'recipe');
    for (const [what, count] of [
      ['sheets', run.sheets],
      [say.overs, run.overs ?? 0],
      [say.proofs, run.proofs ?? 0],
    ] as const) {
      if (Number.isInteger(count) && count >= 0 && count <= MOST_SHEETS) continue;
      throw new EngineError('command.sheets', say.visitPrints0To(MOST_SHEETS, what, count));
    }
  }
  draft.visit = runs.filter((run) => run.sheets > 0);
}

function setEdition(draft: Draft<Project>, edition: Edition): void {
  find(draft.recipes, edition.recipe, 'recipe');
  requireFields({ what: 'edition', whose: say.theEditions }, edition, EDITION);
  const editions = (draft.editions ??= []);
  const at = editions.findIndex((other) => other.recipe === edition.recipe);
  if (at < 0) editions.push(edition);
  else editions[at] = edition;
}

/** How it is done. */
export const PRESS_RULES: RulesOf<PressCommand> = {
  'set-visit': {
    label: say.changeVisit,
    mergeKey: ({ kind, runs }) => `${kind}:${runs.map((run) => run.recipe).join()}`,
    change: (draft, { runs }) => setVisit(draft, runs),
  },
  'thin-visit': {
    label: say.makeVisitFit,
    change(draft, { recipes, runs, press }) {
      for (const recipe of recipes) keepRecipe(draft, recipe);
      setVisit(draft, runs);
      Object.assign(draft.press, press);
    },
  },
  'cut-recipe': {
    label: say.cutPrintIntoSections,
    change(draft, { recipe: id, sections }) {
      find(draft.recipes, id, 'recipe');
      for (const section of sections) keepRecipe(draft, section);
      setVisit(
        draft,
        draft.visit.flatMap((run) => (run.recipe === id ? sections.map((section) => ({ ...run, recipe: section.id })) : [run])),
      );
    },
  },
  'set-press': {
    label: say.changeStudioFigures,
    mergeKey: ({ kind, change }) => `${kind}:${fieldsOf(change)}`,
    change(draft, { change }) {
      Object.assign(draft.press, change);
    },
  },
  'set-edition': {
    label: say.changeEdition,
    mergeKey: ({ kind, edition, part }) => (part === undefined ? null : `${kind}:${edition.recipe}:${part}`),
    change: (draft, { edition }) => setEdition(draft, edition),
  },
};
