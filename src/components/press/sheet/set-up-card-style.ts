import { css } from 'lit';
import { screenMadeStyle } from '../plan/screen-made.ts';

export const setUpCardStyle = css`
  :host {
    display: block;
    min-width: 0;
    container-type: inline-size;
    scroll-margin-top: 16px;
  }
  .turn {
    display: flex;
    align-items: center;
    gap: var(--space-4);
    margin-bottom: var(--space-6);
  }
  .turn h3 {
    flex: 1;
    font-size: var(--type-lead);
  }
  .turn button {
    min-height: var(--touch);
  }
  .frame {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 150px;
    gap: var(--space-4) var(--space-8);
    padding: var(--space-7) 0;
    border-top: 1px solid var(--ink);
  }
  .screen {
    font-size: var(--type-title);
    line-height: 1.15;
    font-weight: 650;
    letter-spacing: -0.02em;
    overflow-wrap: anywhere;
  }
  ${screenMadeStyle}
  .facts {
    display: grid;
    gap: var(--space-5);
    align-content: start;
  }
  .ink {
    display: flex;
    align-items: center;
    gap: var(--space-6);
    font-size: var(--type-head);
    font-weight: 600;
  }
  .ink ps-ink-chip {
    width: 68px;
    height: 36px;
  }
  .offset-diagram {
    display: block;
    width: 150px;
    height: 150px;
  }
  .offset {
    font-size: var(--type-lead);
    font-weight: 600;
  }
  .do {
    font-weight: 600;
  }
  .note {
    padding: var(--space-4) var(--space-6);
    background: var(--table);
    border-left: 3px solid var(--ink);
  }
  .state {
    padding: var(--space-7) 0;
    border-top: 1px solid var(--line);
  }
  .state-head {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    justify-content: space-between;
    gap: var(--space-2) var(--space-6);
  }
  .take {
    display: grid;
    grid-template-columns: minmax(0, 300px) minmax(150px, 1fr);
    gap: var(--space-7) var(--space-9);
    align-items: start;
    margin-top: var(--space-6);
  }
  .pictures {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 16px minmax(0, 1fr);
    gap: var(--space-4);
    align-items: center;
  }
  figure {
    margin: 0;
    min-width: 0;
  }
  figcaption {
    padding-top: var(--space-3);
    font-size: var(--type-small);
    color: var(--ink-soft);
  }
  .print {
    display: block;
    width: 100%;
    background: var(--white);
    box-shadow: var(--shadow);
  }
  .arrow {
    color: var(--ink-soft);
    font-size: var(--type-head);
    text-align: center;
  }
  .sheets {
    --touched: 52px;
    position: relative;
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-4);
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .sheets label {
    justify-content: center;
    gap: var(--space-4);
    min-width: 68px;
    min-height: 48px;
    padding: var(--space-2) var(--space-6);
    border: 1px solid var(--line);
    background: var(--sheet);
    font-size: var(--type-lead);
    font-weight: 600;
    cursor: pointer;
  }
  .sheets label:has(:checked) {
    background: none;
    border-color: transparent;
    color: var(--ink-soft);
  }
  .sheets input {
    width: 24px;
    height: 24px;
  }
  @container (max-width: 520px) {
    .take {
      grid-template-columns: minmax(0, 1fr);
    }
    .pictures {
      max-width: 340px;
    }
    /* What is read in sentences runs under the diagram, over the whole width. */
    .facts {
      display: contents;
    }
    .facts > * {
      grid-column: 1;
    }
    .facts > .offset ~ * {
      grid-column: 1 / -1;
    }
    .offset-diagram {
      grid-column: 2;
      grid-row: 1 / 4;
    }
  }
  @container (max-width: 380px) {
    .frame {
      grid-template-columns: minmax(0, 1fr) 110px;
      gap: var(--space-4) var(--space-6);
    }
    .offset-diagram {
      width: 110px;
      height: 110px;
    }
    .offset-diagram text {
      display: none;
    }
  }
`;
