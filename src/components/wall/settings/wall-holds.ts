import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Problem } from '../../../engine/base/error.ts';
import { choiceOf, holdsOf, withHold, withInkKept, withoutHold } from '../../../engine/explore/settings/hold-menu.ts';
import type { Hold } from '../../../engine/explore/types.ts';
import type { Project } from '../../../engine/project/types.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { engineFor } from '../../../workers/client/client.ts';
import type { AppStore } from '../../app-store.ts';
import { controls } from '../../ui/controls-style.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/wall/settings.ts';
import { inkChip, inkChipStyles } from '../print/print-ink-chip.ts';

const CHOICES: readonly (readonly [string, string])[] = [
  ['free', say.mayMove],
  ['first', say.staysFirst],
  ['last', say.staysLast],
  ['place', say.staysInThisPlace],
  ['lies', say.liesAsItDoes],
  ['ink', say.keepsItsInk],
  ['out', say.neverThere],
];

/** Choices of menus that are made in one task of the page: each row has one for every other pull. */
const CHOICES_AT_ONCE = 160;

/** 3 from `holds[3]`; −1 for another place. */
function indexIn(where: string): number {
  return Number(/^holds\[(\d+)\]$/.exec(where)?.[1] ?? -1);
}

/** The stack that the wall starts from, and what of it may not change. */
@customElement('wall-holds')
export class WallHolds extends LitElement {
  static override styles = [
    controls,
    inkChipStyles,
    css`
      :host {
        display: block;
      }
      ol {
        list-style: none;
        margin: 0;
        padding: 0;
      }
      li {
        padding: var(--space-2) 0;
      }
      .pull {
        display: grid;
        grid-template-columns: 1.5em 22px minmax(0, 1fr) fit-content(128px);
        align-items: center;
        gap: var(--space-4);
      }
      .ink {
        min-height: 32px;
        padding: 0;
        border: 0;
        background: none;
      }
      .ink[aria-pressed='true'] {
        box-shadow: none;
      }
      .ink[aria-pressed='true'] .chip {
        outline: 2px solid var(--accent);
        outline-offset: 2px;
      }
      .number {
        color: var(--ink-soft);
        text-align: right;
      }
      .name {
        overflow: hidden;
        text-overflow: ellipsis;
        white-space: nowrap;
      }
      li[data-out] .name {
        text-decoration: line-through;
        color: var(--ink-soft);
      }
      select {
        field-sizing: content;
        min-width: 0;
        border-color: transparent;
        background: none;
        color: var(--ink-soft);
        font-size: var(--type-small);
        padding: var(--space-2) var(--space-1);
        text-overflow: ellipsis;
      }
      select:hover {
        border-color: var(--line);
      }
      select[data-held] {
        color: var(--ink);
        font-weight: 600;
      }
      select[data-bad] {
        border-color: var(--accent);
      }
      .more {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--space-4);
        padding-left: calc(1.5em + 38px);
        font-size: var(--type-small);
        font-weight: 600;
      }
      .more button {
        min-height: 28px;
        padding: 0 var(--space-3);
        font-size: var(--type-small);
      }
      .note {
        margin: var(--space-4) 0;
        color: var(--ink-soft);
        font-size: var(--type-small);
      }
      .problem {
        border-left: 3px solid var(--accent);
        padding: var(--space-2) 0 var(--space-2) var(--space-5);
        margin: var(--space-4) 0;
        font-size: var(--type-label);
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) project!: Project;
  @property({ attribute: false }) problems: readonly Problem[] = [];

  /** What of the stack hardly prints as it is meant. */
  @state() private notes: readonly Problem[] = [];
  /** How many rows stand; the others follow, some in each task. */
  private stand = 0;
  private looked: { drawer: Studio; bench: readonly Pull[] } | null = null;
  // What is so wrong that it cannot be looked at, the wall tells itself.
  private readonly looking = new Work<readonly Problem[]>(this, {
    found: (notes) => (this.notes = notes),
    failed: () => (this.notes = []),
  });

  protected override willUpdate(): void {
    const { drawer: studio, bench } = this.project;
    if (this.stand < bench.length) this.stand += Math.ceil(CHOICES_AT_ONCE / (bench.length + CHOICES.length));
    if (this.looked?.drawer === studio && this.looked.bench === bench) return;
    this.looked = { drawer: studio, bench };
    void this.looking.start(() => engineFor('picture').printNotes({ studio: studio, bench }));
  }

  protected override updated(): void {
    if (this.stand < this.project.bench.length) setTimeout(() => this.requestUpdate());
  }

  private nameOf(pull: Pull): string {
    return this.project.drawer.screens.find((screen) => screen.id === pull.screen)?.name ?? pull.screen;
  }

  private label(hold: Hold): string {
    if (hold.kind !== 'before') return CHOICES.find(([choice]) => choice === hold.kind)?.[1] ?? hold.kind;
    const then = this.project.bench.findIndex((pull) => pull.id === hold.other);
    return say.staysUnder(then + 1);
  }

  private set(holds: Hold[]): void {
    this.store.dispatch({ kind: 'set-holds', holds });
  }

  /** Where the hold of a pull is chosen. @param state what is chosen, and whether it cannot be met */
  private menu(pull: Pull, position: number, { choice, held, bad }: { choice: string; held: boolean; bad: boolean }) {
    const { bench, explore } = this.project;
    return html`<select
      aria-label=${say.whatMustStayOf(position + 1, this.nameOf(pull))}
      ?data-held=${held}
      ?data-bad=${bad}
      aria-invalid=${bad}
      .value=${live(choice)}
      @change=${(event: Event) => {
        this.set(withHold(explore.holds, pull.id, (event.target as HTMLSelectElement).value));
        // A further “stays under” leaves the first one in the menu.
        this.requestUpdate();
      }}
    >
      ${CHOICES.map(([value, text]) => html`<option value=${value} ?selected=${value === choice}>${text}</option>`)}
      <optgroup label=${say.staysUnder2}>
        ${bench.map((then, i) =>
          then.id === pull.id
            ? nothing
            : html`<option value="before:${then.id}" ?selected=${`before:${then.id}` === choice}>
                ${say.staysUnderI(i + 1)} ${this.nameOf(then)}
              </option>`,
        )}
      </optgroup>
    </select>`;
  }

  /** Holds of a pull beside the first, each with a button that lifts it. */
  private further(holds: readonly Hold[], position: number) {
    const { explore } = this.project;
    return html`<div class="more">
      ${holds.map(
        (hold) => html`<span>
          ${this.label(hold)}<button
            class="quiet"
            aria-label=${say.takeAwayOfPull(this.label(hold), position + 1)}
            @click=${() => this.set(withoutHold(explore.holds, hold))}
          >
            ✕
          </button>
        </span>`,
      )}
    </div>`;
  }

  private row(pull: Pull, position: number) {
    const { explore, drawer: studio } = this.project;
    const holds = holdsOf(explore.holds, pull.id);
    const shown = holds[0];
    const choice = shown === undefined ? 'free' : choiceOf(shown);
    const inkKept = holds.some((hold) => hold.kind === 'ink');
    const more = holds.slice(1).filter((hold) => hold.kind !== 'ink');
    const name = this.nameOf(pull);
    const ink = studio.inks.find((entry) => entry.id === pull.ink);
    const wrong = this.problems.filter(({ where }) => holds.some((hold) => hold === explore.holds[indexIn(where)]));
    return html`<li ?data-out=${choice === 'out'}>
      <div class="pull">
        <span class="number">${position + 1}</span>
        <button
          type="button"
          class="ink"
          aria-pressed=${inkKept}
          aria-label=${say.keepInkOfPull(position + 1, ink?.name ?? pull.ink)}
          title=${say.keptInEveryPrint(ink?.name ?? pull.ink, inkKept)}
          @click=${() => this.set(withInkKept(explore.holds, pull.id, !inkKept))}
        >
          ${inkChip(ink)}
        </button>
        <span class="name" title=${say.in(name, ink?.name ?? pull.ink)}>${name}</span>
        ${this.menu(pull, position, { choice, held: shown !== undefined, bad: wrong.length > 0 })}
      </div>
      ${more.length > 0 ? this.further(more, position) : nothing}
      ${wrong.map((problem) => html`<p class="problem" role="alert">${problem.message}</p>`)}
    </li>`;
  }

  override render() {
    const { bench } = this.project;
    const rows = bench
      .map((pull, position) => ({ pull, position }))
      .reverse()
      .slice(0, this.stand);
    return html`
      ${this.problems
        .filter(({ code, where }) => code.startsWith('hold.') && this.project.explore.holds[indexIn(where)] === undefined)
        .map((problem) => html`<p class="problem" role="alert">${problem.message}</p>`)}
      ${
        this.notes.length > 0
          ? html`<div role="status" aria-label=${say.aboutThisStack}>${this.notes.map(({ message }) => html`<p class="note">${message}</p>`)}</div>`
          : nothing
      }
      <ol aria-label=${say.pullsOfBenchsStack}>
        ${repeat(
          rows,
          ({ pull }) => pull.id,
          ({ pull, position }) => this.row(pull, position),
        )}
      </ol>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-holds': WallHolds;
  }
}
