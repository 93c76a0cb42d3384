import { css } from 'lit';
import { chipStyles } from './order-chips.ts';

export const orderPileStyle = css`
  ${chipStyles}
  :host {
    display: block;
  }
  ul {
    display: flex;
    flex-direction: column;
    gap: var(--space-2);
    margin: 0;
    padding: 0;
    list-style: none;
  }
  li {
    display: flex;
    align-items: stretch;
    min-width: 0;
    background: var(--sheet);
    box-shadow: var(--edge-line);
  }
  li.waits .pull > * {
    opacity: 0.4;
  }
  li.dragged {
    box-shadow: var(--shadow-high);
  }
  .pull {
    flex: 1;
    min-width: 0;
    justify-content: flex-start;
    gap: var(--space-5);
    min-height: var(--pile-row, 48px);
    padding: var(--space-2) var(--space-5);
    border-color: transparent;
    background: none;
    font-size: inherit;
    text-align: left;
    cursor: grab;
    touch-action: none;
  }
  li.dragged .pull {
    cursor: grabbing;
  }
  .chip {
    width: var(--pile-chip, 30px);
    height: var(--pile-chip, 30px);
    font-size: inherit;
  }
  .name {
    min-width: 0;
    overflow: hidden;
    font-weight: 600;
    line-height: 1.2;
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  .ink {
    display: var(--pile-ink, block);
    color: var(--ink-soft);
    font-size: var(--pile-fine, var(--type-small));
    font-weight: 400;
  }
  .arrows {
    display: grid;
    grid-template-columns: auto auto;
  }
  .arrow {
    min-width: 32px;
    min-height: 0;
    padding: 0 var(--space-3);
    font-size: inherit;
  }
  .end {
    padding: var(--space-2) 0;
    color: var(--ink-soft);
    font-size: var(--pile-fine, var(--type-small));
  }
  @media (pointer: coarse) {
    .arrow {
      min-width: var(--touch);
    }
  }
`;
