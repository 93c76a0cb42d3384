import { css } from 'lit';

export const pullPanelStyle = css`
  :host {
    display: grid;
    gap: var(--space-7);
  }
  .head {
    display: flex;
    align-items: center;
    gap: var(--space-6);
  }
  .head > div {
    flex: 1;
    min-width: 0;
  }
  h3 {
    overflow-wrap: anywhere;
  }
  .glyph {
    width: 44px;
    height: 44px;
    flex: none;
  }
  legend {
    padding: 0;
    font-size: var(--type-small);
    color: var(--ink-soft);
    margin-bottom: var(--space-2);
  }
  .inks {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(128px, 1fr));
    gap: var(--space-1) var(--space-4);
    max-height: 240px;
    overflow-y: auto;
    padding: var(--space-1);
    margin: calc(-1 * var(--space-1));
  }
  .ink {
    min-height: 34px;
    padding: 0 var(--space-3);
    gap: var(--space-5);
    min-width: 0;
  }
  .ink span {
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  .ink:has(:checked) {
    font-weight: 600;
  }
  .pair {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-6) var(--space-7);
    align-items: end;
  }
  .quick {
    display: flex;
    gap: var(--space-3);
  }
  .quick button {
    padding: var(--space-2) var(--space-5);
  }
  .order {
    display: flex;
    flex-wrap: wrap;
    align-items: end;
    gap: var(--space-4);
    padding-top: var(--space-7);
    border-top: 1px solid var(--line);
  }
  .order ps-number {
    width: 4.4em;
  }
  .order .remove {
    margin-left: auto;
  }
  .alike {
    display: grid;
    gap: var(--space-6);
    padding-top: var(--space-7);
    border-top: 1px solid var(--line);
  }
  .alike button {
    font-size: var(--type-label);
  }
  [aria-disabled='true'] {
    opacity: 0.45;
    cursor: default;
  }
  @media (pointer: coarse) {
    .ink {
      min-height: var(--touch);
    }
  }
`;
