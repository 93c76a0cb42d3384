import { html, nothing } from 'lit';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import type { AppStore } from '../../app-store.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import '../../ui/next/next-button.ts';
import type { NextChoice } from '../../ui/next/what-next.ts';
import { say } from '../../words/en/press/next.ts';
import type { PressVisit } from '../press-visit.ts';
import { type GoOn, goOn } from './go-on.ts';
import './extra-pull.ts';
import './takers.ts';
import { goOnOf, sheetNext } from './sheet-next.ts';

interface SheetAtHand {
  store: AppStore;
  visit: PressVisit;
  log: LogKeeper;
  /** The sheet that is looked at. */
  number: number;
}

interface AtPress extends SheetAtHand {
  card: SetUpCard;
}

/** A button that asks what could follow on a sheet. @param label what it says; by itself it names the sheet */
export function nextOnSheet({ store, visit, log, number }: SheetAtHand, label = say.whatNextForSheet(number)) {
  return html`<ps-next
    .label=${label}
    .of=${say.sheet(number)}
    .sheetOf=${() => sheetNext(store, log, number)}
    @take=${({ detail }: CustomEvent<NextChoice>) => void goOn(visit, store, goOnOf(detail, log, number))}
  ></ps-next>`;
}

/** What could follow on the sheet that is looked at, and which sheets would take what is on the press. */
export function pressNext({ card, ...hand }: AtPress) {
  const { store, visit, log, number } = hand;
  if (!log.sheets.some((sheet) => sheet.number === number)) return nothing;
  return html`<div class="row next-row">
    ${nextOnSheet(hand)}
    <press-takers
      .card=${card}
      .log=${log}
      .relative=${store.relative}
      .restOf=${() => visit.restInput()}
      @go-on=${({ detail }: CustomEvent<GoOn>) => void goOn(visit, store, detail)}
    ></press-takers>
    <press-extra
      .card=${card}
      .log=${log}
      .drawer=${store.project.drawer.inks}
      @go-on=${({ detail }: CustomEvent<GoOn>) => void goOn(visit, store, detail)}
    ></press-extra>
  </div>`;
}
