import { html, nothing } from 'lit';
import { deltaE2000 } from '../../../engine/colour/delta-e.ts';
import { labSwatch } from '../../../engine/ink/film/lab-swatch.ts';
import { type Swatch, swatchOf } from '../../../engine/ink/film/swatch.ts';
import type { Reading } from '../../../engine/ink/target/target.ts';
import { readingText } from '../../../engine/ink/target/typed-colour.ts';
import type { Misread } from '../../../engine/ink/target/typed-readings.ts';
import { fixed } from '../../../engine/words/language.ts';
import { say } from '../../words/en/inks/target.ts';
import { swatchTemplate } from '../overprint/marked-swatch.ts';

/** A square to be filled in. */
export interface SquareField {
  number: number;
  /** What stands beside the number. */
  label: string;
  /** What it is called aloud, with its number. */
  name: string;
  reading: Reading | undefined;
  /** What was typed and is no colour. */
  misread: Misread | undefined;
  expected: Swatch;
  /** The paper that the screen shows as its white; undefined for the perfect diffuser. */
  white: readonly number[] | undefined;
}

/** What a field tells. */
export interface FieldEvents {
  change: (text: string) => void;
  key: (event: KeyboardEvent) => void;
  paste: (event: ClipboardEvent) => void;
}

/** A field for a square's colour, beside it what was expected, what was measured and how far apart they are. */
export function squareField({ number, label, name, reading, misread, expected, white }: SquareField, events: FieldEvents) {
  const measured = measuredSwatch(reading, white);
  return html`<div class="field">
    <label>
      <span class="name"><b>${number}</b> ${label}</span>
      <input
        type="text"
        data-square=${number}
        autocomplete="off"
        spellcheck="false"
        placeholder="L a b"
        aria-label=${say.square(name)}
        aria-invalid=${misread === undefined ? nothing : 'true'}
        .value=${misread?.text ?? (reading === undefined ? '' : readingText(reading.lab))}
        @change=${(event: Event) => events.change((event.target as HTMLInputElement).value)}
        @keydown=${events.key}
        @paste=${events.paste}
      />
    </label>
    <span class="chips" title=${say.asInksAreThought}>
      ${swatchTemplate(expected)}${measured === null ? html`<span class="swatch none"></span>` : swatchTemplate(measured)}
    </span>
    <span class="far small soft">${measured === null ? '' : `ΔE ${fixed(deltaE2000(expected.lab, measured.lab), 1)}`}</span>
    ${misread === undefined ? nothing : html`<p class="problem small" role="alert">${misread.problem}</p>`}
  </div>`;
}

function measuredSwatch(reading: Reading | undefined, white: readonly number[] | undefined): Swatch | null {
  if (reading === undefined) return null;
  return reading.reflectance === undefined ? labSwatch(reading.lab, white) : swatchOf(reading.reflectance, white);
}
