import { speak } from '../../language.ts';

export const say = speak('engine/studio/studio', {
  pullUsesScreenWhich: (index: number, screen: string) =>
    `Pull ${index} uses the screen '${screen}', which is not in the drawer; choose another screen or leave the pull out.`,
  pullUsesInkWhich: (index: number, ink: string) =>
    `Pull ${index} uses the ink '${ink}', which is not in the drawer; choose another ink or leave the pull out.`,
});
