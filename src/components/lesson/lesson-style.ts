import { css } from 'lit';

/** The whole window for a class: type that is read from the last row. */
const hallStyle = css`
  :host([hall]) {
    --type-fine: var(--hall-text);
    --type-small: var(--hall-text);
    --type-label: var(--hall-text);
    --type-text: var(--hall-text);
    --type-lead: var(--hall-text);
    --type-head: var(--hall-head);
    --type-title: var(--hall-head);
    --pile-row: 60px;
    --pile-chip: 48px;
    --chip-side: 48px;
    --pile-ink: none;
    --level-title: 0;
    --board-top: 200px;
    --board-pile: 36vw;
    --print: 11vw;
    position: fixed;
    inset: 0;
    z-index: 20;
    overflow: auto;
    background: var(--wall);
    font-size: var(--hall-text);
    line-height: 1.25;
  }
  :host([hall]) .room {
    gap: var(--space-5);
    padding: var(--space-5) var(--space-8);
  }
  :host([hall]) ps-lesson-levels {
    --board-top: 250px;
  }
  :host([hall]) [slot='pictures'] {
    margin-bottom: var(--space-6);
  }
  :host([hall]) ps-choice {
    flex: none;
  }
  :host([hall]) .top {
    flex-wrap: nowrap;
    gap: var(--space-6);
  }
`;

export const lessonStyles = css`
  ${hallStyle}
  .room {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--space-8);
    max-width: none;
    padding-top: var(--space-8);
  }
  .top {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-5) var(--space-8);
  }
  .headline {
    margin-right: auto;
  }
  .lead {
    margin: var(--space-2) 0 var(--space-6);
    max-width: 66ch;
  }
  .stale {
    margin-top: var(--space-6);
  }
  .why h2,
  .two h2 {
    margin-bottom: var(--space-5);
  }
  .whys {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 420px);
    gap: var(--space-8) var(--space-11);
    align-items: start;
  }
  .reasons {
    display: grid;
    gap: var(--space-3);
    max-width: 66ch;
    margin: 0 0 var(--space-8);
    padding: 0;
    list-style: none;
    text-wrap: pretty;
  }
  ps-order-graph {
    grid-template-columns: minmax(0, 1fr);
    justify-items: center;
    --graph-width: 300px;
  }
  @media (max-width: 900px) {
    .whys {
      grid-template-columns: minmax(0, 1fr);
    }
  }
`;
