import { html, type TemplateResult } from 'lit';
import type { InkDraft } from '../../../engine/ink/characterise/ink-draft.ts';
import type { InkBasis } from '../../../engine/ink/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { say } from '../../words/en/inks/add.ts';
import './drawdown-way.ts';
import './guess-way.ts';
import './measured-way.ts';
import type { Measurements } from './cgats-file.ts';

/** What the element of a way is given, and what it tells. */
export interface WayProps {
  studio: Studio;
  /** A file that was read for an ink before this one. */
  measurements: Measurements | null;
  /** The ink as far as it goes; null while there is none. */
  onDraft: (event: CustomEvent<InkDraft | null>) => void;
  onRead: (event: CustomEvent<Measurements>) => void;
}

/** A way to make an ink: a row here and an element of its own are all it takes. */
export interface InkWay {
  name: string;
  trust: string;
  /** What one needs for it, in a sentence. */
  needs: string;
  /** How far to trust it, 1 to 3. */
  bars: 1 | 2 | 3;
  element: (props: WayProps) => TemplateResult;
  /** Whether there is anything to name yet; left out, there is from the start. */
  begun?: (props: WayProps) => boolean;
}

/** The ways, the most trustworthy first. */
export const INK_WAYS: readonly InkWay[] = [
  {
    name: say.measured,
    trust: say.trustItForChoosing,
    needs: say.fileOfInstrumentThat,
    bars: 3,
    element: ({ studio, measurements, onRead, onDraft }) =>
      html`<measured-way .surface=${studio.surface} .measurements=${measurements} @read=${onRead} @draft=${onDraft}></measured-way>`,
    begun: ({ measurements }) => measurements !== null,
  },
  {
    name: say.drawdown,
    trust: say.trustItForPlanning,
    needs: say.twoColoursOverWhite,
    bars: 2,
    element: ({ studio, onDraft }) => html`<drawdown-way .studio=${studio} @draft=${onDraft}></drawdown-way>`,
  },
  {
    name: say.guess,
    trust: say.forSketchingOnly,
    needs: say.oneColourAndHow,
    bars: 1,
    element: ({ studio, onDraft }) => html`<guess-way .studio=${studio} @draft=${onDraft}></guess-way>`,
  },
];

/** How an ink's colour was come by, in a few words. */
export const BASIS_SHORT: Record<InkBasis, string> = {
  invented: say.invented,
  measured: say.measured2,
  drawdown: say.fromTwoColours,
  guess: say.guessFromOneColour,
};

/** How far to trust it. */
export const BASIS_TRUST: Record<InkBasis, string> = {
  invented: say.inventedForTryingThings,
  measured: say.measuredOverWhiteAnd,
  drawdown: say.estimatedFromTwoColours,
  guess: say.guessOneColourAnd,
};
