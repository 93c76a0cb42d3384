import { speak } from '../../language.ts';

export const say = speak('engine/ink/target', {
  inkThatIsGone: 'an ink that is gone',
  alone: (names: string) => `${names} alone`,
  over: ' over ',
  andMore: (strange: number) => ` and ${strange} more`,
  samplesAreNoNumbers: (some: string, strange: string, squares: number) =>
    `Samples ${some}${strange} are no numbers of this target's squares, 1 to ${squares}; they were left out.`,
  squareAndMoreWas: (twice: string, twiceSo: boolean) =>
    `Square ${twice}${twiceSo ? ' and more' : ''} was measured more than once; the mean is taken.`,
  isNoColourWrite: (cut: string) => `“${cut}” is no colour: write L, a and b, as in 52.1 −3 18.4, or # and six hex digits.`,
  isTooFarFor: (far: number, mostAb: number) =>
    `${far} is too far for a or b, which go from −${mostAb} to ${mostAb}; read the square again.`,
});
