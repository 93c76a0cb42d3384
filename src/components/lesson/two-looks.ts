import { css, html } from 'lit';
import { say } from '../words/en/lesson/room.ts';

export const lookStyles = css`
  .looks {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(300px, 100%), 1fr));
    gap: var(--space-8) var(--space-10);
    margin-top: var(--space-7);
  }
  .looks figure {
    display: grid;
    grid-template-columns: 128px minmax(0, 1fr);
    gap: var(--space-8);
    align-items: center;
    margin: 0;
  }
  .looks svg {
    display: block;
    width: 128px;
    box-shadow: var(--shadow);
  }
  .looks figcaption b {
    display: block;
  }
`;

function look(overlap: string, name: string, words: string) {
  return html`<figure>
    <svg viewBox="0 0 128 96" aria-hidden="true">
      <rect width="128" height="96" fill="var(--white)" />
      <rect x="16" y="16" width="60" height="44" fill="var(--example-cool)" />
      <rect x="52" y="36" width="60" height="44" fill="var(--example-warm)" />
      <rect x="52" y="36" width="24" height="24" fill=${overlap} />
    </svg>
    <figcaption><b>${name}</b>${words}</figcaption>
  </figure>`;
}

/**
 * Two different things that look alike to students. Drawn, not computed: the lightness order is the point.
 * An overlap read as see-through paper lies between its neighbours in lightness; transparent ink
 * over ink on white is darker than both.
 */
export function twoLooks() {
  return html`<div class="looks">
    ${look('var(--example-between)', say.looksLikeSeeThrough, say.whereTheyOverlapTone)}
    ${look('var(--example-dark)', say.isTransparentInkOn, say.whereTheyOverlapIt)}
  </div>`;
}
