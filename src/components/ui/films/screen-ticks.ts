import { html, nothing } from 'lit';
import { say } from '../../words/en/ui/films.ts';
import { frameWord } from '../../words/frame-words.ts';
import type { FilmOffer } from './film-offers.ts';

interface ScreenTicks {
  all: readonly FilmOffer[];
  /** Ids of those that are ticked. */
  ticked: ReadonlySet<string>;
  /** What the screens are ticked for, aloud. */
  label: string;
  /** @param last the one that was ticked last, alone */
  tick(ids: ReadonlySet<string>, last?: string): void;
}

function toBeMade(all: readonly FilmOffer[]): FilmOffer[] {
  return all.filter(({ state }) => state === 'to make');
}

/** Ids of the screens that are ticked where nothing else is asked for: those on the prep list; without one, all. */
export function usualTicks(all: readonly FilmOffer[]): Set<string> {
  const some = toBeMade(all);
  return new Set((some.length > 0 ? some : all).map(({ id }) => id));
}

/** The screens that there are, to be ticked one by one or all at once. */
export function screenTicks({ all, ticked, label, tick }: ScreenTicks) {
  const toMake = toBeMade(all);
  const pick = (words: string, films: readonly FilmOffer[]) =>
    html`<button type="button" class="quiet" @click=${() => tick(new Set(films.map(({ id }) => id)))}>${words}</button>`;
  return html`<div>
    <div class="top">
      <h3>${say.screens}</h3>
      ${pick(say.all, all)} ${toMake.length === 0 ? nothing : pick(say.toMake, toMake)} ${pick(say.none, [])}
    </div>
    <div class="screens" role="group" aria-label=${label}>
      ${all.map(
        ({ id, key, screen, state }) => html`<label>
          <input
            type="checkbox"
            .checked=${ticked.has(id)}
            @change=${(event: Event) => {
              const ids = new Set(ticked);
              if ((event.target as HTMLInputElement).checked) tick(ids.add(id), id);
              else if (ids.delete(id)) tick(ids);
            }}
          />
          <b>${key}</b><span class="name">${screen.name}</span>${state === 'drawn' ? nothing : html`<span class="soft">${frameWord(state)}</span>`}
        </label>`,
      )}
    </div>
  </div>`;
}
