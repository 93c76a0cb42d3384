import { css, html, type TemplateResult } from 'lit';
import { entryAt } from '../../../engine/base/at.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { inkHexes, writingOn } from '../../ui/kit/ink-chip.ts';
import { orderWords } from './lesson-words.ts';

export const chipStyles = css`
  .chip {
    display: inline-grid;
    place-items: center;
    width: var(--chip-side, 26px);
    height: var(--chip-side, 26px);
    border: 1px solid color-mix(in srgb, var(--ink) 45%, transparent);
    font-size: var(--type-fine);
    font-weight: 650;
    line-height: 1;
    flex: none;
  }
  .order {
    display: inline-flex;
  }
  .order .chip + .chip {
    margin-left: -5px;
    margin-top: 5px;
  }
  .order .chip:nth-child(n + 3) {
    margin-top: 10px;
  }
  .order .chip:nth-child(n + 4) {
    margin-top: 15px;
  }
  .order .chip:nth-child(n + 5) {
    margin-top: 20px;
  }
  .order .chip:nth-child(n + 6) {
    margin-top: 25px;
  }
`;

/** The number of a pull on its ink. */
export function pullChip(pull: Pull, index: number, studio: Studio): TemplateResult {
  const ink = studio.inks.find((entry) => entry.id === pull.ink);
  const paint = ink === undefined ? 'var(--no-ink)' : inkHexes(ink).overWhite;
  return html`<span class="chip" style="background: ${paint}; color: ${writingOn(ink)}">${index + 1}</span>`;
}

/** An order as chips that lie over each other as the pulls do, first down at the left and lowest. */
export function orderChips(order: readonly number[], pulls: readonly Pull[], studio: Studio): TemplateResult {
  return html`<span class="order" role="img" aria-label=${orderWords(order)}
    >${order.map((at) => (pulls[at] === undefined ? '' : pullChip(entryAt(pulls, at), at, studio)))}</span
  >`;
}
