import { html, nothing } from 'lit';
import { MOST_TIMES } from '../../../engine/shapes/draw/repeat.ts';
import type { Shape } from '../../../engine/shapes/types.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import { say } from '../../words/en/drawer/draw.ts';
import { sizeText } from '../shape-tray.ts';
import { CHANGES, type CutSettings, takesOther } from './cut-settings.ts';

/** Lengths that are taken, mm. */
const FARTHEST_MM = 5000;

type Set = (part: Partial<CutSettings>) => void;

/** Names of the settings that are numbers. */
type NumberName = { [Name in keyof CutSettings]: CutSettings[Name] extends number ? Name : never }[keyof CutSettings];

interface Field {
  name: NumberName;
  label: string;
  unit?: string;
  min?: number;
  max?: number;
  step?: number;
}

const ACROSS = [
  { value: 'left-right', label: say.leftToRight },
  { value: 'top-bottom', label: say.topToBottom },
];

const TIMES: Field = { name: 'times', label: say.howManyInAll, min: 1, max: MOST_TIMES };

const OVER: readonly Field[] = [
  { name: 'rightMm', label: say.itLiesRightBy, unit: 'mm' },
  { name: 'downMm', label: say.itLiesDownBy, unit: 'mm' },
  { name: 'otherTurnDeg', label: say.itIsTurnedBy, unit: '°', step: 5 },
];

/** Numbers of each kind of change. */
const FIELDS: Record<CutSettings['kind'], readonly Field[]> = {
  join: OVER,
  cut: OVER,
  keep: OVER,
  weld: [...OVER, { name: 'gapMm', label: say.gapsAreClosedUp, unit: 'mm', min: 0, max: 100, step: 0.5 }],
  mirror: [],
  turn: [{ name: 'turnDeg', label: say.clockwiseBy, unit: '°', step: 5 }],
  grow: [{ name: 'growMm', label: say.allEdgesMoveOut, unit: 'mm', min: -500, max: 500, step: 0.5 }],
  along: [
    TIMES,
    { name: 'stepRightMm', label: say.eachRightOfLast, unit: 'mm' },
    { name: 'stepDownMm', label: say.eachBelowLastBy, unit: 'mm' },
  ],
  about: [
    TIMES,
    { name: 'stepTurnDeg', label: say.eachTurnedFromLast, unit: '°', step: 5 },
    { name: 'radiusMm', label: say.pointLiesBelowIts, unit: 'mm' },
  ],
};

/** What is to be done with the chosen shape, and its numbers. */
export function cutFields(now: CutSettings, others: readonly Shape[], set: Set) {
  const kinds = CHANGES.map((change) => ({ ...change, disabled: takesOther(change.value) && others.length === 0 }));
  return html`<ps-select label=${say.whatToDo} .value=${now.kind} .options=${kinds} @pick=${(event: CustomEvent<CutSettings['kind']>) => set({ kind: event.detail })}></ps-select>
    ${others.length > 0 ? nothing : html`<p class="small soft">${say.toJoinOrCut}</p>`}
    ${
      takesOther(now.kind)
        ? html`<ps-select
            label=${say.otherShape}
            .value=${now.other}
            .options=${others.map((shape) => ({ value: shape.id, label: `${shape.name === '' ? say.unnamed : shape.name}, ${sizeText(shape)}` }))}
            @pick=${(event: CustomEvent<string>) => set({ other: event.detail })}
          ></ps-select>
          <p class="small soft">${say.dragItInPicture}</p>`
        : nothing
    }
    ${
      now.kind === 'mirror'
        ? html`<ps-choice label=${say.mirrored} .value=${now.across} .options=${ACROSS} @pick=${(event: CustomEvent<CutSettings['across']>) => set({ across: event.detail })}></ps-choice>`
        : nothing
    }
    <div class="numbers">${FIELDS[now.kind].map((field) => numberField(field, now, set))}</div>`;
}

function numberField({ name, label, unit, min, max, step }: Field, now: CutSettings, set: Set) {
  const whole = name === 'times';
  return html`<ps-number
    label=${label}
    unit=${unit ?? ''}
    .value=${now[name]}
    .min=${min ?? -FARTHEST_MM}
    .max=${max ?? FARTHEST_MM}
    .step=${step ?? 1}
    .decimals=${whole ? 0 : 2}
    ?whole=${whole}
    @pick=${(event: NumberPick) => set({ [name]: event.detail })}
  ></ps-number>`;
}
