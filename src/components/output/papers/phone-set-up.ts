import { entryAt } from '../../../engine/base/at.ts';
import type { SetUpOnPhone } from '../../../engine/visitfile/set-up-link.ts';
import type { MadePlan } from '../made-plan.ts';
import { cardsOf } from './card-blocks.ts';

/** The card of a set-up as a phone shows it: its words, and where the print moves. @param at index of the set-up */
export function phoneSetUp(made: MadePlan, at: number, project: string): SetUpOnPhone {
  const card = entryAt(cardsOf(made, [at]), 0);
  const { dxMm, dyMm, turnDeg, states } = card.card;
  const { widthMm, heightMm } = entryAt(made.recipes, entryAt(states, 0).recipe).paper;
  return {
    version: 1,
    project,
    title: card.title,
    tags: card.tags,
    screen: card.screen,
    ink: card.ink,
    hex: card.hex,
    lines: card.lines.map(({ text }) => text),
    paper: { widthMm, heightMm },
    offset: { dxMm, dyMm, turnDeg },
    parts: card.parts.map(({ title, sheets }) => ({ title, sheets })),
  };
}
