import { css } from 'lit';

/** A field below its label. */
export const fieldStyle = css`
  :host {
    display: block;
    min-width: 0;
  }
  label {
    display: grid;
    gap: var(--space-2);
    justify-items: start;
  }
  .label {
    font-size: var(--type-small);
    color: var(--ink-soft);
  }
`;
