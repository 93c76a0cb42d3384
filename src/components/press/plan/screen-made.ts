import { css, html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { type Frames, withFrame } from '../../../engine/explore/prepare/frames.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { say } from '../../words/en/press/plan.ts';
import { madeWords } from '../../words/supply-words.ts';

/** Screens of an order, by their keys, that are made, or are not after all. */
export interface ScreensMade {
  keys: readonly string[];
  made: boolean;
}

/** Tells the Press, from wherever in it the printer stands, that screens are made. */
export function tellMade(from: EventTarget | null, detail: ScreensMade): void {
  from?.dispatchEvent(new CustomEvent<ScreensMade>('screens-made', { detail, bubbles: true, composed: true }));
}

/** The frames of the Drawer with what was told of screens of an order; screens that the Drawer has not stay unsaid. */
export function framesTold(frames: Frames | undefined, { keys, made }: ScreensMade, drawerScreens: MadePlan['drawerScreens']): Frames {
  const ids = keys.flatMap((key) => drawerScreens?.get(key) ?? []);
  return ids.reduce((said, id) => withFrame(said, id, made ? 'made' : 'to make'), frames ?? { made: [], toMake: [] });
}

/** How it looks whether the screen of a set-up is made. */
export const screenMadeStyle = css`
  .made {
    display: flex;
    align-items: center;
    gap: var(--space-4);
    min-height: var(--touch);
    justify-self: start;
  }
  .made input {
    flex: none;
    width: 24px;
    height: 24px;
  }
  .unmade {
    color: var(--accent);
    font-weight: 600;
  }
`;

/** The box to tick when a screen is made. */
export function madeBox(key: string, made: boolean) {
  return html`<input
    type="checkbox"
    aria-label=${say.screenIsMade(key)}
    .checked=${live(made)}
    @change=${({ currentTarget }: Event) => tellMade(currentTarget, { keys: [key], made: (currentTarget as HTMLInputElement).checked })}
  />`;
}

/** Whether the screen of a set-up is made, to be ticked where it is needed; nothing once it was pulled, and of screens that the Drawer has not. */
export function screenMade({ screenStates, drawerScreens }: MadePlan, { screen: { key } }: SetUpCard) {
  if (drawerScreens?.has(key) !== true) return nothing;
  const { words, unmade } = madeWords(key, screenStates);
  return html`<label class=${unmade ? 'made unmade' : 'made'}>${madeBox(key, screenStates?.get(key) === 'made')}${words}</label>`;
}
