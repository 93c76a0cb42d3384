import { type TickDoubt, tickDoubts } from '../../../engine/log/ticks/tick-doubts.ts';
import { tickedAgain, tickedOff } from '../../../engine/log/ticks/ticking.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import { doubtWords } from '../../words/doubt-words.ts';

/** Sheets that somebody ticks in a set-up. */
export interface TickOf {
  card: SetUpCard;
  numbers: number[];
  on: boolean;
  /** Names what was touched, so that it is asked there. */
  where: string;
}

/** What is asked before ticks count. */
export interface TickQuestion {
  of: TickOf;
  /** Why, a sentence each. */
  words: string[];
  /** Those of the sheets that nothing speaks against. */
  sure: number[];
  /** Whether only drying speaks against the others. */
  onlyWet: boolean;
}

/** What may be answered: none of them counts, only the sure ones do, all do, all do and drying is not asked about again. */
export type TickAnswer = 'none' | 'sure' | 'all' | 'quiet';

/** Logs ticks; asks first where a sheet is not ready for its pull. */
export class TickAsking {
  private readonly changed: () => void;
  private readonly log: () => LogKeeper;
  private quiet = false;
  question: TickQuestion | null = null;

  /** @param changed called when there is another question, or none, or something was logged */
  constructor(log: () => LogKeeper, changed: () => void) {
    this.log = log;
    this.changed = changed;
  }

  /** Forgets what was asked and that drying was not to be asked about. */
  reset(): void {
    this.question = null;
    this.quiet = false;
  }

  /** What speaks against ticking sheets of a set-up now. */
  doubts(card: SetUpCard, numbers: readonly number[]): TickDoubt[] {
    const { sheets, recipes, pairs, touching } = this.log();
    return tickDoubts({ card, numbers, sheets, recipes }, { order: pairs, touching }, Date.now());
  }

  /** Begins anew, and asks the worker early which pulls lie over which: at a tick nobody waits. */
  prepare(): void {
    this.reset();
    const { recipes, pairs, touching } = this.log();
    for (const recipe of recipes) {
      pairs(recipe);
      touching(recipe);
    }
  }

  /** Logs a tick, or asks; a second touch where it is asked takes the question back. */
  tick(of: TickOf): void {
    const again = this.question?.of.where === of.where && this.question.of.card.number === of.card.number;
    this.question = null;
    if (again) {
      this.changed();
      return;
    }
    const doubts = of.on ? this.doubts(of.card, of.numbers).filter((doubt) => doubt.kind !== 'wet' || !this.quiet) : [];
    if (doubts.length === 0) {
      void this.write(of);
      return;
    }
    const doubtful = new Set(doubts.map((doubt) => doubt.sheet));
    this.question = {
      of,
      words: doubtWords(doubts, this.log().recipes),
      sure: of.numbers.filter((number) => !doubtful.has(number)),
      onlyWet: doubts.every((doubt) => doubt.kind === 'wet'),
    };
    this.changed();
  }

  answer(answer: TickAnswer): void {
    const { question } = this;
    this.question = null;
    if (question !== null && answer !== 'none') {
      if (answer === 'quiet') this.quiet = true;
      void this.write(answer === 'sure' ? { ...question.of, numbers: question.sure } : question.of);
    }
    this.changed();
  }

  private async write({ card, numbers, on }: TickOf): Promise<void> {
    const log = this.log();
    const ticking = { card, numbers, sheets: log.sheets, recipes: log.recipes };
    await log.add(on ? tickedAgain(ticking, log.events, Date.now()) : tickedOff(ticking));
    this.changed();
  }
}
