import { css } from 'lit';

export const wallViewStyles = css`
  :host {
    display: grid;
    grid-template-rows: minmax(0, 1fr) auto;
    min-width: 0;
    min-height: 0;
    background: var(--wall);
  }
  .surface {
    position: relative;
    min-height: 0;
    overflow: hidden;
    touch-action: none;
    cursor: grab;
    user-select: none;
    -webkit-user-select: none;
  }
  .surface[data-dragging] {
    cursor: grabbing;
  }
  .surface:focus-visible {
    outline-offset: -3px;
  }
  .surface canvas {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    pointer-events: none;
  }
  .note {
    position: absolute;
    inset: 0;
    display: grid;
    place-content: center;
    padding: 32px;
    text-align: center;
    color: var(--ink-soft);
    pointer-events: none;
  }
  .note p {
    max-width: 38ch;
  }
  .rail {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 4px 10px;
    padding: 6px 16px;
    min-height: 50px;
    background: var(--table);
    border-top: 1px solid var(--line);
  }
  .rail .which {
    flex: 1 1 auto;
    min-width: 0;
  }
  .rail .deeds,
  .rail .stand {
    display: flex;
    gap: 6px;
  }
  .rail .stand {
    margin-left: 10px;
    padding-left: 16px;
    border-left: 1px solid var(--line);
  }
  .dot {
    display: inline-block;
    width: 9px;
    height: 9px;
    margin: 0 4px 0 6px;
    border-radius: 50%;
    background: var(--accent);
  }
  @media (max-width: 760px) {
    .rail {
      padding: 4px 10px;
    }
    .rail .which {
      flex-basis: 100%;
      font-size: 14px;
    }
    .rail .deeds {
      flex: 1;
    }
    .rail .deeds button {
      flex: 1;
      padding: 4px 8px;
      white-space: nowrap;
    }
    .rail .stand {
      margin: 0;
      padding: 0;
      border: 0;
    }
    .rail .stand .step {
      display: none;
    }
  }
`;
