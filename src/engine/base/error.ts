/** Where in a file or document something is wrong: keys and indexes from the outside in. */
export type ProblemPath = readonly (string | number)[];

/** A fault in user input that a user can mend. */
export interface Problem {
  /** Stable, dotted, for tests and for choosing a help text: `shape.image`, `recipe.version`. */
  code: string;
  /** One sentence: which file, which place, what was found, what to do. */
  message: string;
  /** The place in the input: an element, a line and column, or a field path. */
  where: string;
}

/** An impossible request or a cap that was hit. Crosses the worker boundary by its plain fields. */
export class EngineError extends Error {
  readonly code: string;
  readonly path: ProblemPath;
  readonly details: Readonly<Record<string, unknown>>;

  constructor(code: string, message: string, options: { path?: ProblemPath; details?: Record<string, unknown> } = {}) {
    super(message);
    this.name = 'EngineError';
    this.code = code;
    this.path = options.path ?? [];
    this.details = options.details ?? {};
  }
}
