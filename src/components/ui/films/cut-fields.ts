import { css, html } from 'lit';
import { EngineError } from '../../../engine/base/error.ts';
import type { SheetCuts } from '../../../engine/output/film/sections.ts';
import { say } from '../../words/en/ui/films.ts';

/** Where a sheet is cut, as typed: mm from the left and from the top. */
export interface TypedCuts {
  across: string;
  down: string;
}

export const cutFieldsStyle = css`
  .cuts {
    display: grid;
    grid-template-columns: repeat(2, minmax(0, 1fr));
    align-items: end;
    gap: var(--space-5) var(--space-6);
    padding-block: var(--space-3);
  }
  .cuts label {
    color: var(--ink-soft);
    font-size: var(--type-small);
  }
  .cuts input {
    width: 100%;
    color: var(--ink);
    font-size: var(--type-text);
  }
  .cuts p {
    grid-column: 1 / -1;
  }
`;

/** The two fields in which cuts are typed, and what is said below them. */
export function cutFields(cuts: TypedCuts, change: (change: Partial<TypedCuts>) => void, words: string) {
  const field = (name: keyof TypedCuts, label: string, hint: string) => html`<label class="stacked"
    >${label}
    <input type="text" inputmode="decimal" placeholder=${hint} .value=${cuts[name]} @change=${(event: Event) => change({ [name]: (event.target as HTMLInputElement).value })} />
  </label>`;
  return html`<div class="cuts">
    ${field('across', say.uprightCutsMmFrom, '280, 560')} ${field('down', say.levelCutsMmFrom, '400')}
    <p class="soft small">${words}</p>
  </div>`;
}

/** Cuts as numbers. @throws EngineError 'film.cut' for what is no number */
export function cutsOf({ across, down }: TypedCuts): SheetCuts {
  return { acrossMm: numbersOf(across, false), downMm: numbersOf(down, true) };
}

/** '280, 420.5' as numbers. */
function numbersOf(text: string, fromTop: boolean): number[] {
  return text
    .split(/[,;\s]+/u)
    .filter((part) => part !== '')
    .map((part) => {
      const mm = Number(part);
      if (Number.isFinite(mm)) return mm;
      throw new EngineError('film.cut', say.isNoPlaceFor(part, fromTop));
    });
}
