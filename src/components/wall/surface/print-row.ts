import { html, nothing } from 'lit';
import type { Variant } from '../../../engine/explore/types.ts';
import { printName } from '../../../engine/recipe/lineage.ts';
import { counted } from '../../ui/words.ts';
import { lineageOf } from '../run/wall-origins.ts';

/**
 * What a print is called aloud: 'Print 7 of 60, 9 pulls'; '' for none.
 * @param place its number on its own wall; null for a print of another wall
 */
export function printSentence(variant: Variant | undefined, place: { number: number; of: number } | null): string {
  if (variant === undefined) return '';
  const name = place === null ? printName(lineageOf(variant)).replace('no.', 'No.') : `Print ${place.number} of ${place.of}`;
  return `${name}, ${counted(variant.pulls.length, 'pull')}`;
}

interface PrintRow {
  /** Indices of the prints in the order in which they hang. */
  sequence: readonly number[];
  columns: number;
  focused: number;
  /** What a print is called aloud; '' for none. */
  sentence(index: number): string;
  kept: ReadonlySet<number>;
  selected: ReadonlySet<number>;
  choose(index: number): void;
}

/** The focused print's row as buttons, for those who walk the page by its controls. */
export function printRow({ sequence, columns, focused, sentence, kept, selected, choose }: PrintRow) {
  const first = Math.floor(Math.max(0, sequence.indexOf(focused)) / columns) * columns;
  const row = sequence.slice(first, first + columns).filter((index) => sentence(index) !== '');
  return html`<ul class="visually-hidden" aria-label="Prints in this row">
    ${row.map(
      (index) => html`<li>
        <button tabindex="-1" aria-current=${index === focused ? 'true' : nothing} @click=${() => choose(index)}>
          ${sentence(index)}${kept.has(index) ? ', kept' : ''}${selected.has(index) ? ', selected' : ''}
        </button>
      </li>`,
    )}
  </ul>`;
}
