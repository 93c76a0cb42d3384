import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { changesInShort } from '../../../engine/explore/look/changes.ts';
import { spreadOfWall } from '../../../engine/explore/look/spread-of-wall.ts';
import type { SeenPrint } from '../../../engine/explore/search/explorer.ts';
import type { Variant } from '../../../engine/explore/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { fixed } from '../../../engine/words/language.ts';
import type { DifferencePicture } from '../../../workers/api/wall-tools-api.ts';
import { wallTools } from '../../../workers/client/client.ts';
import '../../ui/print/picture-view.ts';
import { foldMark } from '../../ui/kit/fold-mark-style.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/wall/print.ts';
import { say as run } from '../../words/en/wall/run.ts';
import { originOf } from '../run/wall-origins.ts';
import { type Beside, besideWords } from './why-words.ts';

const HEIGHT_PX = 200;
/** Where there is room for two lines alone. */
const NARROW = matchMedia('(max-width: 760px)');
/** What differs by more is counted, ΔE00. */
const OVER_DELTA_E = 3;

/** In a line, what sets the print in focus apart; of two prints, where they differ; of none, how different the wall's are. */
@customElement('wall-print-why')
export class PrintWhy extends LitElement {
  static override styles = [
    foldMark,
    css`
    :host {
      position: relative;
      display: block;
      padding: var(--space-3) var(--space-7);
      background: var(--table);
      border-top: 1px solid var(--line);
      font-size: var(--type-small);
    }
    p {
      margin: 0;
      min-height: 2.8em;
      /* Whole, however long; what differs in a print of eighty pulls is scrolled. */
      max-height: 5.6em;
      overflow-y: auto;
      line-height: 1.4;
      overflow-wrap: anywhere;
      hyphens: auto;
      scrollbar-width: thin;
    }
    p:not([title]) {
      color: var(--ink-soft);
    }
    :host([side='right']) figure {
      left: auto;
      right: var(--space-5);
    }
    figure {
      position: absolute;
      z-index: 2;
      left: var(--space-5);
      bottom: calc(100% + 8px);
      width: 120px;
      margin: 0;
      padding: var(--space-2);
      border: 1px solid var(--line);
      background: var(--table);
      box-shadow: var(--shadow);
      pointer-events: none;
    }
    figcaption {
      padding-top: var(--space-1);
      font-size: var(--type-fine);
      color: var(--ink-soft);
    }
    @media (max-width: 760px) {
      :host {
        padding: var(--space-2) var(--space-5);
      }
      :host([data-none]) {
        display: none;
      }
      /* Two lines, and the rest at a tap: the prints need the room. */
      p {
        min-height: 2.8em;
        max-height: 9.8em;
      }
      p[data-folds] {
        padding-right: 44px;
        cursor: pointer;
      }
      p[data-folds='shut'] {
        display: -webkit-box;
        -webkit-box-orient: vertical;
        -webkit-line-clamp: 2;
        line-clamp: 2;
        overflow: hidden;
      }
      figure {
        width: 84px;
      }
    }
  `,
  ];

  /** The print in focus; null when none is. */
  @property({ attribute: false }) variant: Variant | null = null;
  /** Another one that it is held against; null for none. */
  @property({ attribute: false }) other: Variant | null = null;
  @property({ attribute: false }) drawer: Studio | null = null;
  /** Whether it waits for another print to be held against. */
  @property({ attribute: false }) holds = false;
  /** Where it hangs among others; null where it is not held against those round it. */
  @property({ attribute: false }) beside: Beside | null = null;
  /** What the wall's prints look like; null while more arrive. */
  @property({ attribute: false }) looks: readonly SeenPrint[] | null = null;
  /** What is said of no print in particular. */
  @state() private spread = '';
  private spreads: ReturnType<typeof setTimeout> | undefined;
  /** Whether all is shown where there is room for two lines. */
  @state() private open = false;
  /** Whether two lines there are not enough. */
  @state() private long = false;
  private asked = '';
  /** Tells `tall`, px, as it grows with what it says. */
  private readonly grows = new ResizeObserver(() => {
    this.measure();
    this.dispatchEvent(new CustomEvent('tall', { detail: this.offsetHeight }));
  });
  @query('p') private line!: HTMLElement | null;
  private readonly work = new Work<DifferencePicture>(this);

  override connectedCallback(): void {
    super.connectedCallback();
    this.grows.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.grows.disconnect();
    clearTimeout(this.spreads);
  }

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (!changed.has('looks')) return;
    this.spread = '';
    clearTimeout(this.spreads);
    // A task of its own: the end of a search has the whole room drawn anew in one.
    if (this.looks !== null) this.spreads = setTimeout(() => this.tellSpread());
  }

  private tellSpread(): void {
    const looks = (this.looks ?? []).map(({ look }) => look);
    const spread = spreadOfWall(looks);
    this.spread = spread === null ? '' : say.spread(looks.length, fixed(spread, 2));
  }

  private measure(): void {
    const { line } = this;
    this.long = line !== null && NARROW.matches && line.scrollHeight > 2.5 * parseFloat(getComputedStyle(line).lineHeight);
  }

  protected override updated(): void {
    this.measure();
    const { variant, other, drawer: studio } = this;
    const asked = variant === null || other === null || studio === null ? '' : `${variant.id} ${other.id}`;
    if (asked === this.asked) return;
    this.asked = asked;
    this.work.clear();
    if (variant === null || other === null || studio === null) return;
    this.work.follow(() =>
      wallTools().difference({ studio, a: variant.pulls, b: other.pulls, heightPx: HEIGHT_PX, overDeltaE: OVER_DELTA_E }),
    );
  }

  private alone(variant: Variant): string {
    const parents = originOf(variant)?.parents ?? [];
    const from = parents.map(({ name, pulls }) => {
      const changes = changesInShort(pulls, variant.pulls);
      return name === run.stackOnBench ? say.fromBench(changes) : say.from(name, changes);
    });
    const waits = this.holds ? say.chooseAnotherPrintTo : '';
    const beside = this.beside === null ? '' : besideWords(this.beside);
    return [waits, beside, ...from].filter((text) => text !== '').join(' ');
  }

  private both(variant: Variant, other: Variant): string {
    const { found } = this.work;
    const figures = found === null ? '' : say.deltaEInMeanOf(fixed(found.mean, 1), Math.round(100 * found.share), OVER_DELTA_E);
    // Counted: named one by one they take lines, and the wall would jump as the mouse goes over it.
    return say.printAgainstPrint(other.index + 1, variant.index + 1, figures, changesInShort(variant.pulls, other.pulls));
  }

  override render() {
    const { variant, other, drawer: studio } = this;
    if (variant === null || studio === null) return html`<p>${this.spread}</p>`;
    const text = other === null ? this.alone(variant) : this.both(variant, other);
    const picture = other === null ? null : (this.work.found?.picture ?? null);
    const { open, long } = this;
    const turn = (): void => void (this.open = !open);
    return html`<p title=${text} data-folds=${long ? (open ? 'open' : 'shut') : nothing} @click=${long ? turn : null}>${text}</p>
      ${long ? html`<button class="fold-mark up" aria-expanded=${open} aria-label=${say.allThatSetsItApart} @click=${turn}></button>` : nothing}
      ${picture === null || other === null ? nothing : html`<figure><ps-picture .picture=${picture} label=${say.wherePrintDiffersFrom(other.index + 1, variant.index + 1)}></ps-picture><figcaption>${say.darkWhereAndDiffer(variant.index + 1, other.index + 1)}</figcaption></figure>`}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-print-why': PrintWhy;
  }
}
