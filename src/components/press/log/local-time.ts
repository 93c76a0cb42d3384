import type { LocalTime } from '../../../engine/log/visit-now.ts';

/** Day and time of a moment on this device's clock; ms since 1970 UTC. */
export function localTime(ms: number): LocalTime {
  const date = new Date(ms);
  return {
    day: [date.getFullYear(), date.getMonth(), date.getDate()].join('-'),
    minuteOfDay: date.getHours() * 60 + date.getMinutes(),
  };
}
