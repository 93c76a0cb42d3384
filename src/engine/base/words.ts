import { say } from '../words/en/base/base.ts';
import { num } from './at.ts';

/** A text without all the signs at its end that a pattern of one sign finds. */
export function cutEnd(text: string, sign: RegExp): string {
  let end = text.length;
  while (end > 0 && sign.test(text.charAt(end - 1))) end--;
  return text.slice(0, end);
}

/** '25 min', '1 h 5 min', '2 h' of minutes, rounded to whole ones. */
export function minutesText(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  if (hours === 0) return say.min(rest);
  return rest === 0 ? `${hours} h` : say.hMin(hours, rest);
}

/** '1–5, 8, 10–12' from ascending numbers; two that follow each other stay apart. */
export function rangesText(numbers: readonly number[]): string {
  const parts: string[] = [];
  for (let i = 0; i < numbers.length;) {
    let end = i;
    while (numbers[end + 1] === num(numbers, end) + 1) end++;
    if (end - i >= 2) parts.push(`${numbers[i]}–${numbers[end]}`);
    else for (let k = i; k <= end; k++) parts.push(String(numbers[k]));
    i = end + 1;
  }
  return parts.join(', ');
}
