import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Variant } from '../../../engine/explore/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { newJob, onMessage, sentenceOf, wallTools } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import { download, fileNameOf } from '../../ui/download.ts';
import { pageFonts } from '../../ui/page-fonts.ts';

const MM_PER_INCH = 25.4;

/** Takes prints off the wall as files: many as a contact sheet, one at its size. */
@customElement('wall-print-out')
export class PrintOut extends LitElement {
  static override styles = [
    controls,
    css`
      dialog {
        width: min(440px, calc(100vw - 24px));
        padding: var(--space-8) var(--space-8);
        border: 1px solid var(--line);
        background: var(--table);
        color: var(--ink);
      }
      dialog::backdrop {
        background: var(--backdrop);
      }
      form {
        display: grid;
        gap: var(--space-7);
      }
      .row label {
        white-space: nowrap;
      }
      progress {
        width: 100%;
        accent-color: var(--accent);
      }
      .end {
        display: flex;
        gap: var(--space-4);
        justify-content: flex-end;
        margin-top: var(--space-2);
      }
    `,
  ];

  @property({ attribute: false }) relative = true;
  @state() private prints: readonly Variant[] = [];
  @state() private single = false;
  @state() private widthMm = 300;
  @state() private dpi = 150;
  @state() private columns = 6;
  @state() private paper: 'a4' | 'a3' = 'a4';
  @state() private kind: 'pdf' | 'png' = 'pdf';
  /** Share that is done; −1 while nothing is made. */
  @state() private share = -1;
  @state() private trouble = '';
  @query('dialog') private dialog!: HTMLDialogElement;
  private drawer: Studio | null = null;
  private which = '';
  private job: string | null = null;

  /** @param which which prints these are, in words */
  showSheet(prints: readonly Variant[], which: string, drawer: Studio): void {
    this.which = which;
    this.begin(prints, drawer, false);
  }

  showOne(print: Variant, drawer: Studio): void {
    this.widthMm = Math.round(drawer.paper.widthMm);
    this.begin([print], drawer, true);
  }

  private begin(prints: readonly Variant[], drawer: Studio, single: boolean): void {
    this.prints = prints;
    this.drawer = drawer;
    this.single = single;
    this.trouble = '';
    this.share = -1;
    this.dialog.showModal();
  }

  private stop(): void {
    if (this.job !== null) void wallTools().cancel(this.job);
    this.job = null;
    this.share = -1;
  }

  private async make(event: Event): Promise<void> {
    event.preventDefault();
    const { drawer, prints, relative } = this;
    const [first] = prints;
    if (drawer === null || first === undefined) return;
    const job = newJob();
    this.job = job;
    this.share = 0;
    this.trouble = '';
    const onProgress = onMessage((share: number) => {
      if (this.job === job) this.share = share;
    });
    try {
      const tools = wallTools();
      const { widthMm, dpi, paper, columns, kind } = this;
      const title = `“${first.seed}”: ${this.which}`;
      const file = this.single
        ? await tools.print(job, drawer, first.pulls, { widthMm, dpi, relative }, onProgress)
        : await tools.sheet(
            job,
            drawer,
            prints,
            kind === 'pdf' ? (await pageFonts()).plain : null,
            { paper, columns, title, relative },
            onProgress,
          );
      if (this.job !== job || file === null) return;
      const name = this.single ? `${first.seed} ${first.index + 1} ${widthMm} mm` : `${first.seed} contact sheet`;
      download(fileNameOf(name, this.single ? 'png' : kind), file, file.type);
      this.dialog.close();
    } catch (error) {
      if (this.job === job) this.trouble = sentenceOf(error);
    }
    if (this.job === job) this.stop();
  }

  private number(name: 'widthMm' | 'dpi' | 'columns', label: string, unit: string, { min, max }: { min: number; max: number }) {
    return html`<label>${label}
      <input type="number" required min=${min} max=${max} step="1" .value=${String(this[name])} @input=${(event: Event) => {
        this[name] = Number((event.target as HTMLInputElement).value);
      }} />
      ${unit}</label>`;
  }

  private onePrint() {
    const { drawer, widthMm, dpi } = this;
    const paper = drawer?.paper;
    const wide = Math.round((widthMm / MM_PER_INCH) * dpi);
    const high = paper === undefined ? 0 : Math.round((wide * paper.heightMm) / paper.widthMm);
    return html`<div class="row">${this.number('widthMm', 'Width', 'mm', { min: 5, max: 20_000 })} ${this.number('dpi', 'at', 'dpi', { min: 10, max: 2400 })}</div>
      <p class="soft small">${wide.toLocaleString('en')} × ${high.toLocaleString('en')} pixels, as on the wall: a picture to look at, not a film.</p>`;
  }

  private manyPrints() {
    return html`<div class="row">
        <label>Paper
          <select @change=${(event: Event) => {
            this.paper = (event.target as HTMLSelectElement).value as 'a4' | 'a3';
          }}>
            <option value="a4" ?selected=${this.paper === 'a4'}>A4</option>
            <option value="a3" ?selected=${this.paper === 'a3'}>A3</option>
          </select></label>
        ${this.number('columns', 'Columns', '', { min: 1, max: 20 })}
        <label>as
          <select aria-label="File" @change=${(event: Event) => {
            this.kind = (event.target as HTMLSelectElement).value as 'pdf' | 'png';
          }}>
            <option value="pdf" ?selected=${this.kind === 'pdf'}>PDF</option>
            <option value="png" ?selected=${this.kind === 'png'}>PNG</option>
          </select></label>
      </div>
      <p class="soft small">${this.prints.length.toLocaleString('en')} ${this.which}, each with its number and seed.</p>`;
  }

  override render() {
    const { single, share, prints } = this;
    const running = share >= 0;
    const title = single ? `Print ${(prints[0]?.index ?? 0) + 1} as a picture` : 'Contact sheet';
    return html`<dialog aria-label=${title} @close=${() => this.stop()}>
      <form @submit=${(event: Event) => void this.make(event)}>
        <h2>${title}</h2>
        ${single ? this.onePrint() : this.manyPrints()}
        ${running ? html`<progress max="1" .value=${share} aria-label="Made so far"></progress>` : nothing}
        ${this.trouble === '' ? nothing : html`<p role="alert">${this.trouble}</p>`}
        <div class="end">
          <button type="button" @click=${() => (running ? this.stop() : this.dialog.close())}>${running ? 'Stop' : 'Cancel'}</button>
          <button class="main" ?disabled=${running}>Save</button>
        </div>
      </form>
    </dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-print-out': PrintOut;
  }
}
