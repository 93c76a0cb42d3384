import type { PressTimes } from '../types.ts';

/** Common practice, no source: from memory, paper by hand 30–80 pulls/h, mount 10–20 min, wash-up 10–20 min. */
export const DEFAULT_PRESS_TIMES: Required<PressTimes> = {
  pullsPerHour: 45,
  strokeMinutes: 0,
  mountMinutes: 15,
  washUpMinutes: 15,
  registerMinutes: 5,
  mixMinutes: 10,
  testPulls: 0,
};
