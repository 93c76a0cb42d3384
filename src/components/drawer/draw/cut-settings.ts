import type { ShapeChange } from '../../../engine/shapes/draw/change.ts';
import type { Shape } from '../../../engine/shapes/types.ts';
import { say } from '../../words/en/drawer/draw.ts';

/** All that can be set, of every kind of change; each keeps its numbers while another is chosen. */
export interface CutSettings {
  kind: ShapeChange['kind'];
  /** Id of the other shape. */
  other: string;
  rightMm: number;
  downMm: number;
  otherTurnDeg: number;
  gapMm: number;
  across: 'left-right' | 'top-bottom';
  turnDeg: number;
  growMm: number;
  times: number;
  stepRightMm: number;
  stepDownMm: number;
  stepTurnDeg: number;
  radiusMm: number;
}

/** What can be done, in the words of the list, and the word for what comes of it. */
export const CHANGES: readonly { value: ShapeChange['kind']; label: string; made: string }[] = [
  { value: 'join', label: say.joinWithAnother, made: say.joined },
  { value: 'cut', label: say.cutAnotherAway, made: say.cut },
  { value: 'keep', label: say.keepWhatBothHave, made: say.inCommon },
  { value: 'weld', label: say.weldJoinAndClose, made: say.welded },
  { value: 'mirror', label: say.mirror, made: say.mirrored2 },
  { value: 'turn', label: say.turn, made: say.turned },
  { value: 'grow', label: say.growOrShrink, made: say.grown },
  { value: 'along', label: say.repeatAlongLine, made: say.inLine },
  { value: 'about', label: say.repeatAboutPoint, made: say.aboutPoint },
];

/** Whether a change wants another shape. */
export function takesOther(kind: ShapeChange['kind']): kind is 'join' | 'cut' | 'keep' | 'weld' {
  return kind === 'join' || kind === 'cut' || kind === 'keep' || kind === 'weld';
}

/** What is set at first for a shape: the other one lies a little aside, so that both are seen. */
export function firstSettings(shape: Shape, others: readonly Shape[]): CutSettings {
  const aside = Math.round(shape.widthMm / 3);
  return {
    kind: others.length > 0 ? 'join' : 'mirror',
    other: others[0]?.id ?? '',
    rightMm: aside,
    downMm: 0,
    otherTurnDeg: 0,
    gapMm: 1,
    across: 'left-right',
    turnDeg: 90,
    growMm: 2,
    times: 6,
    stepRightMm: Math.ceil(shape.widthMm) + 5,
    stepDownMm: 0,
    stepTurnDeg: 60,
    radiusMm: Math.ceil(Math.max(shape.widthMm, shape.heightMm)),
  };
}

/** The change that settings say; null where the other shape is not there. */
export function changeOf(set: CutSettings, others: readonly Shape[]): ShapeChange | null {
  const { kind } = set;
  if (takesOther(kind)) {
    const other = others.find(({ id }) => id === set.other);
    if (other === undefined) return null;
    const over = { rightMm: set.rightMm, downMm: set.downMm, turnDeg: set.otherTurnDeg };
    return kind === 'weld' ? { kind, other, over, gapMm: set.gapMm } : { kind, other, over };
  }
  switch (kind) {
    case 'mirror':
      return { kind, across: set.across };
    case 'turn':
      return { kind, turnDeg: set.turnDeg };
    case 'grow':
      return { kind, mm: set.growMm };
    case 'along':
      return { kind, times: set.times, rightMm: set.stepRightMm, downMm: set.stepDownMm };
    case 'about':
      return { kind, times: set.times, turnDeg: set.stepTurnDeg, radiusMm: set.radiusMm };
  }
}
