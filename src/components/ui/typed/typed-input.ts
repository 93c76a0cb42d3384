import { numberText, typedNumber } from '../../../engine/base/typed-number.ts';
import { decimalSign } from '../length-unit.ts';

/**
 * The number in a text field, with a point or a comma; NaN for an empty field and for what is no number,
 * which the field then complains of in a sentence.
 */
export function typedIn(input: HTMLInputElement): number {
  const { value, problem } = typedNumber(input.value, decimalSign());
  const complaint = input.value.trim() === '' ? '' : problem;
  input.setCustomValidity(complaint);
  if (complaint !== '') input.reportValidity();
  return value ?? NaN;
}

/** Arrow keys step the number in a text field, as they do in a field of numbers. */
export function stepOnArrows(event: KeyboardEvent, step: number): void {
  const way = { ArrowUp: 1, ArrowDown: -1 }[event.key];
  if (way === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
  event.preventDefault();
  const input = event.target as HTMLInputElement;
  const value = typedNumber(input.value, decimalSign()).value ?? 0;
  input.value = numberText(Math.round((value + way * step) * 1e6) / 1e6, decimalSign());
  input.dispatchEvent(new Event('change', { bubbles: true }));
}
