import { EngineError } from '../../base/error.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import { roundedLab, type Lab } from '../../colour/lab.ts';
import { PAIR_TOLERANCE_DELTA_E, nearestPossible } from '../film/curves.ts';
import { CARD, type Grounds } from './card.ts';
import { inkCurvesOn } from './characterise.ts';

// Colours on the very edge of what is possible fall off it when they are rounded for showing.
const INWARDS = 0.995;
const MAX_ROUNDS = 6;

/**
 * Two colours that an ink can have, near to two that it cannot: each first made possible by itself,
 * then the one over black brought to what the one over white allows.
 * @param grounds that they are seen on; the invented card by default
 * @returns the colours as given when an ink can have both
 */
export function nearestInkColours(
  overWhite: Readonly<Lab>,
  overBlack: Readonly<Lab>,
  grounds: Grounds = CARD,
): { overWhite: Lab; overBlack: Lab } {
  const light = inside(overWhite);
  // Nothing is lighter over black than over white.
  const dark = inside([Math.min(overBlack[0], light[0]), overBlack[1], overBlack[2]]);
  let near = { overWhite: light, overBlack: dark };
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const given = colours(near.overWhite, near.overBlack, grounds);
    const missed = (['overWhite', 'overBlack'] as const).filter((over) => deltaE2000(near[over], given[over]) > PAIR_TOLERANCE_DELTA_E);
    if (missed.length === 0) return near;
    for (const over of missed) near = { ...near, [over]: given[over] };
  }
  return near;
}

/**
 * The nearest possible colour that a refusal names, rounded for a field and drawn in so far that it
 * stays possible.
 * @param refusal 'colour.outside-solid' and the like; without details.nearest a grey is offered
 * @param wanted the colour that was refused
 */
export function offeredColour(refusal: EngineError, wanted: Readonly<Lab>): Lab {
  const [l, a, b] = (refusal.details.nearest ?? [wanted[0], 0, 0]) as Lab;
  return roundedLab([l, a * INWARDS, b * INWARDS]);
}

/** What an ink that is asked for two colours gives, or could give. */
function colours(overWhite: Lab, overBlack: Lab, grounds: Grounds): { overWhite: Lab; overBlack: Lab } {
  try {
    return inkCurvesOn(overWhite, overBlack, grounds);
  } catch (error) {
    if (!(error instanceof EngineError) || error.code !== 'ink.impossible-pair') throw error;
    return { overWhite, overBlack: error.details.possible as Lab };
  }
}

function inside(lab: Readonly<Lab>): Lab {
  const [l, a, b] = nearestPossible(lab);
  const possible = l === lab[0] && a === lab[1] && b === lab[2];
  return possible ? [l, a, b] : [l, a * INWARDS, b * INWARDS];
}
