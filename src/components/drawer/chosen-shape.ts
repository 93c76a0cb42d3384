import { html } from 'lit';
import type { Screen, Shape } from '../../engine/shapes/types.ts';
import { say } from '../words/en/drawer/room.ts';
import { bladeButton, cutButton } from './draw/shape-dialogs.ts';
import { sizeText } from './shape-tray.ts';

/** The shape that is chosen in the tray, and what can be done with it. */
export function chosenShape(
  shape: Shape,
  { screens, shapes }: { screens: readonly Screen[]; shapes: readonly Shape[] },
  deeds: { newScreen(): void; remove(): void },
) {
  const on = screens.filter((screen) => screen.placed.some((placed) => placed.shape === shape.id)).map((screen) => screen.number);
  return html`<div class="row chosen">
    <strong>${shape.name}</strong>
    <span class="soft">${sizeText(shape)}</span>
    <span class="soft">${on.length === 0 ? say.onNoScreen : say.onScreen(on.toSorted((a, b) => a - b).join(', '))}</span>
    <span class="fill"></span>
    ${cutButton(shape, shapes, on)} ${bladeButton(shape, on)}
    <button @click=${() => deeds.newScreen()}>${say.newScreenOfIt}</button>
    <button @click=${() => deeds.remove()}>${say.removeShape}</button>
  </div>`;
}
