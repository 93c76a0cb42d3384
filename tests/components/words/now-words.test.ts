import { afterEach, describe, expect, it } from 'vitest';
import { german } from '../../../src/components/words/de/german.ts';
import { plannedAndNow } from '../../../src/components/words/now-words.ts';
import type { RetimedPlan } from '../../../src/engine/log/now/retimed.ts';
import type { PressPlan } from '../../../src/engine/visit/visit.ts';
import { speakIn } from '../../../src/engine/words/language.ts';

afterEach(() => {
  speakIn('en', new Map());
});

const times = (startMinute: number) => [{ day: 1, startMinute, endMinute: startMinute + 45 }];
const plan = { times: times(60), clock: { startMinute: 510 } } as unknown as PressPlan;
const now = { times: times(95), outside: new Set() } as unknown as RetimedPlan;

describe('when a set-up is pulled', () => {
  it('should begin with a capital only where it stands alone', () => {
    expect(plannedAndNow(plan, now, 0)).toMatch(/^Planned day 1/u);
    expect(plannedAndNow(plan, now, 0, 'within')).toMatch(/^planned day 1/u);
    speakIn('de', german);
    expect(plannedAndNow(plan, now, 0)).toMatch(/^Geplant Tag 1/u);
    expect(plannedAndNow(plan, now, 0, 'within')).toMatch(/^geplant Tag 1/u);
  });
});
