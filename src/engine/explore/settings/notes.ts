import { defined, entryAt, f64 } from '../../base/at.ts';
import type { Problem } from '../../base/error.ts';
import { screenOutline, screenRings } from '../../shapes/place/placed.ts';
import { CellMapBuilder } from '../../stack/cell-map.ts';
import { SpanCache } from '../../stack/screen-spans.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';

const ROWS = 256;
/** What prints less than this prints nothing, mm². */
const MIN_AREA_MM2 = 1;
/** What lies less than this beyond the sheet's edge is rounding, mm. */
const EDGE_MM = 0.05;

/**
 * What a wall can be made with, but hardly as it is meant: screens that print nothing, shapes
 * outside the sheet, pulls on top of their like. Each in a sentence with its mend.
 * @param bench the base stack, of screens and inks that are in the drawer
 * @returns problems 'note.…' that keep nothing from being made; where = `bench[i]` or 'drawer'
 */
export function printNotes(drawer: Studio, bench: readonly Pull[]): Problem[] {
  const notes: Problem[] = [];
  const add = (code: string, where: string, message: string): void => {
    notes.push({ code: `note.${code}`, message, where });
  };
  const screens = new Map(drawer.screens.map((screen) => [screen.id, screen]));
  const spans = new SpanCache(drawer);
  const builder = new CellMapBuilder();
  const nameOf = (id: string): string => `screen ${defined(screens.get(id)).number}, ${defined(screens.get(id)).name}`;
  const cut: number[] = [];
  const outside: number[] = [];
  bench.forEach((pull, i) => {
    const screen = screens.get(pull.screen);
    if (screen === undefined) return;
    if (screen.placed.length === 0) {
      add(
        'no-shapes',
        `bench[${i}]`,
        `Pull ${i + 1} prints nothing: ${nameOf(pull.screen)}, has no shapes; place one on it in the Drawer, or leave the pull out.`,
      );
    } else if (!prints(pull, drawer, spans, builder)) {
      outside.push(i);
    } else if (reachesOut(pull, drawer)) cut.push(i);
  });
  if (outside.length === 1) {
    const [i] = outside;
    add(
      'outside',
      `bench[${i}]`,
      `Pull ${defined(i) + 1} prints nothing: ${nameOf(entryAt(bench, defined(i)).screen)}, lies outside the sheet; move it onto the sheet, or leave the pull out.`,
    );
  } else if (outside.length > 1) {
    add(
      'outside',
      `bench[${outside[0]}]`,
      `Pulls ${list(outside.map((i) => i + 1))} print nothing: their screens lie outside the sheet; move them onto the sheet, or leave the pulls out.`,
    );
  }
  if (cut.length > 0) {
    const many = cut.length > 1;
    add(
      'cut',
      `bench[${cut[0]}]`,
      `${many ? 'Pulls' : 'Pull'} ${list(cut.map((i) => i + 1))} ${many ? 'reach' : 'reaches'} beyond the sheet and ${many ? 'are' : 'is'} cut off at its edge; move ${many ? 'them' : 'it'} in, or choose a larger sheet.`,
    );
  }
  const alike = new Map<string, number[]>();
  bench.forEach(({ screen, ink, dxMm, dyMm, turnDeg }, i) => {
    const key = JSON.stringify([screen, ink, dxMm, dyMm, turnDeg]);
    alike.set(key, [...(alike.get(key) ?? []), i]);
  });
  for (const same of alike.values()) {
    if (same.length < 2) continue;
    add(
      'alike',
      `bench[${same[0]}]`,
      `Pulls ${list(same.map((i) => i + 1))} are one screen in one ink and lay, so each only thickens the one before; lay them off-register, or give one pull more strokes.`,
    );
  }
  const blank = drawer.screens.filter(({ id }) => !bench.some((pull) => pull.screen === id) && !prints(atRest(id), drawer, spans, builder));
  if (blank.length > 0) {
    const many = blank.length > 1;
    add(
      'blank',
      'drawer',
      `${many ? 'Screens' : 'Screen'} ${list(blank.map(({ number }) => number))} ${many ? 'print' : 'prints'} nothing on this sheet, so no print brings ${many ? 'them' : 'it'} in; place shapes on the sheet in the Drawer.`,
    );
  }
  return notes;
}

/** Whether a pull leaves ink on the sheet. */
export function prints(pull: Pull, drawer: Studio, spans: SpanCache, builder: CellMapBuilder): boolean {
  const grid = { widthMm: drawer.paper.widthMm, heightMm: drawer.paper.heightMm, rows: ROWS };
  const map = builder.build(spans.place({ pulls: [pull] }, grid), grid);
  let area = 0;
  for (let cell = 1; cell < map.cells; cell++) area += f64(map.areaMm2, cell);
  return area >= MIN_AREA_MM2;
}

function reachesOut(pull: Pull, drawer: Studio): boolean {
  const { paper } = drawer;
  const screen = defined(drawer.screens.find(({ id }) => id === pull.screen));
  const { rings } = screenOutline(screenRings(screen, drawer.shapes), pull, paper);
  return rings.some((ring) => {
    for (let i = 0; i < ring.length; i += 2) {
      if (f64(ring, i) < -EDGE_MM || f64(ring, i) > paper.widthMm + EDGE_MM) return true;
      if (f64(ring, i + 1) < -EDGE_MM || f64(ring, i + 1) > paper.heightMm + EDGE_MM) return true;
    }
    return false;
  });
}

function atRest(screen: string): Pull {
  return { id: screen, screen, ink: '', dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 };
}

/** '1, 2 and 5'; long lists are cut short. */
function list(numbers: readonly number[]): string {
  if (numbers.length > 6) return `${numbers.slice(0, 5).join(', ')} and ${numbers.length - 5} more`;
  if (numbers.length === 1) return String(numbers[0]);
  return `${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
}
