import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import { calendarOf, type CalendarEntry, type DatedVisit, oneAfterTheOther } from '../../../engine/visitfile/calendar.ts';
import { readVisit } from '../../../engine/visitfile/visit-file.ts';
import { controls } from '../../ui/controls-style.ts';
import { chooseFiles } from '../../ui/download.ts';
import '../../ui/kit/fold.ts';
import { counted } from '../../ui/words.ts';
import { clockText } from '../../words/plan-words.ts';

const DAY_MS = 86_400_000;
const dayName = new Intl.DateTimeFormat('en-GB', { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' });

function dateText(date: number): string {
  return new Date(date * DAY_MS).toISOString().slice(0, 10);
}

/** Several visits on one press, out of their files: which days each takes, and where two want one bed. Nothing is kept of it. */
@customElement('press-week')
export class WeekPlan extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
      }
      .visits {
        display: grid;
        gap: var(--space-4);
        margin: var(--space-5) 0;
      }
      table {
        border-collapse: collapse;
        margin-top: var(--space-6);
      }
      td,
      th {
        padding: var(--space-3) var(--space-7) var(--space-3) 0;
        border-bottom: 1px solid var(--line);
        text-align: left;
      }
      .warn {
        margin-top: var(--space-4);
        padding-left: var(--space-6);
        border-left: 3px solid var(--accent);
        font-weight: 600;
      }
    `,
  ];

  /** The order that is shown, and what its project is called. */
  @property({ attribute: false }) plan!: PressPlan;
  @property() heading = '';
  /** Today, whole days since 1970. */
  @property({ type: Number }) today = 0;
  @property({ attribute: false }) tell!: (sentence: string) => void;
  @state() private others: DatedVisit[] = [];
  @state() private firstDay: number | null = null;

  private get visits(): DatedVisit[] {
    return [{ title: this.heading, plan: this.plan, firstDay: this.firstDay ?? this.today }, ...this.others];
  }

  private date(at: number, firstDay: number): void {
    if (at === 0) this.firstDay = firstDay;
    else this.others = this.others.map((visit, i) => (i === at - 1 ? { ...visit, firstDay } : visit));
  }

  private async add(): Promise<void> {
    for (const file of await chooseFiles('.zip,application/zip', true)) {
      const { value, problems } = readVisit(new Uint8Array(await file.arrayBuffer()), file.name);
      if (value?.made !== null && value?.made !== undefined)
        this.others = [...this.others, { title: value.project.title, plan: value.made.plan, firstDay: this.firstDay ?? this.today }];
      else this.tell(problems[0]?.message ?? `${file.name}: no pull order is in it; find one and save the visit again.`);
    }
  }

  private row(entry: CalendarEntry, at: number, entries: readonly CalendarEntry[]) {
    const first = at === 0 || entryAt(entries, at - 1).date !== entry.date;
    return html`<tr>
      <th scope="row">${first ? dayName.format(entry.date * DAY_MS) : ''}</th>
      <td>${clockText(entry.fromMinute)} to ${clockText(entry.toMinute)}${entries.some(({ bed }) => bed > 0) ? `, bed ${entry.bed + 1}` : ''}</td>
      <td><b>${entryAt(this.visits, entry.visit).title}</b>, day ${entry.day}</td>
      <td>${counted(entry.setUps, 'set-up')}</td>
    </tr>`;
  }

  private visit({ title, plan, firstDay }: DatedVisit, at: number) {
    return html`<div class="row">
      <b>${title}</b> <span>${counted(plan.daysNeeded, 'day')}</span>
      <label
        >from
        <input
          type="date"
          aria-label="First day of ${title}"
          .value=${dateText(firstDay)}
          @change=${(event: Event) => {
            const ms = (event.target as HTMLInputElement).valueAsNumber;
            if (Number.isFinite(ms)) this.date(at, Math.floor(ms / DAY_MS));
          }}
      /></label>
      ${at === 0 ? nothing : html`<button class="quiet" @click=${() => (this.others = this.others.filter((_, i) => i !== at - 1))}>Take out</button>`}
    </div>`;
  }

  override render() {
    const { visits } = this;
    const { entries, clashes } = calendarOf(visits);
    return html`<ps-fold ruled label="Several visits on this press">
      <p class="soft">Add the visit files of others who print here; Saturdays and Sundays are left out. Nothing of theirs is kept.</p>
      <div class="visits">${visits.map((visit, at) => this.visit(visit, at))}</div>
      <div class="row">
        <button @click=${() => void this.add()}>Add visit files…</button>
        ${
          visits.length < 2
            ? nothing
            : html`<button @click=${() => oneAfterTheOther(visits).forEach((firstDay, at) => this.date(at, firstDay))}>One after the other</button>`
        }
      </div>
      ${clashes
        .slice(0, 5)
        .map(
          ([one, other]) =>
            html`<p class="warn">${dayName.format(one.date * DAY_MS)}: ${entryAt(visits, one.visit).title} and ${entryAt(visits, other.visit).title} want the press at one time.</p>`,
        )}
      ${visits.length < 2 ? nothing : html`<table>${entries.map((entry, at) => this.row(entry, at, entries))}</table>`}
    </ps-fold>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-week': WeekPlan;
  }
}
