import { EngineError, type Problem } from '../../base/error.ts';
import { DENSITY_G_PER_CM3, within } from '../../base/limits.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import type { Lab } from '../../colour/lab.ts';
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
  const called = entry.name.trim() === '' ? 'The ink' : `Ink “${entry.name}”`;
  const problems: Problem[] = [];
  if (entry.name.trim() === '') {
    problems.push({ code: 'ink.no-name', message: 'The ink needs a name.', where: 'name' });
  }
  const { dryMinutes, densityGPerCm3 } = entry;
  if (dryMinutes !== undefined && !(dryMinutes >= 0 && Number.isFinite(dryMinutes))) {
    problems.push({
      code: 'ink.bad-dry-time',
      message: `${called} has a drying time of ${dryMinutes}: give minutes, 0 or more.`,
      where: 'dryMinutes',
    });
  }
  if (densityGPerCm3 !== undefined && !within(DENSITY_G_PER_CM3, densityGPerCm3)) {
    problems.push({
      code: 'ink.bad-density',
      message: `${called} has a density of ${densityGPerCm3}: give g/cm³, from ${DENSITY_G_PER_CM3.least} to ${DENSITY_G_PER_CM3.most}.`,
      where: 'densityGPerCm3',
    });
  }
  const ofColours = [...checkColour(called, entry.overWhite, 'overWhite'), ...checkColour(called, entry.overBlack, 'overBlack')];
  problems.push(...ofColours);
  if (ofColours.length === 0) problems.push(...checkPair(called, entry));
  return problems;
}

function checkColour(called: string, lab: Lab, where: 'overWhite' | 'overBlack'): Problem[] {
  const over = where === 'overWhite' ? 'over white' : 'over black';
  const whole = lab.length === 3 && lab.every((value) => Number.isFinite(value));
  if (!whole || lab[0] < 0 || lab[0] > 100) {
    return [
      {
        code: 'ink.bad-colour',
        message: `${called} has no colour ${over}: give L from 0 to 100, a and b.`,
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
        message:
          `${called} is lighter over black (L ${entry.overBlack[0]}) than over white ` +
          `(L ${entry.overWhite[0]}): swap the two, or lower the one over black.`,
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
          message:
            `${called} cannot have both colours; ` +
            `${where === 'overWhite' ? 'over white' : 'over black'} it will print ` +
            `as L, a, b ${shown}.`,
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
