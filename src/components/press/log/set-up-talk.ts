import { entryAt } from '../../../engine/base/at.ts';
import { standing } from '../../../engine/log/events.ts';
import { settingFor } from '../../../engine/log/settings.ts';
import { setUpInk } from '../../../engine/visit/quantities/set-up-ink.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import type { SetUpTalk } from './set-up-notes.ts';

/** What there is to say of a set-up: how its screen stood before, and the ink that its pulls took so far. */
export function setUpTalk(made: MadePlan, card: SetUpCard, log: LogKeeper): SetUpTalk {
  const { sheets, recipes, events } = log;
  const on = card.states.flatMap((state) =>
    state.sheets.flatMap((number) => {
      const sheet = sheets.find((each) => each.number === number && each.recipe === state.recipe);
      const done = state.prints.filter((at) => sheet?.done.includes(at) === true);
      return done.map((at): [number, string] => [number, entryAt(entryAt(recipes, state.recipe).pulls, at).id]);
    }),
  );
  const { screen, ink } = card;
  const own = new Set(on.map(([number, id]) => `${number} ${id}`));
  return {
    card,
    noted: settingFor(made.settings ?? [], card),
    plannedG: entryAt(setUpInk({ ...made.plan, cards: [card] }, made.recipes, made.input.press), 0).grams,
    on,
    weighed: standing(events).filter(
      (event) =>
        event.kind === 'weighed' &&
        event.ink === ink.ink.name &&
        event.screen.number === screen.number &&
        event.on.some(([number, id]) => own.has(`${number} ${id}`)),
    ) as SetUpTalk['weighed'][number][],
  };
}
