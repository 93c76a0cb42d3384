import { svg, type SVGTemplateResult } from 'lit';

/** A sheet of 40 × 52 at (4, 4). */
const SHEET = { left: 4, top: 4, width: 40, height: 52 };
const CENTRE = { x: SHEET.left + SHEET.width / 2, y: SHEET.top + SHEET.height / 2 };
/** A pennant on its staff: no turn or mirror of it is itself. */
const PENNANT = 'M-9 -10H8L3 -4L8 2H-5V10H-9Z';

/** How one pull of the pennant lies. */
interface Lie {
  x: number;
  y: number;
  turn?: number;
  mirrored?: boolean;
}

/** Where it was drawn. */
const DRAWN: Lie = { x: 16, y: 20 };

function pennant({ x, y, turn = 0, mirrored = false }: Lie, look: 'ink' | 'ghost' | 'line'): SVGTemplateResult {
  const transform = `translate(${x} ${y}) rotate(${turn}) scale(${mirrored ? -1 : 1} 1)`;
  if (look === 'ink') return svg`<path d=${PENNANT} transform=${transform} fill="var(--mark)" />`;
  if (look === 'ghost') return svg`<path d=${PENNANT} transform=${transform} fill="var(--stock-line)" opacity="0.7" />`;
  return svg`<path d=${PENNANT} transform=${transform} fill="none" stroke="currentColor" stroke-dasharray="2 2" />`;
}

/** Where the pennant comes to lie when it is turned about the sheet's middle. */
function turned(degrees: number): Lie {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const [dx, dy] = [DRAWN.x - CENTRE.x, DRAWN.y - CENTRE.y];
  return { x: CENTRE.x + dx * cos - dy * sin, y: CENTRE.y + dx * sin + dy * cos, turn: degrees };
}

const ghost = pennant(DRAWN, 'ghost');
const edge = { x: 42, y: 40, turn: 20 };

/** What each way of lying does to a pull, in ink, and where it was drawn, pale. */
const LIES = {
  drawn: pennant(DRAWN, 'ink'),
  near: svg`${ghost}${pennant({ x: 22, y: 26 }, 'ink')}`,
  anywhere: svg`${ghost}${pennant({ x: 33, y: 44 }, 'ink')}`,
  half: svg`${ghost}${pennant(turned(180), 'ink')}`,
  quarter: svg`${ghost}${pennant({ ...turned(90), x: 29 }, 'ink')}`,
  any: svg`${ghost}${pennant({ ...turned(140), x: 28, y: 40 }, 'ink')}`,
  mirrored: svg`${ghost}<path d="M24 4V56" stroke="var(--stock-line)" stroke-dasharray="3 2" />${pennant({ x: 30, y: 22, mirrored: true }, 'ink')}`,
  again: svg`${pennant(DRAWN, 'ink')}${pennant({ x: 31, y: 42 }, 'ink')}`,
  edge: svg`${ghost}${pennant(edge, 'line')}`,
} satisfies Record<string, SVGTemplateResult>;

/** A way of lying that has a picture. */
export type PlacePicture = keyof typeof LIES;

/** A small picture of a way in which pulls lie on their sheet. */
export function placePicture(which: PlacePicture): SVGTemplateResult {
  const { left, top, width, height } = SHEET;
  return svg`<svg viewBox="0 0 56 60" aria-hidden="true">
    <rect x=${left} y=${top} width=${width} height=${height} fill="var(--stock)" stroke="var(--stock-line)" />
    ${LIES[which]}
    ${
      which === 'edge'
        ? svg`<svg x=${left} y=${top} width=${width} height=${height} viewBox="${left} ${top} ${width} ${height}">${pennant(edge, 'ink')}</svg>`
        : ''
    }
  </svg>`;
}
