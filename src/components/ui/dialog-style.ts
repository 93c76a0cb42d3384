import { css } from 'lit';

/** Dialogs on the Bench. */
export const dialogStyle = css`
  dialog {
    width: min(560px, calc(100vw - 24px));
    max-height: calc(100dvh - 24px);
    padding: 22px;
    border: 1px solid var(--line);
    border-radius: 4px;
    background: var(--table);
    color: var(--ink);
    box-shadow: var(--shadow);
  }
  dialog::backdrop {
    background: rgb(30 26 22 / 0.35);
  }
  form {
    display: grid;
    gap: 16px;
  }
  .stacked {
    display: grid;
    gap: 4px;
  }
  .buttons {
    display: flex;
    justify-content: end;
    gap: 8px;
  }
`;
