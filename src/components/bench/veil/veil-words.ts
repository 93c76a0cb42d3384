import { defined } from '../../../engine/base/at.ts';
import type { VeilProposal } from '../../../engine/explore/veil/veil-types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';

/** How much calmer a print is, by the share of its busyness that goes. */
export function calmWords(calms: number): string {
  const [, words] = defined(STEPS.find(([below]) => calms < below));
  return words;
}

const STEPS: readonly (readonly [number, string])[] = [
  [0.05, 'a touch calmer'],
  [0.15, 'a little calmer'],
  [0.3, 'calmer'],
  [0.5, 'much calmer'],
  [Infinity, 'very much calmer'],
];

/** What a veil is pulled in and over what: 'Foam, let down 1:6' and 'the whole image'. */
export function veilWords(
  proposal: Pick<VeilProposal, 'from' | 'parts' | 'ink' | 'veil' | 'newScreen'>,
  studio: Studio,
): { ink: string; area: string } {
  const { from, parts, ink, veil, newScreen } = proposal;
  const name = studio.inks.find(({ id }) => id === from)?.name ?? ink.name;
  const screen = studio.screens.find(({ id }) => id === veil.screen);
  return {
    ink: parts === 0 ? name : `${name}, let down 1:${parts}`,
    area: newScreen !== null || screen === undefined ? 'the whole image' : `screen ${screen.number} ${screen.name}`.trim(),
  };
}

/** Where the veil goes in the stack, in words. */
export function placeWords(at: number, pulls: number): string {
  return at >= pulls - 1 ? 'last down' : `pull ${at + 1} of ${pulls}`;
}

/** Busyness to two decimals or, when it is small, to two figures, ΔE/mm. */
export function busynessText(busyness: number): string {
  return busyness >= 0.1 || busyness === 0 ? busyness.toFixed(2) : busyness.toPrecision(2);
}
