import type { VisitScreen } from '../../engine/output/registry.ts';
import type { InkNeed } from '../../engine/output/visit.ts';
import type { MadePlan } from './plan-run.ts';
import { gramsText } from './plan-words.ts';

/** Where the grams come from, since most of it is from memory. */
export const GRAMS_NOTE =
  'Wet ink for sheets, overs and proofs, what stays in screen and bucket, and a margin of safety. Density, transfer and loss start from memory, proofs and margin from common practice, not from a source: weigh what your first run takes and change the studio figures.';

/** What the overs and proofs are in, and what not. */
export const OVERS_NOTE =
  'Overs and proofs go through every set-up of their recipe, proofs first, overs behind its numbered sheets. They are in the ink and the paper, but not in the times and check boxes.';

/** 'sheets 24 g, proofs 1.2 g, left behind 115 g, safety 14 g'; '' for an order kept from before they were told apart. */
export function inkSplit(need: Partial<InkNeed>): string {
  const { printedG, proofsG = 0, lossG = 0, safetyG = 0 } = need;
  if (printedG === undefined) return '';
  const parts = [['sheets', printedG], ['proofs', proofsG], ['left behind', lossG], ['safety', safetyG]] as const;
  return parts.filter(([, grams]) => grams > 0).map(([word, grams]) => `${word} ${gramsText(grams)}\u00a0g`).join(', ');
}

export interface ScreenToMake {
  screen: VisitScreen;
  /** Number of the first set-up that it is in. */
  first: number;
  mounts: number;
  /** Film for its stencil: as large as the sheet it prints on, m². */
  areaM2: number;
}

/** Frames to have at hand, in the order in which they are first mounted, and the film they take. */
export function screensToMake({ plan, recipes }: Pick<MadePlan, 'plan' | 'recipes'>): { screens: ScreenToMake[]; filmM2: number } {
  const screens = new Map<string, ScreenToMake>();
  for (const card of plan.cards) {
    const known = screens.get(card.screen.key);
    const { widthMm, heightMm } = recipes[card.states[0]!.recipe]!.paper;
    if (known === undefined) screens.set(card.screen.key, { screen: card.screen, first: card.number, mounts: 1, areaM2: (widthMm * heightMm) / 1e6 });
    else if (card.mount) known.mounts++;
  }
  const all = [...screens.values()];
  return { screens: all, filmM2: all.reduce((sum, { areaM2 }) => sum + areaM2, 0) };
}
