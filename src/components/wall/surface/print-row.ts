import { html, nothing } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { Variant } from '../../../engine/explore/types.ts';
import { printName } from '../../../engine/recipe/lineage.ts';
import { say } from '../../words/en/wall/surface.ts';
import { lineageOf } from '../run/wall-origins.ts';

/**
 * What a print is called aloud: 'Print 7 of 60, 9 pulls'; '' for none.
 * @param place its number on its own wall, and of how many where these are known; null for a print of another wall
 * @param pulls how many it has, where that is known: to count them is to unpack them
 */
export function printSentence(
  variant: Variant | undefined,
  place: { number: number; of: number | null } | null,
  pulls = variant?.pulls.length ?? 0,
): string {
  if (variant === undefined) return '';
  const of = place?.of == null ? '' : say.of(place.of);
  const name = place === null ? printName(lineageOf(variant)).replace('no.', 'No.') : say.print(place.number, of);
  return say.pulls(name, pulls);
}

interface PrintRow {
  /** Indices of the prints in the order in which they hang. */
  sequence: readonly number[];
  columns: number;
  focused: number;
  has(index: number): boolean;
  /** How many prints hang; null while more arrive. */
  of: number | null;
  /** What a print is called aloud. */
  sentence(index: number): string;
  kept: ReadonlySet<number>;
  selected: ReadonlySet<number>;
  choose(index: number): void;
}

/** The focused print's row as buttons, for those who walk the page by its controls. */
export function printRow({ sequence, columns, focused, has, of, sentence, kept, selected, choose }: PrintRow) {
  const first = Math.floor(Math.max(0, sequence.indexOf(focused)) / columns) * columns;
  const row = sequence.slice(first, first + columns).filter(has);
  const list = () => html`<ul class="visually-hidden" aria-label=${say.printsInThisRow}>
    ${row.map(
      (index) => html`<li>
        <button tabindex="-1" aria-current=${index === focused ? 'true' : nothing} @click=${() => choose(index)}>
          ${say.keptSelected(sentence(index), kept.has(index), selected.has(index))}
        </button>
      </li>`,
    )}
  </ul>`;
  // Made anew only when something of it is other: while a wall hangs, a batch comes ten times a second.
  return guard([row.join(), of, focused, kept, selected], list);
}
