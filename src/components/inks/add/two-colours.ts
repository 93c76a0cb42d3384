import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Problem } from '../../../engine/base/error.ts';
import { roundedLab } from '../../../engine/colour/lab.ts';
import type { Grounds } from '../../../engine/ink/characterise/card.ts';
import { nearestInkColours } from '../../../engine/ink/characterise/nearest-colours.ts';
import type { Lab } from '../../../engine/ink/types.ts';
import type { InkCurvesResult } from '../../../workers/api/ink-api.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import { closeStackHost } from '../../ui/layout-style.ts';
import { Work } from '../../ui/work.ts';
import './colour-field.ts';
import { say } from '../../words/en/inks/add.ts';

/** What a drawdown shows over both halves of the card. */
export interface Colours {
  overWhite: Lab;
  overBlack: Lab;
}

/** Two colours that an ink can have, with the curves that have them. */
export interface ColoursFound extends Colours {
  kx: number[];
  sx: number[];
  /** How many bands had to be moved to be physical. */
  moved: number;
}

/**
 * The two colours of an ink. Sends `found` when an ink can have them, `refused` when it cannot; then
 * the nearest that it can have are offered.
 */
@customElement('two-colours')
export class TwoColours extends LitElement {
  static override styles = [
    controls,
    closeStackHost,
    css`
      .unsaved {
        gap: var(--space-3);
      }
      .unsaved span {
        flex-basis: 100%;
      }
      .problem {
        color: var(--accent);
      }
    `,
  ];

  /** As they stand; new ones drop what was asked for. */
  @property({ attribute: false }) colours!: Colours;
  /** What they are seen on; left out, the invented card. */
  @property({ attribute: false }) grounds: Grounds | undefined;
  /** What is said of colours that were refused. */
  @property() unsaved = say.notSaved;
  /** Colours that were asked for and could not be had. */
  @state() private wanted: Colours | null = null;
  @state() private problems: Problem[] = [];
  private readonly curves = new Work<{ colours: Colours; curves: InkCurvesResult }>(this, {
    found: ({ colours, curves }) => this.show(colours, curves),
    failed: (message) => {
      this.problems = [{ code: 'ink.curves', message, where: '' }];
    },
  });

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('colours')) return;
    const before = changed.get('colours') as Colours | undefined;
    if (before?.overWhite === this.colours.overWhite && before.overBlack === this.colours.overBlack) return;
    this.curves.stop();
    this.wanted = null;
    this.problems = [];
  }

  /** Asks for the curves of two colours; the latest call wins. */
  async ask(colours: Colours): Promise<void> {
    this.wanted = colours;
    await this.curves.start(async () => ({
      colours,
      curves: await engineFor('picture').inkCurves(colours.overWhite, colours.overBlack, this.grounds),
    }));
  }

  private show(colours: Colours, { problems, adjusted, kx, sx }: InkCurvesResult): void {
    this.problems = problems.map((problem) => ({ ...problem, message: problem.message.replace('Ink “this ink”', 'This ink') }));
    if (problems.length > 0) this.dispatchEvent(new CustomEvent('refused'));
    else this.dispatchEvent(new CustomEvent<ColoursFound>('found', { detail: { ...colours, kx, sx, moved: adjusted.length } }));
  }

  /** Takes what can be printed in place of what cannot. */
  private takeNearest(): void {
    if (this.wanted === null) return;
    const near = nearestInkColours(this.wanted.overWhite, this.wanted.overBlack, this.grounds);
    void this.ask({ overWhite: roundedLab(near.overWhite), overBlack: roundedLab(near.overBlack) });
  }

  private forget(): void {
    this.curves.stop();
    this.wanted = null;
    this.problems = [];
    this.dispatchEvent(new CustomEvent('forgotten'));
  }

  override render() {
    const { overWhite, overBlack } = this.wanted ?? this.colours;
    const problemAt = (where: string): string => this.problems.find((problem) => problem.where === where)?.message ?? '';
    const otherProblems = this.problems.filter((problem) => problem.where !== 'overWhite' && problem.where !== 'overBlack');
    return html`
      <colour-field label=${say.oneStrokeOverWhite} .lab=${overWhite} .problem=${problemAt('overWhite')} @pick=${(event: CustomEvent<Lab>) => void this.ask({ overBlack, overWhite: event.detail })}></colour-field>
      <colour-field label=${say.oneStrokeOverBlack} .lab=${overBlack} .problem=${problemAt('overBlack')} @pick=${(event: CustomEvent<Lab>) => void this.ask({ overWhite, overBlack: event.detail })}></colour-field>
      ${otherProblems.map((problem) => html`<p class="problem small" role="alert">${problem.message}</p>`)}
      ${
        this.problems.length === 0
          ? nothing
          : html`<div class="row unsaved">
            <span class="small">${this.unsaved}</span>
            <button @click=${this.takeNearest}>${say.takeNearest}</button>
            <button class="quiet" @click=${this.forget}>${say.leaveItAsIt}</button>
          </div>`
      }
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'two-colours': TwoColours;
  }
}
