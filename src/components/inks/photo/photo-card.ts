import { html, LitElement } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { roundedLab } from '../../../engine/colour/lab.ts';
import { drawdownFromPhoto, type DrawdownPhoto, type PhotoColours } from '../../../engine/ink/characterise/drawdown-photo.ts';
import { controls } from '../../ui/controls-style.ts';
import './photo-picks.ts';
import type { Colours } from '../add/two-colours.ts';
import type { PhotoPatch, PhotoPicks } from './photo-picks.ts';
import { photoStyles } from './photo-style.ts';

const PATCHES: readonly (PhotoPatch & { key: keyof DrawdownPhoto })[] = [
  { key: 'white', name: 'Card white' },
  { key: 'black', name: 'Card black' },
  { key: 'overWhite', name: 'Ink over white' },
  { key: 'overBlack', name: 'Ink over black' },
];

/** Picks a drawdown's four patches from a photo of its card. Sends `colours` once all four are there. */
@customElement('photo-card')
export class PhotoCard extends LitElement {
  static override styles = [controls, photoStyles];

  @state() private found: PhotoColours | null = null;

  private take(picks: PhotoPicks): void {
    this.found = null;
    if (!PATCHES.every(({ key }) => picks.has(key))) return;
    this.found = drawdownFromPhoto(Object.fromEntries(picks) as unknown as DrawdownPhoto);
    const { colours } = this.found;
    if (colours === null) return;
    const detail = { overWhite: roundedLab(colours.overWhite), overBlack: roundedLab(colours.overBlack) };
    this.dispatchEvent(new CustomEvent<Colours>('colours', { detail }));
  }

  override render() {
    return html`
      <photo-picks
        .patches=${PATCHES}
        hint="One stroke on a contrast card, lit evenly, without glare, with some bare white and bare black in view."
        @picks=${(event: CustomEvent<PhotoPicks>) => this.take(event.detail)}
      ></photo-picks>
      ${this.found?.problems.map(({ message }) => html`<p class="problem small" role="alert">${message}</p>`)}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'photo-card': PhotoCard;
  }
}
