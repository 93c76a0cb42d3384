import { css } from 'lit';

/** Silhouettes are film positives: black on white by day, on a dimmed light table by night. */
export const film = css`
  :host {
    --film: #fffdf9;
    --film-line: #d9d3c7;
    --film-soft: #6b655b;
    --film-rest: #a39c90;
    --film-ink: #1d1b18;
    --film-accent: #a63c20;
  }
  @media (prefers-color-scheme: dark) {
    :host {
      --film: #d8d1c5;
      --film-line: #bdb5a7;
      --film-soft: #5b564d;
      --film-rest: #8d8578;
    }
  }
`;
