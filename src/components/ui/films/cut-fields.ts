import { css, html } from 'lit';
import { EngineError } from '../../../engine/base/error.ts';
import { JOINT_MM } from '../../../engine/output/film/film-limits.ts';
import type { SheetCuts } from '../../../engine/output/film/sections.ts';
import { say } from '../../words/en/ui/films.ts';
import '../kit/number-field.ts';
import type { NumberPick } from '../kit/number-field.ts';

/** Where a sheet is cut, as typed: mm from the left and from the top, and what neighbours share, mm. */
export interface TypedCuts {
  across: string;
  down: string;
  sharedMm: number;
}

/** A sheet that is not cut. */
export const NO_CUTS: TypedCuts = { across: '', down: '', sharedMm: 0 };

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

/** The fields in which cuts are typed, and what is said below them. Overlapped and trimmed at marks: common practice, no source. */
export function cutFields(cuts: TypedCuts, change: (change: Partial<TypedCuts>) => void, words: string) {
  const field = (name: 'across' | 'down', label: string, hint: string) => html`<label class="stacked"
    >${label}
    <input type="text" inputmode="decimal" placeholder=${hint} .value=${cuts[name]} @change=${(event: Event) => change({ [name]: (event.target as HTMLInputElement).value })} />
  </label>`;
  return html`<div class="cuts">
    ${field('across', say.uprightCutsMmFrom, '280, 560')} ${field('down', say.levelCutsMmFrom, '400')}
    <ps-number
      label=${say.overlapAtEachCut}
      unit="mm"
      .min=${JOINT_MM.least}
      .max=${JOINT_MM.most}
      .value=${cuts.sharedMm}
      @pick=${({ detail }: NumberPick) => change({ sharedMm: detail })}
    ></ps-number>
    <p class="soft small">${cuts.sharedMm === 0 ? say.sectionsMeetEdgeOnEdge : say.neighboursShareStrip} ${words}</p>
  </div>`;
}

/** Cuts as numbers. @throws EngineError 'film.cut' for what is no number */
export function cutsOf({ across, down, sharedMm }: TypedCuts): SheetCuts {
  return { acrossMm: numbersOf(across, false), downMm: numbersOf(down, true), overlapMm: sharedMm };
}

/** Cuts as they are typed. */
export function typedCuts({ acrossMm, downMm, overlapMm = 0 }: SheetCuts): TypedCuts {
  return { across: acrossMm.join(', '), down: downMm.join(', '), sharedMm: overlapMm };
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
