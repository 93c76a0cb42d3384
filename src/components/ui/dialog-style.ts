import { css } from 'lit';

/** Dialogs on the Bench. */
export const dialogStyle = css`
  dialog {
    width: min(560px, calc(100vw - 24px));
    max-height: calc(100dvh - 24px);
    padding: var(--space-8);
    border: 1px solid var(--line);
    border-radius: var(--radius);
    background: var(--table);
    color: var(--ink);
    box-shadow: var(--shadow);
  }
  dialog::backdrop {
    background: var(--backdrop);
  }
  form {
    display: grid;
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
