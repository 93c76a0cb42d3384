import { defined } from '../../../engine/base/at.ts';
import type { VeilProposal } from '../../../engine/explore/veil/veil-types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';

/** How much softer a print is, by the share of its contrast of edges that goes, 0–1. */
export function softerWords(softens: number): string {
  const [, words] = defined(STEPS.find(([below]) => softens < below));
  return words;
}

const STEPS: readonly (readonly [number, string])[] = [
  [0.05, 'a touch softer'],
  [0.15, 'a little softer'],
  [0.3, 'softer'],
  [0.5, 'much softer'],
  [Infinity, 'very much softer'],
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
    ink: parts === 0 ? name : `${name}, let down 1:${parts}`,
    area: newScreen !== null || screen === undefined ? 'the whole area' : `screen ${screen.number} ${screen.name}`.trim(),
  };
}

/** Where the veil goes in the stack, in words. */
export function placeWords(at: number, pulls: number): string {
  return at >= pulls - 1 ? 'last down' : `pull ${at + 1} of ${pulls}`;
}

/** Contrast of edges to two decimals or, when it is small, to two figures, ΔE/mm. */
export function edgeContrastText(edgeContrast: number): string {
  return edgeContrast >= 0.1 || edgeContrast === 0 ? edgeContrast.toFixed(2) : edgeContrast.toPrecision(2);
}
