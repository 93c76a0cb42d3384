import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { printingOf } from '../../../engine/ink/film/printing.ts';
import { printInks } from '../../../engine/ink/mix/mix.ts';
import { layOutTarget, LEAST_SIDE_MM, type PageName, PAGES } from '../../../engine/ink/target/target-layout.ts';
import { type Target, targetOf, withInk } from '../../../engine/ink/target/target.ts';
import { fixed } from '../../../engine/words/language.ts';
import { RoomElement } from '../../store-element.ts';
import { controls } from '../../ui/controls-style.ts';
import '../target/target-few.ts';
import '../target/target-fit.ts';
import '../target/target-measure.ts';
import '../../ui/kit/fold.ts';
import { closeStackHost } from '../../ui/layout-style.ts';
import { say } from '../../words/en/inks/overprint.ts';
import { printTarget } from '../target/target-sheet.ts';

/** The target that checks the chart: which inks are on it, printing it, and what was measured on it. */
@customElement('overprint-target')
export class OverprintTarget extends RoomElement {
  static override styles = [
    controls,
    closeStackHost,
    css`
      :host {
        padding-top: var(--space-8);
        border-top: 1px solid var(--line);
      }
      .words {
        max-width: 62ch;
      }
      h4 {
        margin: var(--space-4) 0 0;
        font-size: var(--type-text);
      }
      .inks {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(140px, 1fr));
        gap: var(--space-2) var(--space-7);
        margin-top: var(--space-3);
      }
      .inks label {
        min-height: 32px;
        min-width: 0;
        overflow-wrap: anywhere;
      }
      @media (pointer: coarse) {
        .inks label {
          min-height: var(--touch);
        }
      }
    `,
  ];

  protected readonly room = 'inks';
  @state() private page: PageName = 'A4';
  @state() private measuring = false;

  private get target(): Target {
    const { target, drawer: studio } = this.store.project;
    return targetOf(target, studio.inks);
  }

  private put(ink: string, on: boolean): void {
    this.store.dispatch({ kind: 'set-target', target: withInk(this.target, ink, on) });
  }

  private print(): void {
    const { target } = this;
    // From now on the numbers on paper count, whatever inks come later.
    if (this.store.project.target === undefined) this.store.dispatch({ kind: 'set-target', target });
    const { drawer: studio, title } = this.store.project;
    void printTarget({
      inks: target.inks.flatMap((id) => studio.inks.filter((ink) => ink.id === id)),
      paper: studio.paper,
      printing: printingOf(studio),
      page: this.page,
      title,
      relative: this.store.relative,
    });
  }

  override render() {
    const { target } = this;
    const all = printInks(this.store.project.drawer.inks);
    const { sideMm, squares } = layOutTarget(target.inks, this.page);
    const none = target.inks.length === 0;
    return html`
      <h3>${say.checkItAgainstReal}</h3>
      <p class="soft words">
        ${say.chartIsEstimatePull}
      </p>
      <ps-fold
        quiet
        label=${say.onTarget(target.inks.length === all.length ? say.allInks(all.length) : say.ofInks(target.inks.length, all.length))}
      >
        <fieldset class="inks" aria-label=${say.inksOnTarget}>
          ${all.map(
            ({ id, name }) => html`<label>
              <input type="checkbox" .checked=${target.inks.includes(id)} @change=${(event: Event) => this.put(id, (event.target as HTMLInputElement).checked)} />
              ${name}
            </label>`,
          )}
        </fieldset>
      </ps-fold>
      <h4>${say.fewSquaresThatTell}</h4>
      <target-few .store=${this.store}></target-few>
      <h4>${say.orEveryInkOver}</h4>
      <div class="row">
        <label>
          ${say.paperOfPrint}
          <select @change=${(event: Event) => (this.page = (event.target as HTMLSelectElement).value as PageName)}>
            ${Object.keys(PAGES).map((page) => html`<option value=${page} ?selected=${page === this.page}>${say.landscape(page)}</option>`)}
          </select>
        </label>
        <button ?disabled=${none} @click=${this.print}>${say.printAsTarget}</button>
        <button aria-expanded=${this.measuring} ?disabled=${none} @click=${() => (this.measuring = !this.measuring)}>${say.putInWhatYou}</button>
      </div>
      <p class="small soft" role="status">
        ${
          none
            ? say.putAtLeastOne
            : html`${say.squaresOfMm(squares.length, fixed(sideMm, 0))}
            ${sideMm < LEAST_SIDE_MM ? say.thatIsSmallFor(this.page === 'A4') : ''}`
        }
      </p>
      ${this.measuring && !none ? html`<target-measure .store=${this.store}></target-measure>` : nothing}
      <target-fit .store=${this.store}></target-fit>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'overprint-target': OverprintTarget;
  }
}
