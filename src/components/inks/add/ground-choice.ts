import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { labD50, roundedLab } from '../../../engine/colour/lab.ts';
import type { Grounds } from '../../../engine/ink/characterise/card.ts';
import { type GroundChoice, groundsOf, usualGrounds } from '../../../engine/ink/characterise/own-grounds.ts';
import { swatchOf } from '../../../engine/ink/film/swatch.ts';
import { printInks } from '../../../engine/ink/mix/mix.ts';
import type { Lab } from '../../../engine/ink/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import { closeStackHost } from '../../ui/layout-style.ts';
import { say } from '../../words/en/inks/add.ts';
import './colour-field.ts';
import { markStyles, swatchTemplate } from '../overprint/marked-swatch.ts';

const CARD = 'card';
const PAPER = 'paper';
const TYPED = 'typed';

/** What the ink was seen on: one's own paper and black, the invented card, or colours typed. Sends `pick` with the choice. */
@customElement('ground-choice')
export class GroundChoiceField extends LitElement {
  static override styles = [
    controls,
    closeStackHost,
    markStyles,
    css`
      .ground {
        display: grid;
        grid-template-columns: 30px 76px minmax(0, 1fr);
        gap: var(--space-5);
        align-items: center;
        font-size: var(--type-label);
      }
      .ground select {
        width: 100%;
      }
      .ground .swatch {
        height: 30px;
        box-shadow: var(--edge);
      }
      .problem {
        color: var(--accent);
      }
    `,
  ];

  @property({ attribute: false }) studio!: Studio;
  @property({ attribute: false }) choice!: GroundChoice;

  private pick(change: Partial<GroundChoice>): void {
    this.dispatchEvent(new CustomEvent<GroundChoice>('pick', { detail: { ...this.choice, ...change } }));
  }

  /** The curves of the choice, or why there are none. */
  private grounds(): { grounds: Grounds; problem: '' } | { grounds: null; problem: string } {
    try {
      return { grounds: groundsOf(this.choice, this.studio), problem: '' };
    } catch (error) {
      return { grounds: null, problem: sentenceOf(error) };
    }
  }

  override render() {
    const { studio } = this;
    const { white, black } = this.choice;
    const { grounds, problem } = this.grounds();
    const lab = (ground: 'white' | 'black'): Lab => roundedLab(labD50((grounds ?? groundsOf(usualGrounds(studio), studio))[ground]));
    const swatch = (curve: ArrayLike<number> | undefined) =>
      curve === undefined ? html`<span class="swatch"></span>` : swatchTemplate(swatchOf(curve));
    return html`
      <label class="ground">
        ${swatch(grounds?.white)}<span>${say.yourWhite}</span>
        <select
          aria-label=${say.yourWhite}
          @change=${(event: Event) => {
            const { value } = event.target as HTMLSelectElement;
            this.pick({ white: value === TYPED ? { lab: lab('white') } : (value as 'card' | 'paper') });
          }}
        >
          <option value=${PAPER} .selected=${white === PAPER}>${say.yourPaper(studio.paper.name || say.thePaper)}</option>
          <option value=${CARD} .selected=${white === CARD}>${say.standardCard88}</option>
          <option value=${TYPED} .selected=${typeof white === 'object'}>${say.colourOfYourOwn}</option>
        </select>
      </label>
      ${typeof white === 'object' ? html`<colour-field label=${say.bareWhite} .lab=${white.lab} @pick=${(event: CustomEvent<Lab>) => this.pick({ white: { lab: event.detail } })}></colour-field>` : nothing}
      <label class="ground">
        ${swatch(grounds?.black)}<span>${say.yourBlack}</span>
        <select
          aria-label=${say.yourBlack}
          @change=${(event: Event) => {
            const { value } = event.target as HTMLSelectElement;
            this.pick({ black: value === TYPED ? { lab: lab('black') } : value === CARD ? CARD : { ink: value } });
          }}
        >
          <option value=${CARD} .selected=${black === CARD}>${say.standardCard3}</option>
          ${printInks(studio.inks).map(({ id, name }) => html`<option value=${id} .selected=${typeof black === 'object' && 'ink' in black && black.ink === id}>${say.onYourPaper(name)}</option>`)}
          <option value=${TYPED} .selected=${typeof black === 'object' && 'lab' in black}>${say.colourOfYourOwn}</option>
        </select>
      </label>
      ${typeof black === 'object' && 'lab' in black ? html`<colour-field label=${say.bareBlack} .lab=${black.lab} @pick=${(event: CustomEvent<Lab>) => this.pick({ black: { lab: event.detail } })}></colour-field>` : nothing}
      ${problem === '' ? nothing : html`<p class="problem small" role="alert">${problem}</p>`}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ground-choice': GroundChoiceField;
  }
}
