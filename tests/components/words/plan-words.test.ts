import { describe, expect, it } from 'vitest';
import { waitWords } from '../../../src/components/words/drying-words.ts';
import {
  instructionWords,
  offsetArrow,
  offsetNotes,
  offsetShort,
  offsetWords,
  recipeOffsetWords,
} from '../../../src/components/words/offset-words.ts';
import {
  beforeWords,
  beginWords,
  boundWords,
  clockText,
  endWords,
  freeSwapWords,
  listed,
  needsWords,
  planHeadline,
  recipeLetter,
  setUpTags,
  timeWords,
} from '../../../src/components/words/plan-words.ts';
import { inkSplit, unmadeWords } from '../../../src/components/words/supply-words.ts';
import type { RestPlan } from '../../../src/engine/log/rest.ts';
import type { PressPlan } from '../../../src/engine/visit/visit.ts';

function plan(change: Partial<PressPlan> & { setUps?: number }): PressPlan {
  const { setUps = 14, ...rest } = change;
  return {
    sheets: [],
    recipes: [],
    cards: Array.from({ length: setUps }, () => ({}) as PressPlan['cards'][number]),
    times: [],
    parts: [],
    clock: { startMinute: 570, workMinutes: 420, lunch: null },
    daysNeeded: 1,
    ends: { day: 2, minute: 350 },
    racksNeeded: 4,
    problems: [],
    inks: [],
    stocks: [],
    mounts: 11,
    inkChanges: 9,
    registerMoves: 0,
    bound: { setUps: 14, mounts: 11 },
    freeSwaps: 5,
    savedSetUps: 3,
    savedMounts: 0,
    done: true,
    ...rest,
  };
}

describe('planHeadline', () => {
  it('should count set-ups, mounts and ink changes', () => {
    expect(planHeadline(plan({}))).toBe('14 set-ups, 11 screen mounts, 9 ink changes');
  });
  it('should name changes of offset only when there are some', () => {
    expect(planHeadline(plan({ setUps: 1, mounts: 1, inkChanges: 1, registerMoves: 1 }))).toBe(
      '1 set-up, 1 screen mount, 1 ink change, 1 change of offset',
    );
  });
});

describe('endWords', () => {
  it('should tell the end and what no order beats', () => {
    expect(endWords(plan({ endsAtLeast: { day: 2, minute: 90 } }))).toBe(
      'It ends on day 2 at 15:20, washed up; no order of these pulls can end before 11:00 that day.',
    );
    expect(endWords(plan({ endsAtLeast: { day: 1, minute: 390 } }))).toContain('can end before 16:00 on day 1.');
    expect(endWords(plan({ endsAtLeast: { day: 2, minute: 350 } }))).toBe(
      'It ends on day 2 at 15:20, washed up: no order of these pulls ends sooner.',
    );
  });
  it('should keep silent where that is not known', () => {
    expect(endWords(plan({}))).toBe('');
    expect(endWords(plan({ endsAtLeast: null }))).toBe('');
  });
});

describe('inkSplit', () => {
  it('should say what the grams are for, and nothing of an order kept from before', () => {
    expect(inkSplit({ printedG: 24.4, proofsG: 1.25, lossG: 115, safetyG: 0 })).toBe(
      'sheets 24\u00a0g, proofs 1.3\u00a0g, left behind 115\u00a0g',
    );
    expect(inkSplit({ grams: 12 })).toBe('');
  });
});

describe('setUpTags', () => {
  it('should look to the set-up before on the same bed', () => {
    const card = { mount: false, inkChange: false, registerMove: false };
    const visit = {
      cards: [{ ...card, mount: true }, { ...card, mount: true }, card],
      times: [
        { day: 1, bed: 0 },
        { day: 2, bed: 1 },
        { day: 1, bed: 0 },
      ],
    } as unknown as PressPlan;
    expect([0, 1, 2].map((at) => setUpTags(visit, at))).toEqual([['mount'], ['mount'], []]);
  });

  it('should mount again in the morning what was washed up overnight', () => {
    const card = { mount: false, inkChange: true, registerMove: false };
    const visit = {
      cards: [{ ...card, mount: true }, card, card],
      times: [{ day: 1 }, { day: 1 }, { day: 2 }],
    } as unknown as PressPlan;
    expect([0, 1, 2].map((at) => setUpTags(visit, at))).toEqual([['mount', 'new ink'], ['new ink'], ['mount again', 'new ink']]);
  });
});

describe('boundWords', () => {
  it('should say proven fewest when the bound is met', () => {
    expect(boundWords(plan({}))).toBe('No order has fewer than 14 set-ups and 11 mounts: this one is proven fewest in both.');
  });
  it('should state the gap of each measure by itself', () => {
    expect(boundWords(plan({ bound: { setUps: 13, mounts: 11 } }))).toContain(
      'this one has the fewest mounts and at most 1 set-up more than the fewest there can be.',
    );
    expect(boundWords(plan({ bound: { setUps: 14, mounts: 9 } }))).toContain(
      'this one has at most 2 mounts more than the fewest there can be and the fewest set-ups.',
    );
  });
});

describe('freeSwapWords', () => {
  it('should say what they save at least', () => {
    expect(freeSwapWords(plan({}))).toBe('Free swaps save at least 3 set-ups.');
    expect(freeSwapWords(plan({ savedSetUps: 1, savedMounts: 2 }))).toBe('Free swaps save at least 1 set-up and 2 mounts.');
  });
  it('should not boast of a saving that is none or not known', () => {
    expect(freeSwapWords(plan({ savedSetUps: 0 }))).toBe('5 overlapping pairs may change places unseen.');
    expect(freeSwapWords(plan({ savedSetUps: null, savedMounts: null }))).not.toContain('save');
    expect(freeSwapWords(plan({ freeSwaps: 0, savedSetUps: 0 }))).toContain('No free swaps');
  });
});

describe('beforeWords', () => {
  const before = { setUps: 16, mounts: 12, inkChanges: 9, registerMoves: 0, ends: { day: 2, minute: 360 } };
  it('should say against what a new order is better, and by which figure', () => {
    expect(beforeWords(plan({ before }))).toBe(
      'Going on as before would be 16 set-ups, 12 mounts, 9 ink changes and 0 changes of offset, ending on day 2 at 15:30. This order is better: it has fewer mounts, which count first. Undo brings the old one back.',
    );
    expect(beforeWords(plan({ before: { ...before, mounts: 11, inkChanges: 10 } }))).toContain('fewer ink changes');
    expect(beforeWords(plan({ before: { ...before, mounts: 11 } }))).toContain('it ends sooner');
  });
  it('should say that the old order stays, and nothing where there was none', () => {
    // What it costs is said too: an ink change leaves ink behind.
    const dear = { setUps: 16, mounts: 12, inkChanges: 3, registerMoves: 0, ends: { day: 1, minute: 60 } };
    expect(beforeWords(plan({ before: dear }))).toContain(
      'it has fewer mounts, which count first, at the cost of 6 ink changes more and a later end. Undo',
    );
    expect(beforeWords(plan({ before, kept: true }))).toContain('the order at hand');
    expect(beforeWords(plan({}))).toBe('');
  });
});

describe('instructionWords', () => {
  it('should name the sheets that go otherwise than most of the set-up', () => {
    const card = { dxMm: 1, dyMm: 0, turnDeg: 0, strokes: 1 };
    const instructions = [
      { ...card, sheets: [1, 2, 3] },
      { ...card, strokes: 2, sheets: [4, 5, 6] },
      { ...card, dxMm: 1.3, sheets: [7] },
    ];
    expect(instructionWords({ ...card, instructions })).toEqual([
      'Sheets 4–6: 2 strokes',
      'Sheet 7: drawn 0.3 mm right of the others, nearer than this table tells apart',
    ]);
    expect(instructionWords(card)).toEqual([]);
  });
});

describe('offsets that are turned', () => {
  const at = (turnDeg: number, dxMm = 0) => ({ dxMm, dyMm: 0, turnDeg });

  it('should be said the short way round, in every place alike', () => {
    expect([90, 180, 270, -90, 350, 360].map((turn) => offsetWords(at(turn)))).toEqual([
      'turned 90° clockwise',
      'turned 180°',
      'turned 90° anticlockwise',
      'turned 90° anticlockwise',
      'turned 10° anticlockwise',
      'no offset',
    ]);
    expect(offsetShort(at(270, 12))).toBe('→ 12.0 mm, turn 90° left');
    expect(recipeOffsetWords(at(270, 12))).toBe('12 mm right, turned 90° anticlockwise');
  });

  // A sheet turned anticlockwise under a frame takes a print that is turned clockwise on it.
  it('should turn the paper the other way than the print, and say nothing of what lies as drawn', () => {
    const how = /^Turn the paper, not the frame: (.+) about its middle/u;
    expect([90, 270, 180].map((turn) => how.exec(offsetNotes(at(turn))[0]!)?.[1])).toEqual([
      'a quarter anticlockwise',
      'a quarter clockwise',
      'half round',
    ]);
    expect(offsetNotes(at(0))).toEqual([]);
    expect(offsetNotes(at(90)).length).toBe(1);
    expect(offsetNotes(at(90, 3)).length).toBe(2);
    expect(offsetNotes(at(12, 3)).length).toBe(1);
  });
});

describe('offsetWords and offsetShort', () => {
  it('should name the way the image moves, y down', () => {
    expect(offsetWords({ dxMm: 12.5, dyMm: -3, turnDeg: 0 })).toBe('12.5 mm right, 3.0 mm up');
    expect(offsetWords({ dxMm: -0.2, dyMm: 4, turnDeg: -2 })).toBe('0.2 mm left, 4.0 mm down, turned 2° anticlockwise');
    expect(offsetShort({ dxMm: -0.2, dyMm: 4, turnDeg: 0 })).toBe('← 0.2 ↓ 4.0 mm');
  });
  it('should say when there is none', () => {
    expect(offsetWords({ dxMm: 0, dyMm: 0, turnDeg: 0 })).toBe('no offset');
    expect(offsetShort({ dxMm: 0, dyMm: 0, turnDeg: 0 })).toBe('no offset');
  });
});

describe('offsetArrow', () => {
  it('should draw twice the offset twice as long, and say the millimetres that the lays are moved by', () => {
    const [one, two] = [offsetArrow({ dxMm: 3, dyMm: 0 }), offsetArrow({ dxMm: 0, dyMm: -6 })];
    expect(two.length).toBeCloseTo(2 * one.length, 9);
    expect([one.words, two.words]).toEqual(['→ 3.0 mm', '↑ 6.0 mm']);
    expect(offsetArrow({ dxMm: 0.3, dyMm: 0.4 })).toMatchObject({ length: 2, words: '→ 0.3 ↓ 0.4 mm', cut: false });
  });
  it('should say when it is drawn shorter than it is', () => {
    expect(offsetArrow({ dxMm: 40, dyMm: 0 }).cut).toBe(true);
    expect(offsetArrow({ dxMm: 0, dyMm: 0 }).length).toBe(0);
  });
});

describe('timeWords', () => {
  const time = { day: 2, bed: 0, startMinute: 0, endMinute: 95 } as PressPlan['times'][number];
  it('should tell the time on the wall', () => {
    expect(timeWords({ ...plan({}), times: [time] }, time)).toBe('Day 2, 9:30 to 11:05');
  });
  it('should name the bed when there are two', () => {
    const other = { ...time, bed: 1 };
    expect(timeWords({ ...plan({}), times: [time, other] }, other)).toBe('Day 2, bed 2, 9:30 to 11:05');
  });
});

describe('waitWords', () => {
  it('should name every ink that must dry, and full racks', () => {
    const visit = (change: object) =>
      ({ times: [{ waitMinutes: 25, waitFor: [], rackWaitMinutes: 0, ...change }] }) as unknown as PressPlan;
    expect(waitWords(visit({ waitFor: ['Rust'] }), 0)).toBe('wait 25 min: Rust dries');
    expect(waitWords(visit({ waitFor: ['Rust', 'Kelp'] }), 0)).toBe('wait 25 min: Rust and Kelp dry');
    expect(waitWords(visit({ rackWaitMinutes: 25 }), 0)).toBe('wait 25 min: the racks are full');
  });
});

describe('small words', () => {
  it('should write clock, lists and letters', () => {
    expect([clockText(80), clockText(570), clockText(1500)]).toEqual(['1:20', '9:30', '1:00']);
    expect([listed([]), listed(['a']), listed(['a', 'b', 'c'])]).toEqual(['', 'a', 'a, b and c']);
    expect([0, 25, 26, 27, 51, 52, 701, 702].map(recipeLetter)).toEqual(['A', 'Z', 'AA', 'AB', 'AZ', 'BA', 'ZZ', 'AAA']);
  });
});

describe('the words of what is left', () => {
  const rest = (begins: RestPlan['begins']): RestPlan =>
    ({ clock: { startMinute: 570, workMinutes: 420, lunch: null }, daysNeeded: 3, racksNeeded: 4, begins }) as unknown as RestPlan;
  it('should say from when, what is wet and what stays', () => {
    expect(beginWords(rest({ day: 2, minute: 275, wetSheets: 4, stays: '7' }))).toBe(
      'From day 2, 14:05 on: 4 sheets are still wet; screen 7 stays on the press.',
    );
    expect(beginWords(rest({ day: 2, minute: 0, wetSheets: 0, stays: ['7', '3'] }))).toContain('; screens 7 and 3 stay on the press.');
    expect(beginWords(rest({ day: 2, minute: 0, wetSheets: 0, stays: null }))).toBe('From day 2, 9:30 on: everything is dry.');
    expect(needsWords(rest({ day: 2, minute: 0, wetSheets: 0, stays: null }))).toBe('Done on day 3, and a rack for 4 wet sheets.');
  });
});

describe('unmadeWords', () => {
  const cards = ['4', '7', '4', '9'].map((key, at) => ({ number: at + 1, screen: { key } })) as unknown as PressPlan['cards'];
  it('should name the screens that are not made and the set-up that needs the first, and say nothing where nobody said anything', () => {
    expect(unmadeWords({ cards }, undefined)).toBe('');
    expect(unmadeWords({ cards }, new Map(['4', '7', '9'].map((key) => [key, 'made'])))).toBe('');
    expect(
      unmadeWords(
        { cards },
        new Map([
          ['4', 'made'],
          ['7', 'to make'],
        ]),
      ),
    ).toBe('Screens 7 and 9 of this order are not made yet; the first is needed for set-up 2.');
    expect(
      unmadeWords(
        { cards },
        new Map([
          ['4', 'made'],
          ['7', 'made'],
          ['9', 'film made'],
        ]),
      ),
    ).toBe('Screen 9 of this order is not made yet; it is needed for set-up 4.');
  });
});
