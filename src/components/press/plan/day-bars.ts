import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { minutesText } from '../../../engine/base/words.ts';
import type { DayPart, PartKind } from '../../../engine/pullorder/types.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import { controls } from '../../ui/controls-style.ts';
import { inkHexes, writingOn } from '../../ui/kit/ink-chip.ts';
import { waitWords } from '../../words/drying-words.ts';
import { say } from '../../words/en/press/plan.ts';
import { wallClock } from '../../words/plan-words.ts';

const KIND_WORDS: Record<PartKind, string> = {
  mix: say.mix,
  mount: say.mountAndRegister,
  register: say.changeOffset,
  print: say.pull,
  wait: say.wait,
  wash: say.washUp,
};
/**
 * The visit by the clock: a bar a day and bed, with what is done when.
 * @fires set-up-select CustomEvent<number>: index of the set-up
 */
@customElement('press-day-bars')
export class DayBars extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
      }
      .day {
        display: grid;
        grid-template-columns: 4.6em minmax(0, 1fr);
        align-items: start;
        gap: 0 var(--space-6);
        /* A visit may have dozens of days, with hundreds of parts. */
        content-visibility: auto;
        contain-intrinsic-size: auto 57px;
        overflow-clip-margin: 24px;
      }
      .beds {
        grid-template-columns: 6.6em minmax(0, 1fr);
      }
      .day + .day {
        margin-top: var(--space-5);
      }
      .name {
        font-weight: 600;
        line-height: 34px;
        white-space: nowrap;
      }
      .beyond .name {
        color: var(--accent);
      }
      .bar {
        position: relative;
        height: 34px;
        border-bottom: 1px solid var(--line);
      }
      .part {
        position: absolute;
        box-sizing: border-box;
        min-height: 0;
        padding: 0;
        border: 0;
        border-radius: 0;
        overflow: hidden;
        font-size: var(--type-fine);
        line-height: 1;
        font-variant-numeric: tabular-nums;
      }
      .print {
        inset-block: 4px 0;
        border-left: 1px solid var(--wall);
        /* Black ink shows in the dark too. */
        box-shadow: var(--edge-inside);
        container-type: inline-size;
      }
      .print span {
        margin: 0 -3px;
        letter-spacing: -0.04em;
      }
      /* A number stands in every bar that is wide enough for its digits. */
      @container (max-width: 8px) {
        .print span {
          display: none;
        }
      }
      @container (max-width: 11px) {
        .print .wide {
          display: none;
        }
      }
      .chosen {
        outline: 2px solid var(--ink);
        outline-offset: 1px;
        z-index: 1;
      }
      .mount,
      .register,
      .mix,
      .wash,
      .wait,
      .key .print {
        forced-color-adjust: none;
      }
      .mount,
      .register {
        bottom: 0;
        height: 15px;
        background: var(--ink-soft);
      }
      .mix,
      .wash {
        bottom: 0;
        height: 8px;
        background: var(--ink-soft);
        opacity: 0.55;
      }
      .wait {
        bottom: 0;
        height: 15px;
        background: repeating-linear-gradient(135deg, transparent 0 3px, var(--ink-soft) 3px 4px);
      }
      .lunch {
        inset-block: 4px 0;
        background: var(--table);
        z-index: 1;
        color: var(--ink-soft);
        text-align: center;
        line-height: 30px;
      }
      .hours {
        position: relative;
        grid-column: 2;
        height: 22px;
        font-size: var(--type-fine);
        color: var(--ink-soft);
        font-variant-numeric: tabular-nums;
      }
      .hours span {
        position: absolute;
        top: 4px;
        transform: translateX(-50%);
      }
      .hours span::before {
        content: '';
        position: absolute;
        top: -4px;
        left: 50%;
        height: 4px;
        border-left: 1px solid var(--ink-soft);
      }
      /* At the very edge it would be cut off. */
      .hours .edge {
        transform: none;
      }
      .hours .edge::before {
        left: 0;
      }
      .key {
        display: flex;
        flex-wrap: wrap;
        gap: var(--space-2) var(--space-7);
        margin: var(--space-6) 0 0;
        padding: 0;
        list-style: none;
        font-size: var(--type-small);
        color: var(--ink-soft);
      }
      .key i {
        position: relative;
        display: inline-block;
        width: 18px;
        margin-right: var(--space-3);
        vertical-align: baseline;
      }
      .key .print {
        height: 15px;
        background: var(--accent);
      }
      @media (max-width: 760px) {
        .day,
        .beds {
          grid-template-columns: minmax(0, 1fr);
        }
        .hours {
          grid-column: 1;
        }
        .name {
          position: sticky;
          left: 0;
          justify-self: start;
          line-height: 1.6;
        }
        /* A day is as wide as its numbers want, and scrolls. */
        .days {
          overflow-x: auto;
          padding-right: var(--space-6);
        }
        .day {
          min-width: 860px;
        }
      }
    `,
  ];

  @property({ attribute: false }) plan!: PressPlan;
  @property({ type: Number }) selected = 0;

  private stretch(part: DayPart, length: number) {
    const { plan } = this;
    const card = entryAt(plan.cards, part.setUp);
    const minutes = part.toMinute - part.fromMinute;
    const place = `left: ${((100 * part.fromMinute) / length).toFixed(3)}%; width: ${((100 * minutes) / length).toFixed(3)}%`;
    const when = say.to(wallClock(plan, part.fromMinute), wallClock(plan, part.toMinute));
    const what = part.kind === 'wait' ? waitWords(plan, part.setUp) : `${KIND_WORDS[part.kind]}, ${minutesText(minutes)}`;
    const title = say.setUpIn({ when, number: card.number, key: card.screen.key, name: card.screen.name, key2: card.ink.key, what });
    if (part.kind !== 'print') return html`<span class="part ${part.kind}" style=${place} title=${title}></span>`;
    return html`<button
      class="part print ${part.setUp === this.selected ? 'chosen' : ''}"
      style="${place}; background: ${inkHexes(card.ink.ink).overWhite}; color: ${writingOn(card.ink.ink)}"
      title=${title}
      aria-label=${title}
      tabindex="-1"
      @click=${() => this.dispatchEvent(new CustomEvent<number>('set-up-select', { detail: part.setUp }))}
    >
      <span class=${card.number > 9 ? 'wide' : ''}>${card.number}</span>
    </button>`;
  }

  private day(day: number, bed: number, beds: number, length: number) {
    const { plan } = this;
    const { lunch, startMinute } = plan.clock;
    const parts = plan.parts.filter((part) => part.day === day && part.bed === bed);
    const waits = parts.filter((part) => part.kind === 'wait').reduce((sum, part) => sum + part.toMinute - part.fromMinute, 0);
    const printed = parts.filter((part) => part.kind === 'print');
    const beyond = plan.times.some((time) => time.day === day && !time.fits);
    const numbers = [...new Set(printed.map((part) => entryAt(plan.cards, part.setUp).number))];
    const summary = say.daySetUps(
      day,
      beds > 1 ? say.bed(bed + 1) : '',
      numbers.join(', ') || say.none,
      waits >= 1 ? say.waiting(minutesText(waits)) : '',
    );
    const firstHour = Math.ceil(startMinute / 60) * 60 - startMinute;
    const hours = Array.from({ length: Math.max(0, Math.floor((length - firstHour) / 60) + 1) }, (_, i) => firstHour + 60 * i);
    return html`<div class="day ${beyond ? 'beyond' : ''} ${beds > 1 ? 'beds' : ''}" role="group" aria-label=${summary}>
      <span class="name">${say.day(day, beds > 1 ? say.bed(bed + 1) : '')}</span>
      <div class="bar">
        ${parts.map((part) => this.stretch(part, length))}
        ${
          lunch === null
            ? nothing
            : html`<span
              class="part lunch"
              title=${say.lunchTo(wallClock(plan, lunch.fromMinute), wallClock(plan, lunch.fromMinute + lunch.minutes))}
              style="left: ${(100 * lunch.fromMinute) / length}%; width: ${(100 * lunch.minutes) / length}%"
            ></span>`
        }
      </div>
      ${
        bed < beds - 1
          ? nothing
          : html`<div class="hours" aria-hidden="true">
            ${hours.map((at) => html`<span class=${at === 0 ? 'edge' : ''} style="left: ${(100 * at) / length}%">${wallClock(plan, at)}</span>`)}
          </div>`
      }
    </div>`;
  }

  override render() {
    const { plan } = this;
    const closes = plan.clock.workMinutes + (plan.clock.lunch?.minutes ?? 0);
    const length = plan.parts.reduce((most, part) => Math.max(most, part.toMinute), closes);
    const beds = plan.parts.reduce((most, part) => Math.max(most, part.bed + 1), 1);
    // What is left of a visit begins on the day on which it is.
    const first = plan.parts.reduce((least, part) => Math.min(least, part.day), plan.daysNeeded);
    const days = Array.from({ length: plan.daysNeeded - first + 1 }, (_, d) => first + d);
    return html`<div class="days" role="region" aria-label=${say.daysByClock} tabindex="0">
        ${days.map((day) => Array.from({ length: beds }, (_, bed) => this.day(day, bed, beds, length)))}
      </div>
      <ul class="key" aria-label=${say.whatBarsMean}>
        <li>${say.pullInInksColour(html`<i class="print"></i>`)}</li>
        <li>${say.mountOrChangeOffset(html`<i class="mount"></i>`)}</li>
        <li>${say.mixOrWashUp(html`<i class="wash"></i>`)}</li>
        <li>${say.waitI(html`<i class="wait"></i>`)}</li>
        ${plan.clock.lunch === null ? nothing : html`<li>${say.lunch(html`<i class="lunch" style="height: 15px"></i>`)}</li>`}
      </ul>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-day-bars': DayBars;
  }
}
