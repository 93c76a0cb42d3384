import { EngineError } from '../base/error.ts';

/** What is thrown when a pull names a screen that the drawer lacks. */
export function unknownScreen(pull: { screen: string }, index: number): EngineError {
  return new EngineError(
    'stack.unknown-screen',
    `Pull ${index + 1} uses the screen '${pull.screen}', which is not in the drawer; choose another screen or leave the pull out.`,
    { path: ['pulls', index, 'screen'], details: { screen: pull.screen } },
  );
}

/** What is thrown when a pull names an ink that the drawer lacks. */
export function unknownInk(pull: { ink: string }, index: number): EngineError {
  return new EngineError(
    'stack.unknown-ink',
    `Pull ${index + 1} uses the ink '${pull.ink}', which is not in the drawer; choose another ink or leave the pull out.`,
    { path: ['pulls', index, 'ink'], details: { ink: pull.ink } },
  );
}
