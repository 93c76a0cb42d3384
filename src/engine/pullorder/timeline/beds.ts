import { num } from '../../base/at.ts';
import type { SetUp, VisitTimeline } from '../types.ts';
import { DAY_MINUTES } from './day-clock.ts';
import type { OnPress } from './start-state.ts';

/** What is changed between set-ups. */
export interface Changes {
  mounts: number;
  inkChanges: number;
  registerMoves: number;
}

/** When the last bed is washed up, minutes from the first day's start. */
export function endOf({ parts }: Pick<VisitTimeline, 'parts'>): number {
  return parts.reduce((most, { day, toMinute }) => Math.max(most, (day - 1) * DAY_MINUTES + toMinute), 0);
}

/** What changes between set-ups that follow each other on a bed; the first of a bed counts, unless it is there. */
export function changesOnBeds(setUps: readonly SetUp[], beds: readonly number[], onPress: OnPress = []): Changes {
  const before = new Map<number, Pick<SetUp, 'screen' | 'ink' | 'offset'>>();
  for (const [bed, there] of onPress.entries()) if (there !== null) before.set(bed, there);
  const out = { mounts: 0, inkChanges: 0, registerMoves: 0 };
  for (const [i, setUp] of setUps.entries()) {
    const last = before.get(num(beds, i));
    if (last?.screen !== setUp.screen) out.mounts++;
    else if (last.offset !== setUp.offset) out.registerMoves++;
    if (last?.ink !== setUp.ink) out.inkChanges++;
    for (const [bed, other] of before) if (bed !== num(beds, i) && other.screen === setUp.screen) before.set(bed, { ...other, screen: '' });
    before.set(num(beds, i), setUp);
  }
  return out;
}
