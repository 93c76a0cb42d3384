import { css } from 'lit';

export const lessonStyles = css`
  .lead {
    margin: var(--space-2) 0 var(--space-6);
    max-width: 66ch;
  }
  .stale {
    margin-top: var(--space-6);
  }
  .result {
    margin-top: var(--space-10);
    scroll-margin-top: 16px;
  }
  .reasons {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(420px, 100%), 1fr));
    gap: var(--space-2) var(--space-10);
    max-width: 1180px;
    margin: var(--space-5) 0 0;
    padding: 0;
    list-style: none;
    text-wrap: pretty;
  }
  ps-progress {
    margin-top: var(--space-4);
  }
  .tools {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-6) var(--space-9);
    margin: var(--space-8) 0 var(--space-9);
  }
  ps-lesson-limits {
    flex: 0 1 600px;
  }
  .modes {
    display: flex;
  }
  .modes button + button {
    margin-left: -1px;
  }
  .where ps-number {
    width: 8.6em;
  }
  .columns {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(340px, 430px);
    gap: var(--space-10) var(--space-11);
    align-items: start;
  }
  .behind ps-contact-sheet {
    opacity: 0.6;
  }
  aside {
    position: sticky;
    top: 24px;
  }
  .move {
    display: grid;
    gap: var(--space-6);
  }
  .count-here {
    display: none;
    font-weight: 650;
    font-size: var(--type-lead);
  }
  .where {
    display: flex;
    flex-wrap: wrap;
    align-items: end;
    gap: var(--space-5) var(--space-7);
  }
  .chosen {
    display: flex;
    align-items: center;
    gap: var(--space-5);
    font-weight: 600;
  }
  ps-order-graph {
    grid-template-columns: minmax(0, 1fr);
    justify-items: center;
    margin-top: var(--space-7);
    --graph-width: 300px;
  }
  .two {
    margin-top: var(--space-11);
  }
  @media (max-width: 1180px) {
    .columns {
      grid-template-columns: minmax(0, 1fr) minmax(300px, 36vw);
      gap: var(--space-9);
    }
    ps-contact-sheet {
      --print: 150px;
    }
  }
  @media (max-width: 900px) {
    .columns {
      grid-template-columns: minmax(0, 1fr);
    }
    aside {
      display: contents;
    }
    .move {
      order: -1;
      max-width: 460px;
    }
    .count-here {
      display: block;
    }
    ps-order-graph {
      order: 1;
    }
  }
  @media (max-width: 760px) {
    ps-contact-sheet {
      --print: 140px;
    }
  }
`;
