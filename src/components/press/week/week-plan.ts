import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type DatedVisit, daysOf, oneAfterTheOther } from '../../../engine/visitfile/calendar.ts';
import { weekBlocks } from '../../output/papers/week-blocks.ts';
import { controls } from '../../ui/controls-style.ts';
import { chooseFiles } from '../../ui/download.ts';
import { wideTable } from '../../ui/kit/wide-table.ts';
import '../../ui/kit/fold.ts';
import { say } from '../../words/en/press/week.ts';
import { tableHtml } from '../sheet/paper-html.ts';
import { paperTablesStyle } from '../sheet/paper-tables-style.ts';
import type { KeptWeekPlan, OwnVisit } from './kept-week.ts';

const DAY_MS = 86_400_000;

function dateText(date: number): string {
  return new Date(date * DAY_MS).toISOString().slice(0, 10);
}

/**
 * Several visits on one press: which days each takes, and where two want one bed.
 * @fires print Event: the week shall be printed
 */
@customElement('press-week')
export class WeekPlan extends LitElement {
  static override styles = [
    controls,
    paperTablesStyle,
    css`
      :host {
        display: block;
      }
      .visits {
        display: grid;
        gap: var(--space-4);
        margin: var(--space-5) 0;
      }
      .visits .name {
        flex: 0 1 260px;
        min-width: 0;
        font-weight: 600;
      }
      .scroll {
        margin-top: var(--space-6);
        overflow-x: auto;
      }
      table.paper {
        max-width: 820px;
        --paper-head: var(--type-lead);
        --paper-small: var(--type-small);
        --paper-text: var(--type-text);
      }
      .warn {
        margin-top: var(--space-4);
        padding-left: var(--space-6);
        border-left: 3px solid var(--accent);
        font-weight: 600;
      }
    `,
  ];

  /** The visit that is open. */
  @property({ attribute: false }) own!: OwnVisit;
  @property({ attribute: false }) week!: KeptWeekPlan;
  /** Changes when the week has. */
  @property({ attribute: false }) visits: DatedVisit[] = [];
  @property({ type: Boolean }) disabled = false;

  private date(at: number, event: Event): void {
    const ms = (event.target as HTMLInputElement).valueAsNumber;
    if (!Number.isFinite(ms) || ms < 0) return;
    this.week.date(
      this.own,
      this.visits.map(({ firstDay }, i) => (i === at ? Math.floor(ms / DAY_MS) : firstDay)),
    );
  }

  private visit(visit: DatedVisit, at: number) {
    const { title, firstDay } = visit;
    return html`<div class="row">
      ${
        at === 0
          ? html`<span class="name">${title}</span>`
          : html`<input
              class="name"
              aria-label=${say.nameOfInWeek(title)}
              maxlength="100"
              .value=${title}
              @change=${(event: Event) => this.week.rename(at - 1, (event.target as HTMLInputElement).value)}
            />`
      }
      <span>${say.days(daysOf(visit))}</span>
      <label>${say.from} <input type="date" aria-label=${say.firstDayOf(title)} .value=${dateText(firstDay)} @change=${(event: Event) => this.date(at, event)} /></label>
      ${at === 0 ? nothing : html`<button class="quiet" aria-label=${say.takeOutOfWeekTitle(title)} @click=${() => this.week.takeOut(at - 1)}>${say.takeOut}</button>`}
    </div>`;
  }

  /** What the papers of the week say. */
  private calendar() {
    return weekBlocks(this.visits).map((block) =>
      block.kind === 'table'
        ? wideTable(say.calendar, tableHtml(block))
        : block.kind === 'text'
          ? html`<p class=${block.bold === true ? 'warn' : 'soft small'}>${block.text}</p>`
          : nothing,
    );
  }

  private aside() {
    const { aside } = this.week;
    if (aside === 0) return nothing;
    return html`<p class="warn">${say.partsOfKeptWeek(aside)}</p>
      <div class="row">
        <button @click=${() => this.week.saveAside()}>${say.saveAsFile}</button>
        <button class="quiet" @click=${() => this.week.dropAside()}>${say.throwAway}</button>
      </div>`;
  }

  override render() {
    const { visits, week, own } = this;
    const several = visits.length > 1;
    return html`<ps-fold ruled label=${say.severalVisitsOnThis}>
      <p class="soft">${say.addFilesOfOthers}</p>
      <div class="visits">${visits.map((visit, at) => this.visit(visit, at))}</div>
      <div class="row">
        <button @click=${async () => week.add(await chooseFiles('.zip,application/zip', true), own)}>${say.addFiles}</button>
        ${
          several
            ? html`<button @click=${() => week.date(own, oneAfterTheOther(visits))}>${say.oneAfterOther}</button>
                <button ?disabled=${this.disabled} @click=${() => this.dispatchEvent(new Event('print'))}>${say.printWeek}</button>`
            : nothing
        }
      </div>
      ${week.file.line()} ${this.aside()} ${several ? this.calendar() : nothing}
    </ps-fold>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-week': WeekPlan;
  }
}
