import { defined } from '../../../engine/base/at.ts';
import type { VeilProposal } from '../../../engine/explore/veil/veil-types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { fixed } from '../../../engine/words/language.ts';
import { say } from '../../words/en/bench/veil.ts';

/** How much softer a print is, by the share of its contrast of edges that goes, 0–1. */
export function softerWords(softens: number): string {
  const [, words] = defined(STEPS.find(([below]) => softens < below));
  return words;
}

const STEPS: readonly (readonly [number, string])[] = [
  [0.05, say.touchSofter],
  [0.15, say.littleSofter],
  [0.3, say.softer],
  [0.5, say.muchSofter],
  [Infinity, say.veryMuchSofter],
];

/** What a veil is pulled in and over what: 'Foam, let down 1:6' and 'the whole area'. */
export function veilWords(
  proposal: Pick<VeilProposal, 'from' | 'parts' | 'ink' | 'veil' | 'newScreen'>,
  studio: Studio,
): { ink: string; area: string } {
  const { from, parts, ink, veil, newScreen } = proposal;
  const name = studio.inks.find(({ id }) => id === from)?.name ?? ink.name;
  const screen = studio.screens.find(({ id }) => id === veil.screen);
  return {
    ink: parts === 0 ? name : say.letDown1(name, parts),
    area: newScreen !== null || screen === undefined ? say.wholeArea : say.screen(screen.number, screen.name).trim(),
  };
}

/** Where the veil goes in the stack, in words. */
export function placeWords(at: number, pulls: number): string {
  return at >= pulls - 1 ? say.lastDown : say.pullOf(at + 1, pulls);
}

/** Contrast of edges to two decimals or, when it is small, to two figures, ΔE/mm. */
export function edgeContrastText(edgeContrast: number): string {
  return edgeContrast >= 0.1 || edgeContrast === 0 ? fixed(edgeContrast, 2) : edgeContrast.toPrecision(2);
}
