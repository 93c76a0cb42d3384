import { css, type ReactiveController, type ReactiveControllerHost } from 'lit';

const WIDE = '(min-width: 1000px)';

/** A room with shelves at the left and what is open beside them; on a phone it takes their place. */
export const sideRoomStyles = css`
  .room {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    min-height: 100%;
  }
  .left {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    align-content: start;
    padding: var(--space-9) var(--space-9) var(--space-11);
    min-width: 0;
  }
  header h2 + .soft {
    margin-left: calc(-1 * var(--space-3));
  }
  .fill {
    flex: 1;
  }
  .side {
    min-width: 0;
    padding: var(--space-8) var(--space-8) var(--space-10);
    background: var(--table);
  }
  @media (min-width: 1000px) {
    .room {
      height: 100%;
      overflow: hidden;
    }
    .room.open {
      grid-template-columns: minmax(0, 1fr) 420px;
    }
    .left,
    .side {
      overflow: auto;
    }
    .side {
      border-left: 1px solid var(--line);
    }
    .back {
      display: none;
    }
  }
  @media (max-width: 999px) {
    .room.open .left {
      display: none;
    }
    header h2 + .soft {
      margin-left: 0;
    }
    .left {
      padding: var(--space-7) var(--space-7) var(--space-10);
    }
    .side {
      padding: var(--space-4) var(--space-7) var(--space-10);
    }
    .back {
      margin: 0 0 var(--space-4) calc(-1 * var(--space-4));
    }
  }
`;

/** Tells whether there is room beside the shelves, and redraws when that changes. */
export class WideScreen implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private readonly query = matchMedia(WIDE);
  private readonly onChange = (): void => this.host.requestUpdate();

  constructor(host: ReactiveControllerHost) {
    this.host = host;
    host.addController(this);
  }

  get matches(): boolean {
    return this.query.matches;
  }

  hostConnected(): void {
    this.query.addEventListener('change', this.onChange);
  }

  hostDisconnected(): void {
    this.query.removeEventListener('change', this.onChange);
  }
}
