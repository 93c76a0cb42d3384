import type { StockSheet } from '../../../engine/visit/stencils/cut-list.ts';
import type { DatedVisit } from '../../../engine/visitfile/calendar.ts';
import { CAUTIONS_DEFER } from '../../words/cautions.ts';
import { say } from '../../words/en/output/papers.ts';
import type { MadePlan } from '../made-plan.ts';
import { stateKey } from '../state-key.ts';
import { benchBlocks } from './bench-blocks.ts';
import { cardsOf } from './card-blocks.ts';
import { coverBlocks } from './cover-blocks.ts';
import { gridBlocks } from './grid-blocks.ts';
import type { PaperBlock, PaperState } from './paper-blocks.ts';
import type { PaperAsked } from './paper-choice.ts';
import { passportBlocks } from './passport-blocks.ts';
import { stencilBlocks } from './stencil-blocks.ts';
import { supplyBlocks } from './supply-blocks.ts';
import { ticketBlocks } from './ticket-blocks.ts';
import { weekBlocks } from './week-blocks.ts';

/** What the papers say beside the plan. */
export interface PaperWords {
  /** The project's title. */
  heading: string;
  /** Whether the project has changed since. */
  outOfDate: boolean;
  stock: StockSheet;
  /** All visits on this press, the one that is printed first. */
  visits: readonly DatedVisit[];
}

/**
 * The papers of a visit, as they stand in the PDF and in what the browser prints: both draw these
 * blocks and nothing else, so that they say the same.
 */
export function papersOf(made: MadePlan, asked: PaperAsked, { heading, outOfDate, stock, visits }: PaperWords): PaperBlock[] {
  const { plan } = made;
  if (asked.what === 'week') return weekBlocks(visits);
  if (asked.what === 'set-up') return [...cardsOf(made, [asked.setUp]), { kind: 'text', text: CAUTIONS_DEFER, bold: true }];
  const day = asked.what === 'day' ? asked.day : null;
  const which = plan.cards.flatMap((_, at) => (day === null || plan.times[at]?.day === day ? [at] : []));
  const cards: PaperBlock[] = asked.cards
    ? [{ kind: 'page' }, { kind: 'heading', text: say.setUps }, { kind: 'columns', entries: cardsOf(made, which) }]
    : [];
  if (day !== null) return [...benchBlocks(made, day), ...ticketBlocks(made, day), ...cards];
  return [
    ...coverBlocks(made, heading, outOfDate),
    ...benchBlocks(made, null),
    ...gridBlocks(plan),
    { kind: 'page' },
    ...stencilBlocks(made, stock),
    { kind: 'page' },
    ...supplyBlocks(made),
    ...ticketBlocks(made, null),
    ...cards,
    ...passportBlocks(made),
  ];
}

/** The states of sheets that blocks show, each once. */
export function statesOf(blocks: readonly PaperBlock[]): PaperState[] {
  const all = blocks.flatMap((block): PaperState[] => {
    if (block.kind === 'prints') return block.prints.map(({ state }) => state);
    const entries = block.kind === 'columns' ? block.entries : block.kind === 'card' ? [block] : [];
    return entries.flatMap((entry) =>
      entry.kind === 'passport' ? [entry.state] : entry.parts.flatMap(({ before, after }) => [before, after]),
    );
  });
  return [...new Map(all.filter(({ pulls }) => pulls.length > 0).map((state) => [stateKey(state.recipe, state.pulls), state])).values()];
}
