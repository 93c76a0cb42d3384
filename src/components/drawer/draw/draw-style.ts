import { css } from 'lit';

/** A board or picture beside its settings; below each other on a phone. */
export const drawStyle = css`
  :host {
    --dialog-width: 1040px;
  }
  .drawing {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(250px, 310px);
    gap: var(--space-8);
    margin-bottom: var(--space-7);
  }
  .shown,
  .settings {
    display: grid;
    gap: var(--space-5);
    align-content: start;
    min-width: 0;
  }
  @media (min-width: 721px) {
    /* Whatever is said or set, the board stays where the hand is. */
    .drawing.steady {
      grid-template-rows: calc(62dvh + 4em);
    }
    .steady .settings {
      overflow: auto;
      padding: 2px;
    }
  }
  .pair {
    display: grid;
    grid-template-columns: repeat(2, minmax(0, 1fr));
    gap: var(--space-5);
  }
  .numbers {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(130px, 1fr));
    align-items: end;
    gap: var(--space-5);
  }
  .buttons {
    flex-wrap: wrap;
  }
  @media (max-width: 720px) {
    .drawing {
      grid-template-columns: minmax(0, 1fr);
      gap: var(--space-6);
    }
    draw-board {
      --board-height: 46dvh;
    }
  }
`;
