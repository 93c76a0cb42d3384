import { html, nothing } from 'lit';
import type { Alignment } from '../../../engine/shapes/compose/arrange.ts';
import type { Screen } from '../../../engine/shapes/types.ts';
import { counted } from '../../ui/words.ts';

/** What the buttons beside the sheet do with what is chosen. */
export interface ComposeDeeds {
  /** Steps along the sheet, of the size that is set. */
  nudge(right: number, down: number): void;
  setStep(mm: number): void;
  turn(degrees: number): void;
  scale(factor: number): void;
  mirror(): void;
  align(to: Alignment): void;
  /** Another of the same on this screen, or on a screen of its own. */
  duplicate(on: 'this screen' | 'another screen'): void;
  takeOff(): void;
  /** All pieces of the screen, or the one by its place. */
  pick(piece: number | 'all'): void;
  edit(): void;
}

interface ComposeTools {
  screen: Screen;
  pieces: readonly number[];
  stepMm: number;
  nameOf(shape: string): string;
  deeds: ComposeDeeds;
}

const STEPS_MM = [0.1, 1, 10];
const ALIGNMENTS: readonly (readonly [Alignment, string])[] = [
  ['left', 'Left'],
  ['centre', 'Centre'],
  ['right', 'Right'],
  ['top', 'Top'],
  ['middle', 'Middle'],
  ['bottom', 'Bottom'],
];

/** The buttons for what is chosen on the whole sheet: all that a drag or a key does, and more. */
export function composeTools({ screen, pieces, stepMm, nameOf, deeds }: ComposeTools) {
  const all = pieces.length === screen.placed.length;
  const button = (words: string, act: () => void, label?: string) =>
    html`<button aria-label=${label ?? nothing} @click=${act}>${words}</button>`;
  return html`<header class="row">
      <h2>Screen ${screen.number} ${screen.name}</h2>
      <button class="quiet" @click=${() => deeds.edit()}>Open the screen</button>
    </header>
    ${
      screen.placed.length < 2
        ? nothing
        : html`<div class="row pieces" role="group" aria-label="Shapes on this screen">
          <button aria-pressed=${all} @click=${() => deeds.pick('all')}>All ${counted(screen.placed.length, 'shape')}</button>
          ${screen.placed.map((placed, i) => html`<button aria-pressed=${!all && pieces.includes(i)} @click=${() => deeds.pick(i)}>${nameOf(placed.shape)}</button>`)}
        </div>`
    }
    <div class="row" role="group" aria-label="Move">
      <span class="pad">
        ${button('←', () => deeds.nudge(-1, 0), `Left by ${stepMm} mm`)} ${button('↑', () => deeds.nudge(0, -1), `Up by ${stepMm} mm`)}
        ${button('↓', () => deeds.nudge(0, 1), `Down by ${stepMm} mm`)} ${button('→', () => deeds.nudge(1, 0), `Right by ${stepMm} mm`)}
      </span>
      <span class="pad" role="radiogroup" aria-label="Step">
        ${STEPS_MM.map((mm) => html`<label class="small"><input type="radio" name="step" .checked=${mm === stepMm} @change=${() => deeds.setStep(mm)} />${mm} mm</label>`)}
      </span>
    </div>
    <div class="row" role="group" aria-label="Turn and size">
      ${button('Turn −15°', () => deeds.turn(-15))} ${button('Turn +15°', () => deeds.turn(15))} ${button('Smaller', () => deeds.scale(1 / 1.1))}
      ${button('Larger', () => deeds.scale(1.1))} ${button('Mirror', () => deeds.mirror())}
    </div>
    <div class="row" role="group" aria-label="Align in the printable part">
      <span class="soft small">Align</span>
      ${ALIGNMENTS.map(([to, words]) => button(words, () => deeds.align(to)))}
    </div>
    <div class="row">
      ${button('Duplicate on this screen', () => deeds.duplicate('this screen'))} ${button('As a new screen', () => deeds.duplicate('another screen'), 'Duplicate as a new screen')}
      ${all ? nothing : button('Take off the screen', () => deeds.takeOff())}
    </div>`;
}
