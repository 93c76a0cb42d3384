import { EngineError, type Problem } from '../../base/error.ts';
import { DENSITY_G_PER_CM3, within } from '../../base/limits.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import type { Lab } from '../../colour/lab.ts';
import { say } from '../../words/en/ink/characterise.ts';
import { PAIR_TOLERANCE_DELTA_E, curveFromColour } from '../film/curves.ts';
import { CARD } from './card.ts';
import { inkCurvesOn } from './characterise.ts';
import type { InkEntry } from './make-ink.ts';

// A hair of rounding between typed colours is no contradiction.
const ALLOWED_LIGHTER = 0.5;

/**
 * What is wrong with an ink as edited, before its curves are made.
 * @returns no problems when makeInk will succeed and give both colours within ΔE00 2; codes
 *   'ink.no-name', 'ink.bad-colour', 'colour.outside-solid', 'ink.over-black-brighter',
 *   'ink.impossible-pair', 'ink.colour-missed', 'ink.bad-dry-time', 'ink.bad-density';
 *   'ink.colour-missed' alone does not keep makeInk from working
 */
export function checkInk(entry: InkEntry): Problem[] {
  const called = entry.name.trim() === '' ? say.theInk : say.ink(entry.name);
  const problems: Problem[] = [];
  if (entry.name.trim() === '') {
    problems.push({ code: 'ink.no-name', message: say.inkNeedsName, where: 'name' });
  }
  const { dryMinutes, densityGPerCm3 } = entry;
  if (dryMinutes !== undefined && !(dryMinutes >= 0 && Number.isFinite(dryMinutes))) {
    problems.push({
      code: 'ink.bad-dry-time',
      message: say.hasDryingTimeOf(called, dryMinutes),
      where: 'dryMinutes',
    });
  }
  if (densityGPerCm3 !== undefined && !within(DENSITY_G_PER_CM3, densityGPerCm3)) {
    problems.push({
      code: 'ink.bad-density',
      message: say.hasDensityOfGive(called, densityGPerCm3, DENSITY_G_PER_CM3.least, DENSITY_G_PER_CM3.most),
      where: 'densityGPerCm3',
    });
  }
  const ofColours = [...checkColour(called, entry.overWhite, 'overWhite'), ...checkColour(called, entry.overBlack, 'overBlack')];
  problems.push(...ofColours);
  if (ofColours.length === 0) problems.push(...checkPair(called, entry));
  return problems;
}

function checkColour(called: string, lab: Lab, where: 'overWhite' | 'overBlack'): Problem[] {
  const over = where === 'overWhite' ? say.overWhite : say.overBlack;
  const whole = lab.length === 3 && lab.every((value) => Number.isFinite(value));
  if (!whole || lab[0] < 0 || lab[0] > 100) {
    return [
      {
        code: 'ink.bad-colour',
        message: say.hasNoColourGive(called, over),
        where,
      },
    ];
  }
  try {
    curveFromColour(lab);
    return [];
  } catch (error) {
    return [problemOf(error, `${called}, ${over}: `, where)];
  }
}

function checkPair(called: string, entry: InkEntry): Problem[] {
  if (entry.overBlack[0] > entry.overWhite[0] + ALLOWED_LIGHTER) {
    return [
      {
        code: 'ink.over-black-brighter',
        message: say.isLighterOverBlack(called, entry.overBlack[0]) + say.lSwapTwoOr(entry.overWhite[0]),
        where: 'overBlack',
      },
    ];
  }
  try {
    const given = inkCurvesOn(entry.overWhite, entry.overBlack, entry.grounds ?? CARD);
    return (['overWhite', 'overBlack'] as const).flatMap((where) => {
      const miss = deltaE2000(entry[where], given[where]);
      if (miss <= PAIR_TOLERANCE_DELTA_E) return [];
      const shown = given[where].map((value) => value.toFixed(0)).join(', ');
      return [
        {
          code: 'ink.colour-missed',
          message: say.cannotHaveBothColours(called) + say.overWhiteItWill(where === 'overWhite') + say.asLB(shown),
          where,
        },
      ];
    });
  } catch (error) {
    return [problemOf(error, `${called}: `, 'overBlack')];
  }
}

function problemOf(error: unknown, before: string, where: string): Problem {
  if (!(error instanceof EngineError)) throw error;
  return { code: error.code, message: before + error.message, where };
}
