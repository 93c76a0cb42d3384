import { MEASURES } from '../../../engine/explore/measure/variant-measures.ts';
import { WAYS } from './hang-choice.ts';
import { BY_NUMBER, type HangChoice } from './hanging.ts';

const KEY = 'pullstack.arranged';

/** Keeps for the next load of the page, in this tab alone, how prints hang. @param place may throw, as browsers do that keep nothing */
export function keepChoice(choice: HangChoice, place = (): Pick<Storage, 'setItem'> => sessionStorage): void {
  try {
    place().setItem(KEY, JSON.stringify(choice));
  } catch {
    // Without a place to keep it prints hang in the order found again.
  }
}

/** How prints hung before the page was loaded; null where nothing was kept, or nothing that a wall can hang by. */
export function keptChoice(place = (): Pick<Storage, 'getItem'> => sessionStorage): HangChoice | null {
  try {
    const kept = JSON.parse(place().getItem(KEY) ?? 'null') as Partial<HangChoice> | null;
    const choice = { ...BY_NUMBER, ...kept };
    return kept !== null && canHangBy(choice) ? choice : null;
  } catch {
    return null;
  }
}

function canHangBy({ way, across, upwards, ranks, towards, unsure }: HangChoice): boolean {
  const measured = (key: string): boolean => MEASURES.some((measure) => measure.key === key);
  const within = (value: number, least: number): boolean => value >= least && value <= 100;
  return (
    WAYS.some(([each]) => each === way) &&
    [across, upwards].every(measured) &&
    typeof ranks === 'boolean' &&
    within(towards, -100) &&
    within(unsure, 0)
  );
}
