import { css } from 'lit';

/** A number on a line of its own: its name, its field, its unit. */
export const fieldLine = css`
  .field {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto 3.5em;
    align-items: center;
    gap: var(--space-4);
  }
  .field .soft {
    font-size: var(--type-small);
  }
  .field input {
    width: 4.8em;
  }
  .field input[role='spinbutton'] {
    text-align: right;
  }
`;
