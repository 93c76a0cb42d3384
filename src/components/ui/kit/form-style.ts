import { css } from 'lit';

/** What is asked in a dialog: fields below each other, and the buttons that end it. */
export const formStyle = css`
  form {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--space-7);
  }
  .stacked {
    display: grid;
    gap: var(--space-2);
  }
  .buttons {
    display: flex;
    justify-content: end;
    gap: var(--space-4);
  }
`;
