import { html } from 'lit';
import { live } from 'lit/directives/live.js';

/** Sheets to tick. */
export interface SheetTicks {
  legend: string;
  numbers: readonly number[];
  chosen: ReadonlySet<number>;
  choose(number: number, chosen: boolean): void;
}

/** A box to tick for each of some sheets. */
export function sheetTicks({ legend, numbers, chosen, choose }: SheetTicks) {
  return html`<fieldset class="many">
    <legend>${legend}</legend>
    ${numbers.map(
      (number) => html`<label
        ><input
          type="checkbox"
          .checked=${live(chosen.has(number))}
          @change=${(event: Event) => choose(number, (event.target as HTMLInputElement).checked)}
        />${number}</label
      >`,
    )}
  </fieldset>`;
}
