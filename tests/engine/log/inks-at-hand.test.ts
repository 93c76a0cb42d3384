import { describe, expect, it } from 'vitest';
import { recipesAsPulled, sheetsAsPulled } from '../../../src/engine/log/as-pulled.ts';
import { checkLog } from '../../../src/engine/log/check.ts';
import { readLog, writeLog } from '../../../src/engine/log/log-file.ts';
import { planRest } from '../../../src/engine/log/rest.ts';
import type { LogEvent, VisitHead } from '../../../src/engine/log/types.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { inksAtHand } from '../../../src/engine/visit/lent/inks-at-hand.ts';
import { smallProject } from '../../helpers/small-project.ts';

const project = smallProject();
const [first] = project.drawer.inks;
const stock = { ...first!, id: 'stock', name: 'Stock black', stock: true as const };
const mixed = { ...first!, id: 'mixed', name: 'Wet grey', mix: [{ ink: 'stock', parts: 1 }] };
const drawer = [...project.drawer.inks, stock, mixed];
const recipe = recipeOf(project.bench, project.drawer, { id: 'a', title: 'A' });
const rust = recipe.inks.find(({ id }) => id === 'rust')!;
const head: VisitHead = { id: 'v', title: 'V', begunMs: 0, recipes: [recipe], sheets: [1, 2].map((number) => ({ number, recipe: 0 })) };

describe('inks at hand beside the one that was planned', () => {
  const offered = inksAtHand([recipe], drawer, rust);

  it('should be those of the visit first, then all others of the project, each once, no stock inks', () => {
    const [own, others] = [false, true].map((far) => offered.filter(({ stocks }) => (stocks !== undefined) === far));
    expect(own!.map(({ ink }) => ink.id).sort()).toEqual(['foam', 'weed']);
    expect(offered.slice(0, 2)).toEqual(own);
    const expected = project.drawer.inks.filter(({ id }) => !['foam', 'weed', 'rust'].includes(id)).map(({ id }) => id);
    expect(others!.map(({ ink }) => ink.id)).toEqual([...expected, 'mixed']);
    expect(offered.at(-1)!.stocks).toEqual([stock]);
  });

  it('should be logged, read again and planned around with what they are weighed from', () => {
    const how = { ...offered.at(-1)!, dxMm: 0, dyMm: 0 };
    const events: LogEvent[] = [{ id: 'e1', atMs: 5, device: 'd', sheet: 1, kind: 'otherwise', pulls: ['p1'], how, note: '' }];
    expect(checkLog(head, events)).toEqual([]);
    expect(readLog(writeLog(head, events), 'log.json').value!.events).toEqual(events);
    const recipes = recipesAsPulled(head, events);
    const sheets = sheetsAsPulled(head, events);
    const pulled = recipes[0]!.inks.find(({ id }) => id === sheets[0]!.pulls[0]!.ink)!;
    expect(pulled.name).toBe('Wet grey');
    expect(pulled.mix!.map((part) => recipes[0]!.inks.find(({ id }) => id === part.ink)!.name)).toEqual(['Stock black']);
    // Sheet 1 has it behind it: only sheet 2 is still to be pulled in the ink that was planned.
    const plans = [...planRest({ runs: [], minDeltaE: 1, press: project.press, seed: 's', rest: { recipes, sheets } }, 20)];
    const cards = plans.at(-1)!.cards.filter(({ ink }) => ink.ink.name === rust.name);
    expect(cards.map((card) => card.sheets)).toEqual([[2]]);
    expect(plans.at(-1)!.inks.map(({ name }) => name)).not.toContain('Wet grey');
  });
});
