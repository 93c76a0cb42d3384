import { css } from 'lit';

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
    gap: 8px;
    margin-bottom: 14px;
  }
  .turn h3 {
    flex: 1;
    font-size: 17px;
  }
  .turn button {
    min-height: var(--touch);
  }
  .frame {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 150px;
    gap: 8px 20px;
    padding: 16px 0;
    border-top: 1px solid var(--ink);
  }
  .screen {
    font-size: 26px;
    line-height: 1.15;
    font-weight: 650;
    letter-spacing: -0.02em;
    overflow-wrap: anywhere;
  }
  .facts {
    display: grid;
    gap: 10px;
    align-content: start;
  }
  .ink {
    display: flex;
    align-items: center;
    gap: 12px;
    font-size: 20px;
    font-weight: 600;
  }
  .ink ps-ink-chip {
    width: 68px;
    height: 36px;
  }
  .lay {
    display: block;
    width: 150px;
    height: 150px;
  }
  .lay-words {
    font-size: 17px;
    font-weight: 600;
  }
  .do {
    font-weight: 600;
  }
  .note {
    padding: 8px 12px;
    background: var(--table);
    border-left: 3px solid var(--ink);
  }
  .state {
    padding: 16px 0;
    border-top: 1px solid var(--line);
  }
  .state-head {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    justify-content: space-between;
    gap: 4px 12px;
  }
  .take {
    display: grid;
    grid-template-columns: minmax(0, 300px) minmax(150px, 1fr);
    gap: 16px 28px;
    align-items: start;
    margin-top: 12px;
  }
  .pictures {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 16px minmax(0, 1fr);
    gap: 8px;
    align-items: center;
  }
  figure {
    margin: 0;
    min-width: 0;
  }
  figcaption {
    padding-top: 6px;
    font-size: 13px;
    color: var(--ink-soft);
  }
  .print {
    display: block;
    width: 100%;
    background: #fff;
    box-shadow: var(--shadow);
  }
  .arrow {
    color: var(--ink-soft);
    font-size: 20px;
    text-align: center;
  }
  .sheets {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .sheets label {
    justify-content: center;
    gap: 8px;
    min-width: 68px;
    min-height: 48px;
    padding: 4px 12px;
    border: 1px solid var(--line);
    background: var(--sheet);
    font-size: 18px;
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
  }
  @container (max-width: 380px) {
    .frame {
      grid-template-columns: minmax(0, 1fr) 110px;
      gap: 8px 12px;
    }
    .lay {
      width: 110px;
      height: 110px;
    }
  }
`;
