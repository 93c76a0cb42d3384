import { entryAt } from '../../../engine/base/at.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import { standing } from '../../../engine/log/events.ts';
import { settingFor } from '../../../engine/log/settings.ts';
import { setUpInk } from '../../../engine/visit/quantities/set-up-ink.ts';
import { inkText } from '../../../engine/visit/registry.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import type { InkUsed, SetUpTalk } from './set-up-notes.ts';

/** A pull of a set-up that is on a sheet, and the ink that it was really pulled in. */
interface Pulled {
  on: [number, string];
  ink: Ink;
}

function pulledIn(card: SetUpCard, { sheets, recipes }: LogKeeper): Pulled[] {
  return card.states.flatMap((state) =>
    state.sheets.flatMap((number) => {
      const sheet = sheets.find((each) => each.number === number && each.recipe === state.recipe);
      if (sheet === undefined) return [];
      const recipe = entryAt(recipes, state.recipe);
      return state.prints.flatMap((at): Pulled[] => {
        const pull = sheet.pulls[sheet.done.indexOf(at)];
        const ink = recipe.inks.find(({ id }) => id === pull?.ink);
        return ink === undefined ? [] : [{ on: [number, entryAt(recipe.pulls, at).id], ink }];
      });
    }),
  );
}

/** What there is to say of a set-up: how its screen stood before, and by ink what its pulls took so far. */
export function setUpTalk(made: MadePlan, card: SetUpCard, log: LogKeeper): SetUpTalk {
  const planned = card.ink.ink;
  const pulled = pulledIn(card, log);
  const others = new Map(pulled.filter(({ ink }) => inkText(ink) !== inkText(planned)).map(({ ink }) => [inkText(ink), ink]));
  const otherwise = new Set(pulled.filter(({ ink }) => others.has(inkText(ink))).map(({ on: [number] }) => number));
  const events = standing(log.events);
  const used = (ink: Ink, sheets: readonly number[]): InkUsed => {
    const on = pulled.filter((each) => inkText(each.ink) === inkText(ink)).map((each) => each.on);
    const own = new Set(on.map(([number, id]) => `${number} ${id}`));
    const states = card.states.map((state) => ({ ...state, sheets: state.sheets.filter((number) => sheets.includes(number)) }));
    const asPulled = { ...card, ink: { ...card.ink, ink }, states: states.filter((state) => state.sheets.length > 0) };
    return {
      ink,
      plannedG: entryAt(setUpInk({ ...made.plan, cards: [asPulled] }, made.recipes, made.input.press), 0).grams,
      on,
      weighed: events.filter(
        (event) =>
          event.kind === 'weighed' &&
          event.ink === ink.name &&
          event.screen.number === card.screen.number &&
          event.on.some(([number, id]) => own.has(`${number} ${id}`)),
      ) as InkUsed['weighed'][number][],
    };
  };
  const asPlanned = card.sheets.filter((number) => !otherwise.has(number));
  const rest = [...others.values()].map((ink) => {
    const numbers = pulled.filter((each) => inkText(each.ink) === inkText(ink)).map(({ on: [number] }) => number);
    return used(ink, numbers);
  });
  return {
    card,
    noted: settingFor(made.settings ?? [], card),
    inks: asPlanned.length === 0 ? rest : [used(planned, asPlanned), ...rest],
  };
}
