import { html, nothing, type TemplateResult } from 'lit';
import { say } from '../../words/en/ui/kit.ts';

/** What a dialog shows besides what is asked in it. */
export interface DialogHead {
  /** What it is called. */
  heading: string;
  /** More of what it is about, behind its name. */
  beside?: unknown;
  /** Whether it has a close button; without, a button in it must close it. */
  closable?: boolean;
  onClose?: () => void;
}

function close(event: Event): void {
  (event.currentTarget as Element).closest('dialog')?.close();
}

/**
 * A dialog over everything: its name, what is in it, and its close button. Escape closes it.
 * Wants `dialogStyle`. No element of its own: what is in a dialog must lie within it in the page, or
 * labels and focus do not find each other.
 */
export function dialogBox({ heading, beside, closable, onClose }: DialogHead, content: unknown): TemplateResult {
  return html`<dialog aria-label=${heading} @close=${onClose ?? nothing}>
    <div class="dialog-head">
      <h2>${heading} ${beside ?? nothing}</h2>
      ${closable === true ? html`<button type="button" class="quiet" aria-label=${say.close} @click=${close}>✕</button>` : nothing}
    </div>
    ${content}
  </dialog>`;
}
