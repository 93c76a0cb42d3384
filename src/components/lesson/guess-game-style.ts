import { css } from 'lit';

export const guessGameStyle = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, min(520px, max(170px, 45dvh))) minmax(260px, 1fr);
    gap: var(--space-8) var(--space-10);
    align-items: start;
  }
  .print {
    background: var(--white);
    box-shadow: var(--shadow);
  }
  .asks {
    display: grid;
    gap: var(--space-6);
  }
  .asks h3 {
    font-size: var(--type-head);
  }
  .answers {
    display: grid;
    gap: var(--space-5);
    max-width: 420px;
  }
  .answers button {
    justify-content: flex-start;
    gap: var(--space-6);
    min-height: 52px;
    font-size: var(--type-lead);
    text-align: left;
  }
  .answers button.right {
    border: 2px solid var(--ink);
    opacity: 1;
  }
  .answers button[aria-pressed='true']:not(.right) > :last-child {
    text-decoration: line-through;
  }
  .verdict {
    min-height: 3em;
    font-size: var(--type-lead);
  }
  .orders {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-6) var(--space-8);
  }
  @media (max-width: 900px) {
    :host {
      grid-template-columns: minmax(0, 1fr);
    }
    .print {
      max-width: 420px;
    }
  }
`;
