import { css } from 'lit';
import { chipStyles } from '../board/order-chips.ts';

export const levelPlayStyle = css`
  ${chipStyles}
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--space-7);
  }
  .guess {
    display: grid;
    grid-template-columns: minmax(230px, 290px) minmax(0, 1fr);
    gap: var(--space-8) var(--space-9);
    align-items: start;
  }
  .task {
    display: grid;
    gap: var(--space-5);
    text-wrap: pretty;
  }
  .answers {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-5);
  }
  .answers button {
    min-height: 52px;
    gap: var(--space-5);
    font-size: var(--type-lead);
  }
  .answers .right {
    box-shadow: var(--edge-pressed);
    border-color: var(--accent);
  }
  @media (forced-colors: active) {
    .answers .right {
      border: 3px double Highlight;
    }
  }
  .verdict {
    min-height: 1.5em;
    font-size: var(--type-lead);
    font-weight: 600;
  }
  .target {
    margin: 0;
    width: min(100%, max(170px, calc((100dvh - 290px) * 0.737)));
  }
  .target ps-picture {
    box-shadow: var(--shadow);
  }
  .target figcaption {
    padding-top: var(--space-3);
    color: var(--ink-soft);
    font-size: var(--type-small);
  }
  @media (max-width: 700px) {
    .guess {
      grid-template-columns: minmax(0, 1fr);
    }
    .target {
      width: min(100%, calc(46dvh * 0.737));
      justify-self: center;
    }
  }
  [slot='pictures'] .target {
    width: min(100%, 230px);
    margin-bottom: var(--space-7);
  }
`;
