import type { DecimalSign } from '../../engine/base/typed-number.ts';

/** What lengths are typed and shown in; they are kept in mm whatever it is. */
type LengthUnit = 'mm' | 'in';

const KEY = 'pullstack.length-unit';
const changes = new EventTarget();
let unit: LengthUnit | null = null;

/** The unit chosen in this browser; mm until another is. */
export function lengthUnit(): LengthUnit {
  if (unit === null) {
    try {
      unit = localStorage.getItem(KEY) === 'in' ? 'in' : 'mm';
    } catch {
      // A browser that keeps nothing still shows mm.
      unit = 'mm';
    }
  }
  return unit;
}

/** Chooses the unit for the whole app, and keeps it in this browser as far as that keeps anything. */
export function setLengthUnit(chosen: LengthUnit): void {
  unit = chosen;
  try {
    localStorage.setItem(KEY, chosen);
  } catch {
    // It holds until the page is closed.
  }
  changes.dispatchEvent(new Event('change'));
}

/**
 * Tells of each change of the unit.
 * @returns what ends it
 */
export function onLengthUnit(heard: () => void): () => void {
  changes.addEventListener('change', heard);
  return () => changes.removeEventListener('change', heard);
}

/** The decimal sign of the person's language, as the browser names it. */
export function decimalSign(): DecimalSign {
  const parts = new Intl.NumberFormat(navigator.language).formatToParts(1.5);
  return parts.find(({ type }) => type === 'decimal')?.value === ',' ? ',' : '.';
}
