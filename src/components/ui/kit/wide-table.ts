import { html, type TemplateResult } from 'lit';

/** A table that scrolls sideways where it is wider than its place, by keys as well. Wants a style for `.scroll`. */
export function wideTable(label: string, table: unknown): TemplateResult {
  return html`<div class="scroll" role="group" tabindex="0" aria-label=${label}>${table}</div>`;
}
