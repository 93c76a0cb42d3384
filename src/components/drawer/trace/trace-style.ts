import { css } from 'lit';

/** A picture beside how it is traced; below each other on a phone. */
export const traceStyle = css`
  :host {
    --dialog-width: 980px;
  }
  .tracing {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(240px, 300px);
    gap: var(--space-8);
  }
  .shown {
    display: grid;
    gap: var(--space-4);
    align-content: start;
  }
  .picture {
    position: relative;
    display: grid;
    justify-items: center;
    background: var(--wall);
    border: 1px solid var(--line);
    border-radius: var(--radius);
    overflow: hidden;
  }
  canvas {
    display: block;
    max-width: 100%;
    max-height: min(56dvh, 560px);
    touch-action: none;
  }
  canvas[data-measuring] {
    cursor: crosshair;
  }
  .settings {
    display: grid;
    gap: var(--space-6);
    align-content: start;
  }
  .settings input[type='range'] {
    width: 100%;
  }
  @media (max-width: 720px) {
    .tracing {
      grid-template-columns: minmax(0, 1fr);
      gap: var(--space-6);
    }
    canvas {
      max-height: 34dvh;
    }
  }
`;
