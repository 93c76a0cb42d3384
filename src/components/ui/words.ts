import type { Pull } from '../../engine/stack/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import { fixed } from '../../engine/words/language.ts';
import { say } from '../words/en/ui/room.ts';

/** A length with one decimal and a true minus sign, without its unit. */
export function mmText(mm: number): string {
  return fixed(mm, 1).replace('-', '−');
}

/** An offset with its sign, without its unit. */
export function offsetText(mm: number): string {
  return mm === 0 ? '0' : `${mm > 0 ? '+' : '−'}${fixed(Math.abs(mm), 1)}`;
}

/** 'screen 7 fender', as far as the drawer knows it. */
export function screenWords(screenId: string, studio: Studio): string {
  const screen = studio.screens.find((entry) => entry.id === screenId);
  return screen === undefined ? say.screenThatIsGone : say.screen(screen.number, screen.name).trim();
}

/** What a pull is called aloud: 'Pull 3: screen 7 fender, rust, 2 strokes'. */
export function pullWords(pull: Pull, index: number, studio: Studio): string {
  const ink = studio.inks.find((entry) => entry.id === pull.ink);
  const words = [say.pull(index + 1, screenWords(pull.screen, studio)), ink?.name ?? say.inkThatIsGone, say.strokes(pull.strokes)];
  if (pull.dxMm !== 0 || pull.dyMm !== 0) {
    words.push(say.mmRightAndMm(mmText(pull.dxMm), mmText(pull.dyMm)));
  }
  if (pull.turnDeg % 360 !== 0) words.push(say.turned(String(pull.turnDeg).replace('-', '−')));
  return words.join(', ');
}

/** L, a and b to a tenth, with a true minus sign. */
export function labWords(lab: readonly [number, number, number]): string[] {
  return lab.map((value) =>
    fixed(value, 1)
      .replace(/^-0\.0$/, '0.0')
      .replace('-', '−'),
  );
}
