import { html, nothing } from 'lit';
import { withFilms } from '../../../engine/explore/prepare/frames.ts';
import type { FilmSettings } from '../../../engine/output/film/settings.ts';
import type { Screen } from '../../../engine/shapes/types.ts';
import type { AppStore } from '../../app-store.ts';
import { say } from '../../words/en/ui/films.ts';
import './films-dialog.ts';
import './plates-dialog.ts';
import { drawerOffers } from './film-offers.ts';

/** The button for films of the drawer's screens, or first of one of them; nothing where there is none. */
export function drawerFilms(store: AppStore, screen?: Screen) {
  if (store.project.drawer.screens.length === 0) return nothing;
  return html`<ps-films
    label=${screen === undefined ? say.films : say.filmOfIt}
    .offers=${() => drawerOffers(store.project)}
    .first=${screen === undefined ? null : [screen.id]}
    .heading=${store.project.title}
    .settings=${store.project.films}
    .note=${(ids: readonly string[]) => store.dispatch({ kind: 'set-frames', frames: withFilms(store.project.frames, ids) })}
    .keep=${(films: FilmSettings) => store.dispatch({ kind: 'set-films', films })}
    .tell=${(sentence: string) => store.tell(sentence)}
  ></ps-films>`;
}

/** The button for what is cut of the drawer's screens, or first of one of them; nothing where there is none. */
export function drawerPlates(store: AppStore, screen?: Screen) {
  if (store.project.drawer.screens.length === 0) return nothing;
  return html`<ps-plates
    label=${screen === undefined ? say.plates : say.plate}
    .offers=${() => drawerOffers(store.project)}
    .first=${screen === undefined ? null : [screen.id]}
    .heading=${store.project.title}
  ></ps-plates>`;
}
