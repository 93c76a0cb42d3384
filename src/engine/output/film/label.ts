import { roundTo } from '../../base/units.ts';
import { isMirrored } from '../../shapes/place/mirrored.ts';
import { BAR_MM, boxRing, type Drawn, type PageText } from './page.ts';
import { type FilmLie, type FilmScreen, type FilmWays, readsWrong } from './ways.ts';

const BAR_HIGH_MM = 2;
/** Room for the label and the bar below the marks, mm. */
export const LABEL_ROOM_MM = 36;
/** Width of a letter as a share of its size, with some to spare: fonts are not known here. */
const LETTER = 0.55;

/**
 * What a film is: number and name of its screen, mesh, frame, which way it reads and lies, how its edges were moved,
 * sheet and project, and below it the bar.
 */
export function filmLabel(
  { key, screen, paper, frame }: FilmScreen,
  { title, spreadMm, ...lie }: FilmWays,
  { section, xMm, yMm, mostMm }: { section: string; xMm: number; yMm: number; mostMm: number },
): Drawn {
  const { threadsPerCm, threadUm } = screen.mesh;
  const moved = spreadMm === 0 ? '' : `, ${spreadMm > 0 ? 'spread' : 'choke'} ${roundTo(Math.abs(spreadMm), 3)} mm`;
  const framed =
    frame === undefined
      ? ''
      : `, frame ${frame.least === true ? 'at least ' : ''}${roundTo(frame.widthMm, 1)} × ${roundTo(frame.heightMm, 1)} mm inside`;
  const rows: [string, number, boolean][] = [
    [`Screen ${key}  ${screen.name}${section === '' ? '' : `  (${section})`}`, 4.2, true],
    [`Mesh ${threadsPerCm}/cm, ${threadUm} µm${framed}${moved}`, 2.9, false],
    [lieWords(lie, isMirrored(screen)), 2.9, false],
    [`Sheet ${roundTo(paper.widthMm, 1)} × ${roundTo(paper.heightMm, 1)} mm${title === '' ? '' : `; ${title}`}`, 2.9, false],
  ];
  let y = yMm;
  const texts = rows.map(([words, sizeMm, bold]): PageText => {
    y += sizeMm * 1.45;
    return { text: fitted(words, mostMm / (sizeMm * LETTER)), xMm, yMm: y, sizeMm, bold, mirrored: false };
  });
  const bar = { xMm, yMm: y + 4, widthMm: BAR_MM, heightMm: BAR_HIGH_MM };
  const caption: PageText = {
    text: `${BAR_MM} mm at 100 %`,
    xMm: xMm + BAR_MM + 2,
    yMm: bar.yMm + BAR_HIGH_MM,
    sizeMm: 2.9,
    bold: false,
    mirrored: false,
  };
  return { filled: [boxRing(bar)], lines: [], texts: [...texts, caption] };
}

/** How a film reads, seen from its printed side, and how it lies on its screen: on which side of it, which side up. */
function lieWords(lie: FilmLie, mirrored: boolean): string {
  const reading = `${readsWrong(lie) ? 'Wrong' : 'Right'}-reading${mirrored ? ', image mirrored' : ''}`;
  return `${reading}: printed side ${lie.printed === 'against' ? 'against' : 'away from'} the emulsion, ${lie.side} side`;
}

function fitted(words: string, most: number): string {
  const signs = [...words];
  return signs.length <= most
    ? words
    : `${signs
        .slice(0, Math.max(1, Math.floor(most) - 1))
        .join('')
        .trimEnd()}…`;
}
