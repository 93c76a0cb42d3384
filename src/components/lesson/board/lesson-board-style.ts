import { css } from 'lit';

export const lessonBoardStyle = css`
  :host {
    display: grid;
    grid-template-columns: var(--board-pile, minmax(230px, 290px)) minmax(0, auto) minmax(0, 1fr);
    grid-template-rows: auto 1fr;
    gap: var(--space-8) var(--space-9);
    align-items: start;
  }
  .pile {
    grid-column: 1;
  }
  ::slotted([slot='task']) {
    grid-row: 1;
    grid-column: 1;
  }
  .print {
    grid-row: 1 / span 2;
    grid-column: 2;
  }
  .pictures {
    grid-row: 1 / span 2;
    grid-column: 3;
  }
  /* Without a task above it, the pile stands at the top. */
  :host(:not([tasked])) .pile {
    grid-row: 1 / span 2;
  }
  .pile {
    display: grid;
    gap: var(--space-7);
  }
  .print {
    display: grid;
    gap: var(--space-5);
    position: sticky;
    top: var(--space-6);
    width: min(46vw, max(170px, calc((100dvh - var(--board-top, 215px)) * var(--sheet-aspect, 0.737))));
    min-width: min(100%, 300px);
  }
  .print.comparing {
    width: min(46vw, max(170px, calc((100dvh - var(--board-top, 215px) - 130px) * var(--sheet-aspect, 0.737))));
  }
  .build {
    display: flex;
    align-items: center;
    gap: var(--space-5);
  }
  .build p {
    flex: 1;
    min-width: 0;
    text-align: center;
    font-weight: 600;
  }
  .build button {
    min-width: 44px;
    font-size: var(--type-head);
    line-height: 1;
  }
  .pictures {
    min-width: 0;
  }
  .behind {
    opacity: 0.6;
  }
  ps-progress {
    margin-bottom: var(--space-5);
  }
  :host([hall]) .build button {
    min-width: 60px;
    min-height: 60px;
  }
  @media (max-width: 1100px) {
    :host {
      grid-template-columns: minmax(210px, 260px) minmax(0, 1fr);
    }
    .print {
      width: min(100%, max(170px, calc((100dvh - var(--board-top, 215px)) * var(--sheet-aspect, 0.737))));
    }
    .pictures {
      grid-row: 3;
      grid-column: 1 / -1;
    }
  }
  @media (max-width: 700px) {
    :host {
      display: flex;
      flex-direction: column;
      align-items: stretch;
      gap: var(--space-7);
    }
    ::slotted([slot='task']) {
      order: -3;
    }
    .print,
    .print.comparing {
      order: -2;
      position: static;
      width: 100%;
    }
    /* There is nothing to be done on it, and the print to be found shall be seen with the pulls. */
    .print.blind {
      display: none;
    }
    ps-lesson-sheet {
      justify-self: center;
      width: min(100%, max(170px, 40dvh * var(--sheet-aspect, 0.737)));
    }
    .pictures {
      order: -1;
    }
  }
`;
