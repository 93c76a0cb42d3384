import { html, LitElement, nothing } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { ringArea } from '../../../engine/geometry/rings.ts';
import type { Shape } from '../../../engine/shapes/types.ts';
import { changeShape } from '../../../workers/client/stencils.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/choice.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import '../../ui/kit/number-field.ts';
import '../../ui/kit/problem.ts';
import '../../ui/kit/select.ts';
import { newId } from '../../ui/new-id.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/drawer/draw.ts';
import { sizeText } from '../shape-tray.ts';
import './cut-picture.ts';
import { cutFields } from './cut-fields.ts';
import { CHANGES, changeOf, type CutSettings, firstSettings, takesOther } from './cut-settings.ts';
import { drawStyle } from './draw-style.ts';
import type { MadeShape } from './drawn-files.ts';
import { ownUndo } from './own-undo.ts';

/** What the dialog is opened for: a shape, all in the drawer, and the numbers of the screens it is on. */
interface Asked {
  shape: Shape;
  shapes: readonly Shape[];
  on: readonly number[];
}

/**
 * Cuts, joins, turns, grows and repeats a shape, with a picture of what comes of it.
 * @fires made CustomEvent<MadeShape>: as a new shape
 * @fires replaced CustomEvent<Shape>: in the place of the shape, under its id
 */
@customElement('drawer-cut')
export class CutDialog extends LitElement {
  static override styles = [controls, dialogStyle, drawStyle];

  @state() private asked: Asked | null = null;
  @state() private settings: CutSettings | null = null;
  @query('dialog') private dialog!: HTMLDialogElement;
  private readonly cutting = new Work<Shape>(this);

  constructor() {
    super();
    this.addEventListener('keydown', ownUndo());
  }

  async open(asked: Asked): Promise<void> {
    this.cutting.clear();
    this.asked = asked;
    this.settings = firstSettings(asked.shape, this.others());
    this.cut();
    await this.updateComplete;
    this.dialog.showModal();
  }

  private others(): Shape[] {
    const { asked } = this;
    return asked === null ? [] : asked.shapes.filter(({ id }) => id !== asked.shape.id);
  }

  private set(part: Partial<CutSettings>): void {
    if (this.settings === null) return;
    this.settings = { ...this.settings, ...part };
    this.cut();
  }

  private cut(): void {
    const { asked, settings } = this;
    const change = settings === null ? null : changeOf(settings, this.others());
    if (asked === null || settings === null || change === null) return;
    const word = CHANGES.find(({ value }) => value === settings.kind)?.made ?? '';
    const head = { id: newId(), name: `${asked.shape.name === '' ? say.unnamed : asked.shape.name}, ${word}`.slice(0, 200) };
    this.cutting.follow((control) => changeShape({ shape: asked.shape, change, head }, control));
  }

  private onClose = (): void => {
    this.cutting.clear();
    [this.asked, this.settings] = [null, null];
  };

  private make(shape: Shape): void {
    this.dispatchEvent(new CustomEvent<MadeShape>('made', { detail: { shape, page: null } }));
    this.dialog.close();
  }

  private replace(shape: Shape, before: Shape): void {
    this.dispatchEvent(new CustomEvent<Shape>('replaced', { detail: { ...shape, id: before.id, name: before.name } }));
    this.dialog.close();
  }

  private told({ shape, on }: Asked): string {
    const { found, running } = this.cutting;
    if (found === null) return running ? say.cutting : '';
    const pieces = found.rings.filter((ring) => ringArea(ring) > 0).length;
    const screens = on.length === 0 ? '' : say.replacedItChangesOn(on.toSorted((a, b) => a - b).join(', '));
    return say.fromToPieces(sizeText(shape), sizeText(found), pieces, screens);
  }

  private renderAsked(asked: Asked, settings: CutSettings) {
    const other = takesOther(settings.kind) ? (this.others().find(({ id }) => id === settings.other) ?? null) : null;
    const { found, failure, running } = this.cutting;
    const ready = found !== null && failure === '' && !running;
    return html`<div class="drawing">
        <div class="shown">
          <cut-picture
            .shape=${asked.shape}
            .other=${other}
            .over=${{ rightMm: settings.rightMm, downMm: settings.downMm, turnDeg: settings.otherTurnDeg }}
            .result=${failure === '' ? found : null}
            @over=${(event: CustomEvent<{ rightMm: number; downMm: number }>) => this.set(event.detail)}
          ></cut-picture>
          ${failure === '' ? html`<p class="small" role="status">${this.told(asked)}</p>` : html`<ps-problem>${failure}</ps-problem>`}
        </div>
        <div class="settings">${cutFields(settings, this.others(), (part) => this.set(part))}</div>
      </div>
      <div class="buttons">
        <button @click=${() => this.dialog.close()}>${say.cancel}</button>
        <button ?disabled=${!ready} @click=${() => found !== null && this.replace(found, asked.shape)}>${say.replaceShape}</button>
        <button class="main" ?disabled=${!ready} @click=${() => found !== null && this.make(found)}>${say.makeNewShapeOf}</button>
      </div>`;
  }

  override render() {
    const { asked, settings } = this;
    const beside = asked === null ? nothing : html`<small class="soft">${asked.shape.name}</small>`;
    const content = asked === null || settings === null ? nothing : this.renderAsked(asked, settings);
    return dialogBox({ heading: say.cutAndJoin, beside, closable: true, onClose: this.onClose }, content);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'drawer-cut': CutDialog;
  }
}
