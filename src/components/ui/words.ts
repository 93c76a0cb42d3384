import type { Pull } from '../../engine/stack/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';

/** A length with one decimal and a true minus sign, without its unit. */
export function mmText(mm: number): string {
  return mm.toFixed(1).replace('-', '−');
}

/** An offset with its sign, without its unit. */
export function offsetText(mm: number): string {
  return mm === 0 ? '0' : `${mm > 0 ? '+' : '−'}${Math.abs(mm).toFixed(1)}`;
}

// Made once: a page that counts its prints out says hundreds of numbers a second while a wall hangs.
const NUMBERS = new Intl.NumberFormat('en');

/** '1 pull', '2 pulls'. */
export function counted(count: number, one: string, more = `${one}s`): string {
  return `${NUMBERS.format(count)} ${count === 1 ? one : more}`;
}

/** 'screen 7 fender', as far as the drawer knows it. */
export function screenWords(screenId: string, studio: Studio): string {
  const screen = studio.screens.find((entry) => entry.id === screenId);
  return screen === undefined ? 'a screen that is gone' : `screen ${screen.number} ${screen.name}`.trim();
}

/** What a pull is called aloud: 'Pull 3: screen 7 fender, rust, 2 strokes'. */
export function pullWords(pull: Pull, index: number, studio: Studio): string {
  const ink = studio.inks.find((entry) => entry.id === pull.ink);
  const words = [
    `Pull ${index + 1}: ${screenWords(pull.screen, studio)}`,
    ink?.name ?? 'an ink that is gone',
    counted(pull.strokes, 'stroke'),
  ];
  if (pull.dxMm !== 0 || pull.dyMm !== 0) {
    words.push(`${mmText(pull.dxMm)} mm right and ${mmText(pull.dyMm)} mm down`);
  }
  if (pull.turnDeg % 360 !== 0) words.push(`turned ${String(pull.turnDeg).replace('-', '−')}°`);
  return words.join(', ');
}

/** L, a and b to a tenth, with a true minus sign. */
export function labWords(lab: readonly [number, number, number]): string[] {
  return lab.map((value) =>
    value
      .toFixed(1)
      .replace(/^-0\.0$/, '0.0')
      .replace('-', '−'),
  );
}
