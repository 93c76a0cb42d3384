import { html, nothing } from 'lit';
import type { Alignment } from '../../../engine/shapes/compose/arrange.ts';
import type { Screen } from '../../../engine/shapes/types.ts';
import { say } from '../../words/en/drawer/compose.ts';

/** What the buttons beside the sheet do with what is chosen. */
export interface ComposeDeeds {
  /** Steps along the sheet, of the size that is set. */
  nudge(right: number, down: number): void;
  setStep(mm: number): void;
  turn(degrees: number): void;
  scale(factor: number): void;
  mirror(): void;
  align(to: Alignment): void;
  /** What is aligned with what. */
  alignWith(what: AlignWith): void;
  /** Whether another screen is aligned with the chosen one. */
  alignOther(screen: string, on: boolean): void;
  /** Another of the same on this screen, or on a screen of its own. */
  duplicate(on: 'this screen' | 'another screen'): void;
  takeOff(): void;
  /** All pieces of the screen, or one by its place: with what is chosen, or no more with it. */
  pick(piece: number | 'all'): void;
  edit(): void;
}

/** What the chosen shapes are aligned with: the printable part, one another, or screens besides. */
export type AlignWith = 'sheet' | 'each other' | 'screens';

interface ComposeTools {
  screen: Screen;
  pieces: readonly number[];
  stepMm: number;
  alignWith: AlignWith;
  /** The other screens, and whether each is aligned with the chosen one. */
  others: readonly { screen: Screen; on: boolean }[];
  nameOf(shape: string): string;
  deeds: ComposeDeeds;
}

const STEPS_MM = [0.1, 1, 10];
const ALIGNMENTS: readonly (readonly [Alignment, string])[] = [
  ['left', say.left],
  ['centre', say.centre],
  ['right', say.right],
  ['top', say.top],
  ['middle', say.middle],
  ['bottom', say.bottom],
];

/** Buttons that align what is chosen, and with what. */
function alignTools({ pieces, alignWith, others, deeds }: Pick<ComposeTools, 'pieces' | 'alignWith' | 'others' | 'deeds'>) {
  const ways: readonly (readonly [AlignWith, string, boolean])[] = [
    ['sheet', say.inPrintablePart, true],
    ['each other', say.chosenShapesToEach, pieces.length > 1],
    ['screens', say.withOtherScreens, others.length > 0],
  ];
  const ready = alignWith !== 'screens' || others.some(({ on }) => on);
  return html`<div class="row" role="group" aria-label=${say.align}>
      <label class="row small">${say.align}
        <select @change=${(event: Event) => deeds.alignWith((event.target as HTMLSelectElement).value as AlignWith)}>
          ${ways.map(([way, words, can]) => html`<option value=${way} ?disabled=${!can} .selected=${way === alignWith}>${words}</option>`)}
        </select>
      </label>
      ${
        alignWith === 'screens'
          ? html`<div class="row pieces" role="group" aria-label=${say.screensToAlignWith}>
            ${others.map(({ screen, on }) => html`<button aria-pressed=${on} aria-label=${say.screen(screen.number, screen.name)} @click=${() => deeds.alignOther(screen.id, !on)}>${screen.number} ${screen.name}</button>`)}
          </div>`
          : nothing
      }
      <div class="six">${ALIGNMENTS.map(([to, words]) => html`<button ?disabled=${!ready} @click=${() => deeds.align(to)}>${words}</button>`)}</div>
    </div>`;
}

/** The buttons for what is chosen on the whole sheet: all that a drag or a key does, and more. */
export function composeTools(tools: ComposeTools) {
  const { screen, pieces, stepMm, nameOf, deeds } = tools;
  const all = pieces.length === screen.placed.length;
  const button = (words: string, act: () => void, label?: string) =>
    html`<button aria-label=${label ?? nothing} @click=${act}>${words}</button>`;
  return html`<header class="row">
      <h2>${say.screenNumber(screen.number)} ${screen.name}</h2>
      <button class="quiet" @click=${() => deeds.edit()}>${say.openScreen}</button>
    </header>
    ${
      screen.placed.length < 2
        ? nothing
        : html`<div class="row pieces" role="group" aria-label=${say.shapesOnThisScreen}>
          <button aria-pressed=${all} @click=${() => deeds.pick('all')}>${say.allShapes(screen.placed.length)}</button>
          ${screen.placed.map((placed, i) => html`<button aria-pressed=${!all && pieces.includes(i)} @click=${() => deeds.pick(i)}>${nameOf(placed.shape)}</button>`)}
        </div>`
    }
    <div class="row" role="group" aria-label=${say.move}>
      <span class="pad">
        ${button('←', () => deeds.nudge(-1, 0), say.leftByMm(stepMm))} ${button('↑', () => deeds.nudge(0, -1), say.upByMm(stepMm))}
        ${button('↓', () => deeds.nudge(0, 1), say.downByMm(stepMm))} ${button('→', () => deeds.nudge(1, 0), say.rightByMm(stepMm))}
      </span>
      <span class="pad" role="radiogroup" aria-label=${say.step}>
        ${STEPS_MM.map((mm) => html`<label class="small"><input type="radio" name="step" .checked=${mm === stepMm} @change=${() => deeds.setStep(mm)} />${mm} mm</label>`)}
      </span>
    </div>
    <div class="row" role="group" aria-label=${say.turnAndSize}>
      ${button(say.turn15, () => deeds.turn(-15))} ${button(say.turn152, () => deeds.turn(15))} ${button(say.smaller, () => deeds.scale(1 / 1.1))}
      ${button(say.larger, () => deeds.scale(1.1))} ${button(say.mirror, () => deeds.mirror())}
    </div>
    ${alignTools(tools)}
    <div class="row">
      ${button(say.duplicateOnThisScreen, () => deeds.duplicate('this screen'))} ${button(say.asNewScreen, () => deeds.duplicate('another screen'), say.duplicateAsNewScreen)}
      ${all ? nothing : button(say.takeOffScreen, () => deeds.takeOff())}
    </div>`;
}
