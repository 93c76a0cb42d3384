import { css } from 'lit';

/** A dialog, its head, and what is asked in it: fields below each other, and the buttons that end it. */
export const dialogStyle = css`
  dialog {
    width: min(var(--dialog-width, 560px), calc(100vw - 24px));
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
  .dialog-head {
    display: flex;
    align-items: start;
    justify-content: space-between;
    gap: var(--space-7);
    margin-bottom: var(--space-7);
  }
  .dialog-head button {
    flex: none;
    margin: calc(-1 * var(--space-2)) calc(-1 * var(--space-4)) 0 0;
  }
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
