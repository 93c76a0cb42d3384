import { css } from 'lit';

export const wallTasteStyle = css`
  :host {
    position: relative;
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-3) var(--space-7);
    padding: var(--space-2) var(--space-7) var(--space-4);
    background: var(--wall);
    border-bottom: 1px solid var(--line);
  }
  p {
    flex: 1 1 380px;
    font-size: var(--type-label);
    text-wrap: pretty;
  }
  .towards input {
    width: 120px;
  }
  button,
  select {
    min-height: 32px;
  }
  .seldom,
  .teach {
    margin-left: auto;
  }
  /* It comes and goes, and the others stay under the hand, as they end at the edge. */
  .again {
    order: -1;
  }
  wall-this-or-that,
  wall-taught-list {
    position: absolute;
  }
  @media (max-width: 760px) {
    :host {
      gap: var(--space-2) var(--space-4);
      padding: var(--space-1) var(--space-5) var(--space-3);
    }
    p {
      flex-basis: 100%;
      padding-right: 34px;
      font-size: var(--type-small);
    }
    :host(:not([data-unfolded])) .more {
      display: none;
    }
    :host(:not([data-unfolded])) p {
      display: -webkit-box;
      overflow: hidden;
      -webkit-box-orient: vertical;
      -webkit-line-clamp: 3;
      line-clamp: 3;
    }
    .row {
      gap: var(--space-2) var(--space-3);
    }
    .seldom,
    .teach {
      margin-left: 0;
    }
    .teach {
      order: -1;
    }
    .fold-mark,
    p {
      order: -2;
    }
    .again {
      order: 0;
    }
    .teach button {
      padding-inline: var(--space-3);
    }
    .towards input {
      width: 110px;
    }
  }
`;
