import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Project } from '../../engine/project/types.ts';
import { type AppStore, StoreController } from '../app-store.ts';
import { roomEntry } from '../rooms.ts';
import { controls } from '../ui/controls-style.ts';
import { say } from '../words/en/help/room.ts';
import { labelled } from './labelled.ts';
import { noteStep, stepNoted } from './steps-noted.ts';
import { FIRST_STEPS } from './steps.ts';

/** The first steps of a newcomer, one at a time above the room; gone for good when they are done or closed. */
@customElement('first-steps')
export class FirstSteps extends LitElement {
  static override styles = [
    controls,
    css`
      aside {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--space-2) var(--space-6);
        padding: var(--space-2) var(--space-8);
        background: var(--sheet);
        border-bottom: 1px solid var(--line);
      }
      p {
        flex: 1 1 24ch;
        margin: 0;
      }
      a {
        color: var(--accent);
      }
      .count {
        color: var(--ink-soft);
        font-variant-numeric: tabular-nums;
      }
      @media (max-width: 560px) {
        aside {
          padding: var(--space-2) var(--space-6);
          font-size: var(--type-label);
        }
        .count {
          flex: 1;
        }
        p {
          order: 1;
          flex-basis: 100%;
        }
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @state() private step = stepNoted();
  /** The project when this step began. */
  private began: Project | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
  }

  private go(step: number | null): void {
    this.step = step !== null && step < FIRST_STEPS.length ? step : null;
    this.began = null;
    noteStep(this.step);
  }

  protected override willUpdate(): void {
    if (this.step === null) return;
    const { project } = this.store;
    this.began ??= project;
    // Another project is no step of this one.
    if (this.began.title !== project.title) this.began = project;
    if (FIRST_STEPS[this.step]?.done(this.began, project) === true) this.go(this.step + 1);
  }

  override render() {
    const step = this.step === null ? undefined : FIRST_STEPS[this.step];
    if (this.step === null || step === undefined) return nothing;
    const { address, label, id } = roomEntry(step.room);
    const last = this.step === FIRST_STEPS.length - 1;
    return html`<aside aria-label=${say.firstSteps}>
      <span class="count">${say.firstStepsOf(this.step + 1, FIRST_STEPS.length)}</span>
      <p aria-live="polite">
        ${id === this.store.room ? labelled(step.text) : html`${say.nextThe(html`<a href=${address}>${label}</a>`)}`}
      </p>
      <button class="quiet" @click=${() => this.go((this.step ?? 0) + 1)}>${last ? say.done : say.nextStep}</button>
      <button class="quiet" aria-label=${say.closeFirstSteps} @click=${() => this.go(null)}>✕</button>
    </aside>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'first-steps': FirstSteps;
  }
}
