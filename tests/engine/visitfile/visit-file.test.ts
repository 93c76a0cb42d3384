import fc from 'fast-check';
import { zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { LogEvent } from '../../../src/engine/log/types.ts';
import { visitHeadOf } from '../../../src/engine/log/visit-head.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { planVisit, type PressPlan } from '../../../src/engine/visit/visit.ts';
import { type VisitPlan } from '../../../src/engine/visitfile/plan-file.ts';
import { readAnyLog, readVisit, writeVisit } from '../../../src/engine/visitfile/visit-file.ts';
import { smallProject } from '../../helpers/small-project.ts';
import { readZip } from '../../helpers/zip.ts';

const base = smallProject();
const recipe = recipeOf(base.bench, base.drawer, { id: 'a', title: 'Ebb' });
const project = { ...base, recipes: [recipe], visit: [{ recipe: 'a', sheets: 4 }] };

function planned(): VisitPlan {
  const input = { runs: [{ recipe, sheets: 4, overs: 1, proofs: 1 }], minDeltaE: 1, press: base.press, seed: 'x' };
  let plan: PressPlan | null = null;
  for (const step of planVisit(input, 50)) plan = step;
  return { plan: plan!, input, recipes: [recipe] };
}

const made = planned();
const head = visitHeadOf(made.plan, [recipe], { id: 'v', title: 'May', begunMs: 1, minDeltaE: 1 });
const events: LogEvent[] = [{ id: 'e', atMs: 5, device: 'd', sheet: 1, kind: 'pulled', pulls: ['p1'] }];
const bytes = writeVisit({ project, made, log: { head, events } });
const text = (value: unknown): Uint8Array => new TextEncoder().encode(JSON.stringify(value));
const messageOf = (file: Uint8Array): string => readVisit(file, 'may.zip').problems[0]!.message;

describe('a visit as a file', () => {
  it('should come back whole: project, order and log', () => {
    const { value, problems } = readVisit(bytes, 'may.zip');
    expect(problems).toEqual([]);
    expect(value!.project).toEqual(project);
    expect(value!.made).toEqual({ ...made, plan: JSON.parse(JSON.stringify(made.plan)) });
    expect(value!.log!.head).toEqual(head);
    expect(value!.log!.events).toEqual(events);
    expect(readAnyLog(bytes, 'may.zip').value!.events).toEqual(events);
    expect(writeVisit({ project, made, log: { head, events } })).toEqual(bytes);
  });

  it('should be a zip of three documents, beside its drawings, by the format’s own rules', () => {
    const documents = [...readZip(bytes)].filter(([name]) => !name.startsWith('shapes/'));
    const formats = documents.map(([name, part]) => [name, (JSON.parse(part.toString()) as { format: string }).format]);
    expect(Object.fromEntries(formats)).toEqual({
      'project.json': 'pullstack-project',
      'plan.json': 'pullstack-plan',
      'log.json': 'pullstack-log',
    });
  });

  it('should hold a project alone too, and the order of a visit that was not begun', () => {
    expect(readVisit(writeVisit({ project, made: null, log: null }), 'a.zip').value).toEqual({ project, made: null, log: null });
    expect(readVisit(writeVisit({ project, made, log: { head, events: [] } }), 'a.zip').value!.log!.events).toEqual([]);
  });

  it('should hold the numbers of what is left behind what is done, and refuse others', () => {
    const cards = made.plan.cards.map((card) => ({ ...card, number: card.number + 3 }));
    const numbered = (setUpsBefore: number) =>
      writeVisit({ project, made: { ...made, plan: { ...made.plan, cards, setUpsBefore } }, log: { head, events } });
    expect(readVisit(numbered(3), 'may.zip').value!.made!.plan.setUpsBefore).toBe(3);
    expect(messageOf(numbered(2))).toMatch(/plan\.cards\[0\]\.number is 4, not 3/);
  });

  it('should name the file, the place and the mend of what cannot be', () => {
    expect(messageOf(text({}))).toBe('may.zip: this is no zip; choose a file that was saved here as a visit.');
    expect(messageOf(bytes.slice(0, bytes.length / 2))).toBe(
      'may.zip: the zip is cut off or damaged; save the visit again, or copy the file anew.',
    );
    expect(messageOf(zipSync({ 'a.txt': text(1) }))).toContain('there is no project.json in it');
    const parts = { 'project.json': text(project), 'log.json': text({ format: 'pullstack-log', version: 1, head, events }) };
    const with_ = (plan: unknown): string => messageOf(zipSync({ ...parts, 'plan.json': text(plan) }));
    const { 'plan.json': _, ...rest } = { ...parts, 'plan.json': 0 };
    expect(readVisit(zipSync(rest), 'x').problems).toEqual([]);
    const whole = JSON.parse(new TextDecoder().decode(readZip(bytes).get('plan.json')!)) as { plan: PressPlan; runs: { recipe: number }[] };
    const changed = (change: (plan: PressPlan) => void): string => {
      const copy = structuredClone(whole);
      change(copy.plan);
      return with_(copy);
    };
    expect(changed((plan) => (plan.cards[0]!.strokes = 0))).toBe(
      'may.zip, plan.json: plan.cards[0].strokes is 0, but must be 1 or more; mend that field and read the file again.',
    );
    expect(changed((plan) => (plan.cards[0]!.states[0]!.prints = [9]))).toContain('names a recipe or pull that is not there');
    expect(changed((plan) => (plan.cards[0]!.states[0]!.sheets = [77]))).toContain('names a sheet that its recipe does not have');
    expect(changed((plan) => plan.times.pop())).toMatch(
      /plan\.times has \d+ entries for \d+ set-ups; save the visit again where it was made\./,
    );
    expect(with_({ ...whole, runs: [{ recipe: 5, sheets: 1 }] })).toContain('runs[0].recipe is 5, but there are 1');
    expect(messageOf(zipSync({ 'project.json': text(project), 'plan.json': readZip(bytes).get('plan.json')! }))).toContain(
      'there is a plan.json but no log.json',
    );
  });

  it('should give a visit or a sentence, whatever became of the bytes', () => {
    const change = fc.record({ at: fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }), byte: fc.nat(255) });
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 8 }), fc.boolean(), (changes, cut) => {
        const bad = bytes.slice();
        for (const { at, byte } of changes) bad[Math.floor(at * bad.length)] = byte;
        const { value, problems } = readVisit(cut ? bad.slice(0, Math.floor(changes[0]!.at * bad.length)) : bad, 'may.zip');
        if (value !== null) return problems.length === 0;
        return problems.length > 0 && problems.every(({ message }) => /^may\.zip\b.*\.$/su.test(message) && message.length < 600);
      }),
      { seed: 12, numRuns: 300 },
    );
  });

  it('should refuse what is small packed and vast unpacked', () => {
    const bomb = zipSync({ 'project.json': new Uint8Array(201_000_000) });
    expect(bomb.length).toBeLessThan(1_000_000);
    expect(messageOf(bomb)).toContain('project.json has 201000000 bytes unpacked, over the 200000000 that it may have');
  });
});
