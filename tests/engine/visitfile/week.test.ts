import { describe, expect, it } from 'vitest';
import { readWeek, type Week, type WeekVisit, withVisit } from '../../../src/engine/visitfile/week.ts';

const visit = (id: string, title: string): WeekVisit => ({
  id,
  title,
  firstDay: 20_784,
  days: [{ day: 1, bed: 0, fromMinute: 570, toMinute: 1010.5, setUps: 12 }],
});
const WEEK: Week = { own: { id: 'open', firstDay: 20_783 }, others: [visit('a', 'Ebb'), visit('b', 'Flood')] };

describe('a week that was kept', () => {
  it('should be read as it was kept, and be empty where none was', () => {
    expect(readWeek(structuredClone(WEEK))).toEqual({ week: WEEK, bad: [], sentence: null });
    for (const none of [undefined, null]) expect(readWeek(none)).toEqual({ week: { own: null, others: [] }, bad: [], sentence: null });
  });

  it('should give up no visit for another that cannot be read, and name the field', () => {
    const bad = { ...visit('c', 'Slack'), firstDay: 'Friday' };
    const read = readWeek({ ...WEEK, others: [visit('a', 'Ebb'), bad, visit('b', 'Flood')] });
    expect(read.week).toEqual(WEEK);
    expect(read.bad).toEqual([bad]);
    expect(read.sentence).toMatch(/others\[1\].*firstDay/);
  });

  it('should put aside what is no week at all', () => {
    for (const kept of ['Monday', 7, [], { own: null }, { others: { a: 1 } }]) {
      const read = readWeek(kept);
      expect(read.week.others).toEqual([]);
      expect(read.bad).toEqual([kept]);
      expect(read.sentence).toMatch(/add their files again/);
    }
    const read = readWeek({ ...WEEK, own: { id: '', firstDay: 3 } });
    expect(read.week).toEqual({ ...WEEK, own: null });
    expect(read.bad).toEqual([{ id: '', firstDay: 3 }]);
  });
});

describe('adding a visit to a week', () => {
  it('should put it behind the others, or in the place of an older order of it, on its day and under its name', () => {
    expect(withVisit(WEEK, visit('c', 'Slack'))).toEqual({
      week: { ...WEEK, others: [...WEEK.others, visit('c', 'Slack')] },
      replaced: false,
    });
    const newer = { ...visit('a', 'Ebb tide'), firstDay: 1, days: [] };
    const { week, replaced } = withVisit(WEEK, newer);
    expect(replaced).toBe(true);
    expect(week.others[0]).toEqual({ ...visit('a', 'Ebb'), days: [] });
    expect(week.others).toHaveLength(2);
  });
});
