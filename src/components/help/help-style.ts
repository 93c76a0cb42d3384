import { css } from 'lit';

/** A page of help: text of a readable width, a picture, things to do and words with what they mean. */
export const helpStyle = css`
  .part {
    display: grid;
    gap: var(--space-6);
    margin-top: var(--space-7);
  }
  .part p {
    max-width: 68ch;
    margin: 0;
  }
  img {
    width: 100%;
    height: auto;
    border: 1px solid var(--line);
    border-radius: var(--radius);
  }
  dl {
    display: grid;
    grid-template-columns: minmax(8em, 11em) minmax(0, 1fr);
    gap: var(--space-4) var(--space-7);
    margin: 0;
  }
  dt {
    font-weight: 650;
  }
  dd {
    margin: 0;
    color: var(--ink-soft);
  }
  dd b {
    color: var(--ink);
    font-weight: 600;
  }
  .ours {
    margin-left: var(--space-2);
    color: var(--accent);
  }
  @media (max-width: 560px) {
    dl {
      grid-template-columns: minmax(0, 1fr);
      gap: var(--space-1);
    }
    dd {
      margin-bottom: var(--space-5);
    }
  }
`;
