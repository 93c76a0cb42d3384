/**
 * Asks a worker for one thing at a time: while one answer is on its way only the newest question
 * waits, and what was asked between is dropped.
 */
export class Latest<Question, Answer> {
  private readonly run: (question: Question) => Promise<Answer>;
  private readonly done: (answer: Answer, question: Question) => void;
  private readonly fail: (error: unknown, question: Question) => void;
  private waiting: { question: Question } | null = null;
  private busy = false;

  constructor(
    run: (question: Question) => Promise<Answer>,
    done: (answer: Answer, question: Question) => void,
    fail: (error: unknown, question: Question) => void,
  ) {
    this.run = run;
    this.done = done;
    this.fail = fail;
  }

  /** Whether nothing is on its way. */
  get idle(): boolean {
    return !this.busy;
  }

  ask(question: Question): void {
    this.waiting = { question };
    if (!this.busy) void this.work();
  }

  /** Drops what waits; what is on its way still arrives. */
  forget(): void {
    this.waiting = null;
  }

  private async work(): Promise<void> {
    this.busy = true;
    try {
      while (this.waiting !== null) {
        const { question } = this.waiting;
        this.waiting = null;
        try {
          this.done(await this.run(question), question);
        } catch (error) {
          this.fail(error, question);
        }
      }
    } finally {
      this.busy = false;
    }
  }
}
