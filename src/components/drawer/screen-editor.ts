import { html, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { THREAD_UM, THREADS_PER_CM } from '../../engine/base/limits.ts';
import { roundTo } from '../../engine/base/units.ts';
import { checkMesh, openingUm } from '../../engine/shapes/place/mesh-size.ts';
import { placeInMiddle, reachBeyondMm } from '../../engine/shapes/place/new-screen.ts';
import type { Mesh, PlacedShape, Screen } from '../../engine/shapes/types.ts';
import { fixed } from '../../engine/words/language.ts';
import { StoreElement } from '../store-element.ts';
import '../ui/films/films-dialog.ts';
import '../ui/kit/number-field.ts';
import { controls } from '../ui/controls-style.ts';
import { drawerFilms, drawerPlates } from '../ui/films/drawer-films.ts';
import type { NumberPick } from '../ui/kit/number-field.ts';
import { putOnBench } from '../ui/put-on-bench.ts';
import { say } from '../words/en/drawer/room.ts';
import './screen-frame.ts';
import './screen-thin.ts';
import { filmNote } from '../words/film-words.ts';
import './sheet-preview.ts';
import { editorStyles } from './editor-style.ts';
import type { ThinShown } from './screen-thin.ts';
import type { Move } from './sheet-preview.ts';

/** One screen: what lies on it and where, its mesh, and the way to the Bench. */
@customElement('screen-editor')
export class ScreenEditor extends StoreElement {
  static override styles = [controls, editorStyles];

  @property({ attribute: false }) screen!: Screen;
  @state() private chosen = 0;
  /** The places while one is being dragged. */
  @state() private draft: PlacedShape[] | null = null;
  @state() private meshProblem = '';
  @state() private thin: ThinShown | null = null;
  @query('#more') private more!: HTMLSelectElement;

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('screen')) return;
    this.draft = null;
    const before = changed.get('screen') as Screen | undefined;
    if (before?.id !== this.screen.id) {
      this.chosen = 0;
      this.meshProblem = '';
    }
  }

  private change(change: { name?: string; placed?: PlacedShape[]; mesh?: Mesh }): void {
    this.store.dispatch({ kind: 'change-screen', screen: this.screen.id, ...change });
  }

  private place(index: number, change: Partial<PlacedShape>): void {
    this.change({ placed: this.screen.placed.map((placed, i) => (i === index ? { ...placed, ...change } : placed)) });
  }

  private onMove(event: CustomEvent<Move>): void {
    const { index, xMm, yMm, done } = event.detail;
    const before = this.screen.placed[index];
    if (before === undefined) return;
    if (!done) {
      this.draft = this.screen.placed.map((placed, i) => (i === index ? { ...placed, xMm, yMm } : placed));
      return;
    }
    this.draft = null;
    if (before.xMm !== xMm || before.yMm !== yMm) this.place(index, { xMm, yMm });
  }

  private onThin({ detail }: CustomEvent<ThinShown>): void {
    this.thin = detail;
    if (detail.chosen !== null) this.renderRoot.querySelector('sheet-preview')?.scrollIntoView({ block: 'nearest' });
  }

  private setMesh(change: Partial<Mesh>): void {
    const mesh = { ...this.screen.mesh, ...change };
    const [problem] = checkMesh(mesh);
    this.meshProblem = problem?.message ?? '';
    if (problem === undefined) this.change({ mesh });
  }

  private addShape(): void {
    const shape = this.store.project.drawer.shapes.find((entry) => entry.id === this.more.value);
    if (shape === undefined) return;
    const { placed } = placeInMiddle(shape, this.store.project.drawer.paper.printable);
    this.chosen = this.screen.placed.length;
    this.change({ placed: [...this.screen.placed, placed] });
  }

  private takeOff(index: number): void {
    this.chosen = 0;
    this.change({ placed: this.screen.placed.filter((_, i) => i !== index) });
  }

  private removeScreen(): void {
    const { number, name } = this.screen;
    if (this.store.dispatch({ kind: 'remove-screen', screen: this.screen.id })) {
      this.store.tell(say.screenIsOutOf(number, name), 'news');
    }
  }

  override render() {
    const { screen } = this;
    const { drawer: studio, bench } = this.store.project;
    const placed = this.draft ?? screen.placed;
    const uses = bench.filter((pull) => pull.screen === screen.id).length;
    return html`
      <header>
        <span class="number" aria-hidden="true">${screen.number}</span>
        <label class="name">
          <span class="visually-hidden">${say.nameOfScreen(screen.number)}</span>
          <input
            type="text"
            .value=${screen.name}
            @change=${(event: Event) => this.change({ name: (event.target as HTMLInputElement).value.trim() || screen.name })}
          />
        </label>
      </header>
      <div class="row bench">
        <p class="soft small">${uses === 0 ? say.notOnBench : uses === 1 ? say.onBenchInOne : say.onBenchInPulls(uses)}</p>
        <button class="main" @click=${() => putOnBench(this.store, [this.screen])}>${say.putOnBench}</button>
      </div>
      <sheet-preview
        .paper=${studio.paper}
        .placed=${placed}
        .shapes=${studio.shapes}
        .chosen=${this.chosen}
        .thin=${this.draft === null ? this.thin : null}
        @choose=${(event: CustomEvent<number>) => (this.chosen = event.detail)}
        @move=${this.onMove}
        @move-back=${() => (this.draft = null)}
      ></sheet-preview>
      ${this.renderPlace(placed)}
      <div class="row add">
        <select id="more" aria-label=${say.anotherShapeForThis}>
          ${studio.shapes.map((shape) => html`<option value=${shape.id}>${shape.name}</option>`)}
        </select>
        <button ?disabled=${studio.shapes.length === 0} @click=${this.addShape}>${say.addToScreen}</button>
      </div>
      <section aria-label=${say.mesh}>
        <h3>${say.mesh}</h3>
        <div class="fields">
          <ps-number label=${say.threads} unit="/cm" min=${THREADS_PER_CM.least} max=${THREADS_PER_CM.most} .value=${screen.mesh.threadsPerCm} @pick=${(event: NumberPick) => this.setMesh({ threadsPerCm: event.detail })}></ps-number>
          <ps-number label=${say.thread} unit="µm" min=${THREAD_UM.least} max=${THREAD_UM.most} .value=${screen.mesh.threadUm} @pick=${(event: NumberPick) => this.setMesh({ threadUm: event.detail })}></ps-number>
          <p class="soft small">${say.openingAboutM(roundTo(openingUm(screen.mesh), 0))}</p>
        </div>
        ${this.meshProblem === '' ? nothing : html`<p class="problem small" role="alert">${this.meshProblem}</p>`}
        <drawer-screen-thin .store=${this.store} .screen=${screen} @thin=${this.onThin}></drawer-screen-thin>
      </section>
      <section aria-label=${say.frame}>
        <drawer-screen-frame .store=${this.store} .screen=${screen}></drawer-screen-frame>
      </section>
      <div class="row actions">
        ${drawerFilms(this.store, screen)} ${drawerPlates(this.store, screen)}
        <button class="quiet" @click=${this.removeScreen}>${say.removeScreen}</button>
      </div>
    `;
  }

  private renderPlace(placed: readonly PlacedShape[]) {
    const { drawer: studio } = this.store.project;
    const index = Math.min(this.chosen, placed.length - 1);
    const one = placed[index];
    if (one === undefined) return nothing;
    const shape = studio.shapes.find((entry) => entry.id === one.shape);
    const nameOf = (id: string): string => studio.shapes.find((entry) => entry.id === id)?.name ?? id;
    const beyond = shape === undefined ? 0 : reachBeyondMm(shape, one, studio.paper.printable);
    return html`<section aria-label=${say.place}>
      ${
        placed.length === 1
          ? html`<h3>${nameOf(one.shape)}</h3>`
          : html`<div class="row pieces" role="group" aria-label=${say.shapesOnThisScreen}>
            ${placed.map(
              (entry, i) => html`<button aria-pressed=${i === index} @click=${() => (this.chosen = i)}>${nameOf(entry.shape)}</button>`,
            )}
          </div>`
      }
      <div class="fields">
        <ps-number label=${say.fromLeft} unit="mm" step="0.1" min="-5000" max="5000" .value=${one.xMm} @pick=${(event: NumberPick) => this.place(index, { xMm: event.detail })}></ps-number>
        <ps-number label=${say.fromTop} unit="mm" step="0.1" min="-5000" max="5000" .value=${one.yMm} @pick=${(event: NumberPick) => this.place(index, { yMm: event.detail })}></ps-number>
        <ps-number label=${say.turn} unit="°" min="-360" max="360" .value=${one.turnDeg} @pick=${(event: NumberPick) => this.place(index, { turnDeg: event.detail })}></ps-number>
        <ps-number label=${say.size} unit="%" min="0.1" max="10000" .value=${one.scale * 100} @pick=${(event: NumberPick) => this.place(index, { scale: event.detail / 100 })}></ps-number>
      </div>
      <label class="tick">
        <input type="checkbox" .checked=${live(one.mirrored === true)} @change=${(event: Event) => this.place(index, { mirrored: (event.target as HTMLInputElement).checked ? true : undefined })} />
        ${say.mirrored}
      </label>
      ${filmNote(placed) === '' ? nothing : html`<p class="soft small">${filmNote(placed)}</p>`}
      <p class="soft small">
        ${shape === undefined ? nothing : say.printsMmBeforeTurning(roundTo(shape.widthMm * one.scale, 0), roundTo(shape.heightMm * one.scale, 0))}
        ${beyond > 0.05 ? html`<span class="problem">${say.reachesMmBeyondPrintable(fixed(beyond, 1))}</span>` : nothing}
      </p>
      ${placed.length > 1 ? html`<button class="quiet take" @click=${() => this.takeOff(index)}>${say.takeOffScreen(nameOf(one.shape))}</button>` : nothing}
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'screen-editor': ScreenEditor;
  }
}
