import { css } from 'lit';

export const photoStyles = css`
  :host {
    display: grid;
    gap: var(--space-6);
  }
  .file {
    overflow-wrap: anywhere;
  }
  .shot {
    display: grid;
    gap: var(--space-6);
  }
  .many .picking {
    order: -1;
  }
  /* Many squares: what comes next stays beside the photo. */
  @media (min-width: 1000px) {
    .many {
      grid-template-columns: minmax(0, 560px) minmax(200px, 260px);
      gap: var(--space-8);
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
    forced-color-adjust: none;
    position: absolute;
    width: 20px;
    height: 20px;
    margin: calc(-1 * var(--space-5));
    border-radius: 50%;
    background: var(--stock);
    color: var(--on-stock);
    box-shadow: var(--edge-stock);
    font: 650 var(--type-fine) / 20px var(--font);
    text-align: center;
    pointer-events: none;
  }
  .dot {
    width: 8px;
    height: 8px;
    margin: calc(-1 * var(--space-2));
  }
  .aim {
    width: 14px;
    height: 14px;
    margin: calc(-1 * var(--space-3));
    border-radius: 0;
    background: none;
    box-shadow: var(--edge-both);
  }
  .picking {
    display: grid;
    grid-template-columns: auto 1fr;
    gap: var(--space-7);
    align-items: start;
  }
  .loupe {
    width: 124px;
    height: 124px;
    border-radius: 50%;
    background: var(--wall-deep);
    box-shadow: var(--edge-line);
  }
  .patches {
    display: grid;
    gap: var(--space-2);
    font-size: var(--type-label);
  }
  .patches label {
    min-height: 26px;
  }
  .one {
    display: grid;
    gap: var(--space-2);
    justify-items: stretch;
  }
  .one select {
    width: 100%;
    min-width: 0;
  }
  .chip {
    width: 26px;
    height: 18px;
    box-shadow: var(--edge-inside);
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
