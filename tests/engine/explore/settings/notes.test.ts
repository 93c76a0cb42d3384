import { describe, expect, it } from 'vitest';
import { createExplorer } from '../../../../src/engine/explore/search/explorer.ts';
import { checkExplore } from '../../../../src/engine/explore/settings/check.ts';
import { printNotes } from '../../../../src/engine/explore/settings/notes.ts';
import type { ExploreInput, ExploreSettings } from '../../../../src/engine/explore/types.ts';
import { pull, rectDrawer } from '../../order/drawer.ts';

/** On the sheet of 200 × 100 mm; beyond it; half beyond it; on it. */
const DRAWER = rectDrawer([
  [20, 20, 40, 40],
  [300, 20, 40, 40],
  [180, 20, 40, 40],
  [90, 20, 40, 40],
]);

describe('printNotes', () => {
  it('should be silent where all is well', () => {
    const drawer = rectDrawer([
      [20, 20, 40, 40],
      [0, 0, 200, 100],
    ]);
    expect(printNotes(drawer, [pull(0, 'tar'), pull(1, 'foam')])).toEqual([]);
  });

  it('should tell each in a sentence with its mend', () => {
    const drawer = { ...DRAWER, screens: DRAWER.screens.map((screen, i) => (i === 3 ? { ...screen, placed: [] } : screen)) };
    const bench = [pull(0, 'tar'), pull(1, 'tar'), pull(2, 'tar'), pull(3, 'tar'), pull(0, 'tar', { id: 'again', strokes: 2 })];
    expect(printNotes(drawer, bench).map(({ message }) => message)).toEqual([
      'Pull 4 prints nothing: screen 4, screen 3, has no shapes; place one on it in the Drawer, or leave the pull out.',
      'Pull 2 prints nothing: screen 2, screen 1, lies outside the sheet; move it onto the sheet, or leave the pull out.',
      'Pull 3 reaches beyond the sheet and is cut off at its edge; move it in, or choose a larger sheet.',
      'Pulls 1 and 5 are one screen in one ink at one offset, so each only thickens the one before; give them other offsets, or give one pull more strokes.',
    ]);
    expect(printNotes(DRAWER, [pull(0, 'tar')]).map(({ code, where }) => [code, where])).toEqual([['note.blank', 'drawer']]);
  });

  it('should tell several outside in one sentence', () => {
    const drawer = rectDrawer([
      [300, 20, 40, 40],
      [20, 20, 40, 40],
      [300, 200, 40, 40],
    ]);
    expect(printNotes(drawer, [pull(0, 'tar'), pull(1, 'tar'), pull(2, 'foam')]).map(({ message }) => message)).toEqual([
      'Pulls 1 and 3 print nothing: their screens lie outside the sheet; move them onto the sheet, or leave the pulls out.',
    ]);
  });

  it('should find a wall all the same, and bring in no screen that prints nothing', () => {
    const input: ExploreInput = {
      drawer: DRAWER,
      bench: [pull(0, 'tar')],
      explore: {
        seed: 'notes',
        count: 20,
        order: true,
        recolour: true,
        palette: ['tar', 'foam', 'rust'],
        offsetRangeMm: 0,
        leaveOut: 0,
        bringIn: 3,
        holds: [],
        minDeltaE: 0.5,
      },
    };
    const explorer = createExplorer(input);
    while (!explorer.done) {
      for (const { pulls } of explorer.step(8)) expect(pulls.map(({ screen }) => screen)).not.toContain('s1');
    }
    expect(explorer.found).toBe(20);
  });
});

describe('checkExplore where nothing prints', () => {
  const away = rectDrawer([
    [210, 20, 40, 40],
    [300, 20, 40, 40],
    [20, 20, 40, 40],
  ]);
  const settings: ExploreSettings = {
    seed: 's',
    count: 5,
    order: true,
    recolour: true,
    palette: ['tar'],
    offsetRangeMm: 0,
    leaveOut: 0,
    bringIn: 0,
    holds: [],
    minDeltaE: 0.5,
  };
  const check = (change: Partial<ExploreSettings>, bench = [pull(0, 'tar'), pull(1, 'foam')]) =>
    checkExplore({ ...settings, ...change }, away, bench);

  it('should say so in one sentence', () => {
    expect(check({})).toEqual([
      {
        code: 'explore.blank',
        message:
          'None of the pulls on the Bench prints anything on the sheet; place their shapes on the sheet in the Drawer, or take others.',
        where: 'bench',
      },
    ]);
    expect(check({ bringIn: 1, notScreens: ['s2'] }, [])[0]!.message).toBe(
      'None of the screens that may be brought in prints anything on the sheet; place their shapes on the sheet in the Drawer, or take others.',
    );
  });

  it('should be silent when a screen that prints may come in, or a shift, echo or turn bring one on', () => {
    expect(check({ bringIn: 1 })).toEqual([]);
    expect(check({ offsetRangeMm: 9 })[0]!.code).toBe('explore.blank');
    expect(check({ offsetRangeMm: 12 })).toEqual([]);
    expect(check({ echoes: 1, echoMm: 12 })).toEqual([]);
    expect(check({ turns: 'half' })).toEqual([]);
    expect(check({}, [pull(0, 'tar'), pull(2, 'tar')])).toEqual([]);
  });
});
