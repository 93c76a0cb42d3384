import { EngineError } from '../base/error.ts';
import { say } from '../words/en/studio/studio.ts';

/** What is thrown when a pull names a screen that the drawer lacks. */
export function unknownScreen(pull: { screen: string }, index: number): EngineError {
  return new EngineError('stack.unknown-screen', say.pullUsesScreenWhich(index + 1, pull.screen), {
    path: ['pulls', index, 'screen'],
    details: { screen: pull.screen },
  });
}

/** What is thrown when a pull names an ink that the drawer lacks. */
export function unknownInk(pull: { ink: string }, index: number): EngineError {
  return new EngineError('stack.unknown-ink', say.pullUsesInkWhich(index + 1, pull.ink), {
    path: ['pulls', index, 'ink'],
    details: { ink: pull.ink },
  });
}
