import { describe, expect, it } from 'vitest';
import { AppStore } from '../../../../src/components/app-store.ts';
import { addVeil } from '../../../../src/components/bench/veil/add-veil.ts';
import { edgeContrastText, softerWords, placeWords, veilWords } from '../../../../src/components/bench/veil/veil-words.ts';
import type { VeilProposal } from '../../../../src/engine/explore/veil/veil-types.ts';
import { veils } from '../../../../src/engine/explore/veil/veil.ts';
import { demoStocks } from '../../../../src/engine/ink/demo/demo-stocks.ts';
import { smallProject } from '../../../helpers/small-project.ts';

function propose(): VeilProposal[] {
  const project = smallProject();
  const run = veils({ pulls: project.bench }, project.drawer, { rows: 64, base: demoStocks()[0]! });
  let next = run.next();
  while (next.done !== true) next = run.next();
  return next.value.proposals;
}

describe('softerWords', () => {
  it('should be stronger the more contrast of edges goes', () => {
    expect([0.02, 0.1, 0.2, 0.4, 0.9].map(softerWords)).toEqual([
      'a touch softer',
      'a little softer',
      'softer',
      'much softer',
      'very much softer',
    ]);
  });
});

describe('edgeContrastText and placeWords', () => {
  it('should round for reading', () => {
    expect([1.567, 0.0456, 0].map(edgeContrastText)).toEqual(['1.57', '0.046', '0.00']);
    expect([placeWords(3, 4), placeWords(1, 4)]).toEqual(['last down', 'pull 2 of 4']);
  });
});

describe('addVeil', () => {
  const proposals = propose();

  it('should lay every proposal so that it can be taken back at once', () => {
    expect(proposals.length).toBeGreaterThan(0);
    for (const proposal of proposals) {
      const project = smallProject();
      const store = new AppStore(project, { save: () => undefined });
      const said = addVeil(store, proposal, new Set());
      expect(store.notices).toEqual([]);
      expect(said).toContain(veilWords(proposal, project.drawer).ink);
      expect(store.project.bench.map(({ ink }) => ink)).toEqual(proposal.pulls.map(({ ink }) => ink));
      expect(store.selectedPull).toBe(proposal.veil.id);
      store.undo();
      expect(store.project).toEqual(project);
    }
  });

  it('should keep clear of ids that pulls had before', () => {
    const store = new AppStore(smallProject(), { save: () => undefined });
    addVeil(store, proposals[0]!, new Set(['veil', 'veil-2']));
    expect(store.project.bench.at(-1)!.id).toBe('veil-3');
  });
});
