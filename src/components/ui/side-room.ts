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
    align-content: start;
    padding: 28px 32px 64px;
    min-width: 0;
  }
  header h2 + .soft {
    margin-left: -6px;
  }
  .fill {
    flex: 1;
  }
  .side {
    min-width: 0;
    padding: 20px 24px 40px;
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
      padding: 18px 16px 40px;
    }
    .side {
      padding: 8px 16px 40px;
    }
    .back {
      margin: 0 0 8px -8px;
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
