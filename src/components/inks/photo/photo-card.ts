import { html, LitElement } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { roundedLab } from '../../../engine/colour/lab.ts';
import { drawdownFromPhoto, type DrawdownPhoto, type PhotoColours } from '../../../engine/ink/characterise/drawdown-photo.ts';
import { controls } from '../../ui/controls-style.ts';
import './photo-picks.ts';
import { say } from '../../words/en/inks/photo.ts';
import type { Colours } from '../add/two-colours.ts';
import type { PhotoPatch, PhotoPicks } from './photo-picks.ts';
import { photoStyles } from './photo-style.ts';

const PATCHES: readonly (PhotoPatch & { key: keyof DrawdownPhoto })[] = [
  { key: 'white', name: say.cardWhite },
  { key: 'black', name: say.cardBlack },
  { key: 'overWhite', name: say.inkOverWhite },
  { key: 'overBlack', name: say.inkOverBlack },
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
        hint=${say.oneStrokeOnContrast}
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
