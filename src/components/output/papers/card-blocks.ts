import { entryAt } from '../../../engine/base/at.ts';
import { rangesText } from '../../../engine/base/words.ts';
import { srgbHexFromLab } from '../../../engine/colour/screen-colour.ts';
import { settingFor, type SettingNoted } from '../../../engine/log/settings.ts';
import { tickGroups } from '../../../engine/log/ticks/ticks.ts';
import { setUpInk } from '../../../engine/visit/quantities/set-up-ink.ts';
import { isSplit, type SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import { extraUse } from '../../../engine/visit/sheet-columns.ts';
import { capital } from '../../../engine/words/language.ts';
import { dryWords, waitWords } from '../../words/drying-words.ts';
import { edgeNotes } from '../../words/edge-notes.ts';
import { dayOf } from '../../words/edition-words.ts';
import { say } from '../../words/en/output/papers.ts';
import { mixWords } from '../../words/mix-words.ts';
import { instructionWords, offsetNotes, offsetWords } from '../../words/offset-words.ts';
import { gramsText, recipeLetter, setUpTags, timeWords, useWord } from '../../words/plan-words.ts';
import { lastTimeWords } from '../../words/setting-words.ts';
import { testFirstWords, unmadeLine } from '../../words/supply-words.ts';
import type { MadePlan } from '../made-plan.ts';
import type { PaperCard, PaperLine } from './paper-blocks.ts';

/** The cards of some set-ups: what to mount, mix and move, by the clock, and what the sheets look like before and after. */
export function cardsOf(made: MadePlan, which: readonly number[]): PaperCard[] {
  const inks = setUpInk(made.plan, made.recipes, made.input.press);
  return which.map((at) => cardOf(made, at, entryAt(inks, at).grams));
}

function cardOf(made: MadePlan, at: number, grams: number): PaperCard {
  const { plan, settings = [] } = made;
  const card = entryAt(plan.cards, at);
  return {
    kind: 'card',
    title: say.setUpNumber(card.number),
    tags: setUpTags(plan, at).join(', '),
    screen: `${card.screen.key} ${card.screen.name}`,
    ink: `${card.ink.key}, ${gramsText(grams)} g`,
    hex: srgbHexFromLab(card.ink.ink.overWhite),
    lines: [...linesOf(made, at), ...lastTime(settings, card)],
    card,
    parts: card.states.map(({ recipe, before, after, prints, sheets }) => ({
      title: `${recipeLetter(recipe)} ${plan.recipes[recipe]?.title ?? ''}${prints.length > 1 ? say.pullsEach(prints.length) : ''}${isSplit(card, { recipe }) ? say.pullsSoFar(before.length) : ''}`,
      before: { recipe, pulls: before },
      after: { recipe, pulls: after },
      sheets: tickGroups(sheets).map((group) => boxWords(plan, group)),
    })),
  };
}

/** '4'; of one proof or over alone '19 proof'; '1–10'. */
function boxWords(plan: MadePlan['plan'], group: readonly number[]): string {
  const [number] = group;
  const use = number === undefined || group.length > 1 ? null : extraUse(plan, number);
  return `${rangesText(group)}${use === null ? '' : ` ${useWord(use)}`}`;
}

/** What was noted of its screen before, in one line. */
function lastTime(settings: readonly SettingNoted[], card: SetUpCard): PaperLine[] {
  const noted = settingFor(settings, card);
  return noted === null ? [] : [{ text: lastTimeWords(noted, dayOf(noted.atMs)), size: 'small' }];
}

function linesOf({ plan, recipes, screenStates }: MadePlan, at: number): PaperLine[] {
  const card = entryAt(plan.cards, at);
  const time = plan.times[at];
  const mix = mixWords(card);
  const offset = offsetWords(card);
  return [
    { text: `${capital(offset)}; ${say.strokesStrokes(card.strokes)}`, bold: true, size: 'large' },
    ...[unmadeLine(card.screen.key, screenStates), ...instructionWords(card)]
      .filter((text) => text !== '')
      .map((text) => ({ text, bold: true })),
    ...[testFirstWords(plan, at)].filter((text) => text !== '').map((text) => ({ text, bold: true })),
    ...[...offsetNotes(card), ...edgeNotes(card, recipes)].map((text) => ({ text, size: 'small' as const, soft: true })),
    ...(mix === null ? [] : [{ text: mix }]),
    { text: say.meshCmThreadM(card.screen.mesh.threadsPerCm, card.screen.mesh.threadUm) },
    ...(time === undefined
      ? []
      : [
          { text: timeWords(plan, time) },
          ...(time.waitMinutes >= 1 ? [{ text: `${capital(waitWords(plan, at))}.`, bold: true }] : []),
          { text: dryWords(plan, at) },
        ]),
  ];
}
