import { html, LitElement, nothing } from 'lit';
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
import { wallHoldsStyle } from './wall-holds-style.ts';

const CHOICES: readonly (readonly [string, string])[] = [
  ['free', say.mayMove],
  ['first', say.staysFirst],
  ['last', say.staysLast],
  ['place', say.staysInThisPlace],
  ['lies', say.liesAsItDoes],
  ['ink', say.keepsItsInk],
  ['out', say.neverThere],
];

/** Rows that are made in one task of the page. */
const ROWS_AT_ONCE = 16;
/** The menus of so many pulls name every other pull at once; of more, a menu does when one comes to it: 200 have 40,000 entries. */
const ALL_NAMED = 16;

/** 3 from `holds[3]`; −1 for another place. */
function indexIn(where: string): number {
  return Number(/^holds\[(\d+)\]$/.exec(where)?.[1] ?? -1);
}

/** The stack that the wall starts from, and what of it may not change. */
@customElement('wall-holds')
export class WallHolds extends LitElement {
  static override styles = [controls, inkChipStyles, wallHoldsStyle];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) project!: Project;
  @property({ attribute: false }) problems: readonly Problem[] = [];

  /** What of the stack hardly prints as it is meant. */
  @state() private notes: readonly Problem[] = [];
  /** Pulls whose menus one has come to. */
  private readonly named = new Set<string>();
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
    if (this.stand < bench.length) this.stand += ROWS_AT_ONCE;
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

  /** Names every other pull in a menu, before it opens. */
  private name(pull: Pull): void {
    if (this.project.bench.length <= ALL_NAMED || this.named.has(pull.id)) return;
    this.named.add(pull.id);
    this.requestUpdate();
    this.performUpdate();
  }

  /** The pulls that a pull may stay under, as far as they stand in its menu. */
  private others(pull: Pull, choice: string): { other: Pull; i: number }[] {
    const { bench } = this.project;
    const all = bench.length <= ALL_NAMED || this.named.has(pull.id);
    return bench.map((other, i) => ({ other, i })).filter(({ other }) => other.id !== pull.id && (all || `before:${other.id}` === choice));
  }

  /** Where the hold of a pull is chosen. @param state what is chosen, and whether it cannot be met */
  private menu(pull: Pull, position: number, { choice, held, bad }: { choice: string; held: boolean; bad: boolean }) {
    const { explore } = this.project;
    return html`<select
      @focus=${() => this.name(pull)}
      @pointerdown=${() => this.name(pull)}
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
        ${this.others(pull, choice).map(
          ({ other, i }) =>
            html`<option value="before:${other.id}" ?selected=${`before:${other.id}` === choice}>
              ${say.staysUnderI(i + 1)} ${this.nameOf(other)}
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
