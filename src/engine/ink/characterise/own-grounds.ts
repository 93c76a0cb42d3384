import type { Lab } from '../../colour/lab.ts';
import { curveFromColour } from '../film/curves.ts';
import type { Surface } from '../film/saunderson.ts';
import { swatchReflectance } from '../film/swatch.ts';
import { printInks } from '../mix/mix.ts';
import type { Ink, Paper } from '../types.ts';
import { CARD_BLACK, CARD_WHITE, type Grounds } from './card.ts';

/** What a new ink was seen on: the invented card, what the project has, or a colour of one's own. */
export interface GroundChoice {
  white: 'card' | 'paper' | { lab: Lab };
  /** An ink stands for one stroke of it on the paper. */
  black: 'card' | { ink: string } | { lab: Lab };
}

/** What of a studio grounds are taken from. */
export interface GroundSource {
  inks: readonly Ink[];
  paper: Pick<Paper, 'reflectance'>;
  surface?: Surface | undefined;
}

/** An ink as dark as this may be somebody's black, L. */
const DARK_L = 35;

/** The person's own paper, and their darkest ink that is no invention; the card's black where there is none. */
export function usualGrounds({ inks }: GroundSource): GroundChoice {
  const dark = printInks(inks)
    .filter(({ basis, overWhite }) => basis !== 'invented' && basis !== 'guess' && overWhite[0] < DARK_L)
    .sort((a, b) => a.overWhite[0] - b.overWhite[0]);
  return { white: 'paper', black: dark[0] === undefined ? 'card' : { ink: dark[0].id } };
}

/**
 * The curves of chosen grounds.
 * @returns as read, seen through the studio's surface; an ink that is gone counts as the card's black
 * @throws EngineError 'colour.outside-solid' for a colour that no surface can have
 */
export function groundsOf({ white, black }: GroundChoice, { inks, paper, surface }: GroundSource): Grounds {
  const light = white === 'card' ? CARD_WHITE : white === 'paper' ? paper.reflectance : curveFromColour(white.lab);
  return { white: Array.from(light), black: Array.from(darkGround(black, { inks, paper, surface })), surface };
}

function darkGround(black: GroundChoice['black'], { inks, paper, surface }: GroundSource): ArrayLike<number> {
  if (black === 'card') return CARD_BLACK;
  if ('lab' in black) return curveFromColour(black.lab);
  const ink = inks.find(({ id }) => id === black.ink);
  return ink === undefined ? CARD_BLACK : swatchReflectance(ink, paper.reflectance, { surface });
}
