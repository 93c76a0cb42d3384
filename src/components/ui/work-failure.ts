import { html, nothing } from 'lit';
import './kit/problem.ts';
import { say } from '../words/en/ui/room.ts';
import type { Work } from './work.ts';

/**
 * Why work found nothing, and a button that asks once more when its worker died.
 * @param after a sentence that follows
 */
export function workFailure({ failure, again }: Pick<Work<unknown>, 'failure' | 'again'>, after = '') {
  if (failure === '') return nothing;
  return html`<ps-problem>${failure} ${after} ${again === null ? nothing : html`<button type="button" @click=${again}>${say.tryAgain}</button>`}</ps-problem>`;
}
