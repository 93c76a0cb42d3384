import { css } from 'lit';

export const veilStyle = css`
  dialog {
    --dialog-width: 1080px;
  }
  .looking {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-6) var(--space-7);
  }
  .both {
    display: flex;
    justify-content: center;
    gap: var(--space-9);
  }
  .both figure {
    margin: 0;
    min-width: 0;
    flex: 0 1 auto;
  }
  figcaption {
    padding-top: var(--space-4);
    font-size: var(--type-small);
    color: var(--ink-soft);
  }
  figcaption b {
    color: var(--ink);
  }
  .both ps-picture {
    height: min(38dvh, 400px);
    aspect-ratio: var(--sheet-ratio);
    max-width: 100%;
    box-shadow: var(--shadow);
  }
  legend {
    padding: 0 0 var(--space-4);
    font-size: var(--type-small);
    color: var(--ink-soft);
  }
  .choices {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(146px, 1fr));
    gap: var(--space-6) var(--space-6);
  }
  .choice {
    display: grid;
    grid-template-columns: 56px minmax(0, 1fr);
    gap: var(--space-5);
    align-items: start;
    padding: var(--space-4);
    font-size: var(--type-small);
    line-height: 1.3;
  }
  .choice ps-picture {
    width: 56px;
    box-shadow: var(--shadow-low);
  }
  .choice span {
    display: grid;
    gap: var(--space-1);
    min-width: 0;
    overflow-wrap: anywhere;
  }
  @media (max-width: 760px) {
    dialog {
      padding: var(--space-7);
    }
    .both {
      gap: var(--space-6);
    }
    .both ps-picture {
      height: auto;
      width: 100%;
    }
    .both figure {
      flex: 1 1 0;
    }
    .buttons {
      position: sticky;
      bottom: -16px;
      margin: 0 calc(-1 * var(--space-7)) calc(-1 * var(--space-7));
      padding: var(--space-6) var(--space-7);
      background: var(--table);
      border-top: 1px solid var(--line);
    }
  }
`;
