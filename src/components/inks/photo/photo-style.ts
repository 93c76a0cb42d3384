import { css } from 'lit';

export const photoStyles = css`
  :host {
    display: grid;
    gap: 12px;
  }
  .file {
    overflow-wrap: anywhere;
  }
  .shot {
    display: grid;
    gap: 12px;
  }
  .many .picking {
    order: -1;
  }
  /* Many squares: what comes next stays beside the photo. */
  @media (min-width: 1000px) {
    .many {
      grid-template-columns: minmax(0, 560px) minmax(200px, 260px);
      gap: 20px;
      align-items: start;
    }
    .many .picking {
      order: 0;
      position: sticky;
      top: 12px;
      grid-template-columns: 1fr;
    }
  }
  .photo-box {
    position: relative;
    line-height: 0;
  }
  .photo {
    width: 100%;
    height: auto;
    cursor: crosshair;
    touch-action: pinch-zoom pan-y;
  }
  .mark {
    position: absolute;
    width: 20px;
    height: 20px;
    margin: -10px;
    border-radius: 50%;
    background: #fffdf9;
    color: #1d1b18;
    box-shadow: 0 0 0 1px #1d1b18;
    font: 650 12px/20px var(--font);
    text-align: center;
    pointer-events: none;
  }
  .dot {
    width: 8px;
    height: 8px;
    margin: -4px;
  }
  .aim {
    width: 14px;
    height: 14px;
    margin: -7px;
    border-radius: 0;
    background: none;
    box-shadow:
      0 0 0 1px #fff,
      0 0 0 2px #000;
  }
  .picking {
    display: grid;
    grid-template-columns: auto 1fr;
    gap: 16px;
    align-items: start;
  }
  .loupe {
    width: 124px;
    height: 124px;
    border-radius: 50%;
    background: var(--wall-deep);
    box-shadow: 0 0 0 1px var(--line);
  }
  .patches {
    display: grid;
    gap: 4px;
    font-size: 14px;
  }
  .patches label {
    min-height: 26px;
  }
  .one {
    display: grid;
    gap: 3px;
    justify-items: stretch;
  }
  .one select {
    width: 100%;
    min-width: 0;
  }
  .chip {
    width: 26px;
    height: 18px;
    box-shadow: inset 0 0 0 1px var(--line);
  }
  .problem {
    color: var(--accent);
  }
  @media (pointer: coarse) {
    .patches label {
      min-height: 36px;
    }
  }
`;
