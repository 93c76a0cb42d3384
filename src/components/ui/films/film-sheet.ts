import { html } from 'lit';
import { roundTo } from '../../../engine/base/units.ts';
import type { OutPage } from '../../../engine/output/film/page.ts';
import { say } from '../../words/en/ui/films.ts';
import { workFailure } from '../work-failure.ts';
import type { Work } from '../work.ts';
import { pagePicture } from './page-picture.ts';
import { pager } from './pager.ts';

/** What goes with the pages that are shown. */
interface Shown {
  page: number;
  /** Why there is no picture of what stands in the fields; '' where there is one. */
  wrong: string;
  turn: (page: number) => void;
}

/** The pages of one screen's film, one at a time, as they come out. */
export function filmSheet(picture: Work<OutPage[]>, { page, wrong, turn }: Shown) {
  const pages = picture.found ?? [];
  const shown = pages[Math.min(page, pages.length - 1)];
  const size = shown === undefined ? '' : `${roundTo(shown.widthMm, 1)} × ${roundTo(shown.heightMm, 1)} mm`;
  const words = pages.length === 0 ? '' : pages.length === 1 ? size : say.pageOf(page + 1, pages.length, size);
  return html`<div class="sheet" ?data-old=${picture.running || wrong !== ''}>${shown === undefined ? html`<span class="soft">${picture.running ? say.drawing : say.noFilm}</span>` : pagePicture(shown)}</div>
    ${pager({ page, pages: pages.length, words, what: say.page, turn })}
    ${wrong === '' ? workFailure(picture) : html`<ps-problem>${wrong}</ps-problem>`}`;
}
