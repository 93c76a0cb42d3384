import { css, html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { defined, entryAt } from '../../../engine/base/at.ts';
import type { StackSquare, TargetFit } from '../../../engine/ink/fit/fit-target.ts';
import { filmsName } from '../../../engine/ink/target/few-squares.ts';
import { stacksOf, targetOf } from '../../../engine/ink/target/target.ts';
import type { Ink, Paper } from '../../../engine/ink/types.ts';
import { fixed } from '../../../engine/words/language.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { RoomElement } from '../../store-element.ts';
import '../../ui/kit/fold.ts';
import '../../ui/kit/progress.ts';
import { controls } from '../../ui/controls-style.ts';
import { closeStackHost } from '../../ui/layout-style.ts';
import { workFailure } from '../../ui/work-failure.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/inks/target.ts';

/** So many of the worst squares are named at once. */
const WORST = 3;

interface Found {
  fit: TargetFit;
  squares: readonly StackSquare[];
  inks: readonly Ink[];
  paper: Paper;
}

/** Inks, trapping and surface fitted to all squares that were read, what the fit misses, and taking it over. */
@customElement('target-fit')
export class TargetFitElement extends RoomElement {
  static override styles = [
    controls,
    closeStackHost,
    css`
      :host {
        padding-top: var(--space-7);
      }
      .words {
        max-width: 62ch;
      }
      .problem {
        color: var(--accent);
      }
      dl {
        display: flex;
        flex-wrap: wrap;
        gap: var(--space-4) var(--space-9);
        margin: 0;
      }
      dt {
        font-size: var(--type-small);
        color: var(--ink-soft);
      }
      dd {
        margin: 0;
        font-size: var(--type-lead);
        font-weight: 600;
      }
      table {
        border-collapse: collapse;
        font-size: var(--type-small);
      }
      th,
      td {
        padding: var(--space-2) var(--space-7) var(--space-2) 0;
        text-align: left;
        font-weight: 400;
      }
      td {
        text-align: right;
      }
      .found {
        display: grid;
        gap: var(--space-6);
      }
    `,
  ];

  protected readonly room = 'inks';
  private readonly run = new Work<Found>(this);

  private squares(): StackSquare[] {
    const { target, drawer: studio } = this.store.project;
    return stacksOf(targetOf(target, studio.inks));
  }

  private fit(): void {
    const squares = this.squares();
    const { inks, paper, surface, trapping } = this.store.project.drawer;
    void this.run.start(async (control) => {
      const fit = await engineFor('plan').fitTarget({ squares, inks, paper, printing: { surface, trapping } }, control);
      return fit === null ? null : { fit, squares, inks, paper };
    });
  }

  private use({ fit }: Found): void {
    const { inks, trapping, surface, looDeltaE } = fit;
    if (!this.store.dispatch({ kind: 'take-target-fit', fit: { inks, trapping, surface, looDeltaE } })) return;
    this.run.clear();
    this.store.tell(say.inksTrappingAndSurface(inks.length), 'news');
  }

  override render() {
    const squares = this.squares();
    if (squares.length === 0) return nothing;
    const { run } = this;
    return html`<div class="row">
        ${
          run.running
            ? html`<ps-progress label=${say.fitting} .value=${run.progress} @stop=${() => run.stop()}></ps-progress>`
            : html`<button class=${run.found === null ? 'main' : ''} @click=${this.fit}>${say.fitInksTrappingAnd}</button>
              <span class="small soft">${say.toSquaresThatWere(squares.length)}</span>`
        }
      </div>
      ${workFailure(run, say.noInkWasChanged)}
      ${run.found === null ? nothing : this.renderFound(run.found)}`;
  }

  private renderFound(found: Found) {
    const { fit, squares, inks, paper } = found;
    const { drawer: studio } = this.store.project;
    const outdated = studio.inks !== inks || studio.paper !== paper || this.squares().length !== squares.length;
    const told = Number.isFinite(fit.looDeltaE);
    return html`<section class="found" aria-label=${say.whatSquaresTell}>
      <p class="words" role="status">
        ${say.inksTrappingAndSurfaceAs(fixed(fit.nowDeltaE, 1), fixed(fit.meanDeltaE, 1))}
        ${
          told
            ? html`${say.eachOverprintLeftOutIn(html`<strong>${say.eachOverprintLeftOut(fixed(fit.looDeltaE, 1))}</strong>`)}`
            : say.noOverprintCouldBe
        }
      </p>
      <dl>
        <div><dt>${say.filmOnFilmIs}</dt><dd>${say.asThick(fixed(fit.trapping.factor * 100, 0))}</dd></div>
        ${(fit.trapping.pairs ?? []).map(({ under, over, factor }) => html`<div><dt>${filmsName([under, over], inks)}</dt><dd>${fixed(factor * 100, 0)} %</dd></div>`)}
        <div><dt>${say.thrownBackInsideOutside}</dt><dd>${fixed(fit.surface.k2 * 100, 0)} %, ${fixed(fit.surface.k1 * 100, 1)} %</dd></div>
      </dl>
      <div>
        <h4>${say.missedMost}</h4>
        ${this.table(found, fit.worst.slice(0, WORST))}
      </div>
      ${fit.worst.length <= WORST ? nothing : html`<ps-fold quiet label=${say.everySquareWorstFirst}>${this.table(found, fit.worst)}</ps-fold>`}
      <div class="row">
        <button class="main" ?disabled=${outdated} @click=${() => this.use(found)}>${say.useInksTrappingAnd}</button>
        <span class="small soft">${outdated ? say.inksPaperOrReadings : say.changesTheyCountAs(fit.inks.map(({ id }) => inks.find((ink) => ink.id === id)?.name).join(', '))}</span>
      </div>
    </section>`;
  }

  private table({ fit, squares, inks }: Found, order: readonly number[]) {
    return html`<table>
      <thead><tr><th scope="col">${say.square2}</th><th scope="col">${say.deltaEFitted}</th><th scope="col">${say.deltaELeftOut}</th></tr></thead>
      <tbody>
        ${order.map((at) => {
          const { deltaE, leftOutDeltaE } = defined(fit.squares.find(({ square }) => square === at));
          const films = entryAt(squares, at).films.map(({ ink }) => ink);
          return html`<tr><th scope="row">${filmsName(films, inks)}</th><td>${fixed(deltaE, 1)}</td><td>${leftOutDeltaE === null ? '' : fixed(leftOutDeltaE, 1)}</td></tr>`;
        })}
      </tbody>
    </table>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'target-fit': TargetFitElement;
  }
}
