import { describe, expect, it } from 'vitest';
import { targetPdf } from '../../../src/components/output/target-pdf.ts';
import { demoInks } from '../../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER as paper } from '../../../src/engine/ink/demo/demo-paper.ts';
import { tellingSquares } from '../../../src/engine/ink/target/telling-squares.ts';
import { pageFonts as fonts } from '../../helpers/page-fonts.ts';
import { pdfPages } from '../../helpers/pdf-text.ts';

describe('targetPdf', () => {
  const inks = demoInks().map((ink) => (ink.id === 'foam' ? { ...ink, name: 'Foam of a very long and rather cold morning' } : ink));
  const squares = tellingSquares(inks, paper, 12).map((films) => ({ films, hex: '#805030' }));

  it('should have every square by number and name, how to pull it, and a line to write it down', async () => {
    const { bytes, missing } = await targetPdf({ squares, inks, paper, title: 'Slack tide', size: 'A4', fonts });
    expect(missing).toEqual([]);
    const pages = await pdfPages(bytes);
    expect(pages).toHaveLength(2);
    const [first, second] = pages.map((page) => JSON.stringify(page)) as [string, string];
    expect(first).toContain('12 squares to pull: Slack tide');
    for (const { name } of inks.slice(0, 4)) expect(first).toContain(`${name} alone`);
    expect(second).toContain('first down first');
    expect(second).toContain('What you measure');
  });

  it('should go on over more pages with many squares', async () => {
    const many = tellingSquares(inks, paper, 60).map((films) => ({ films, hex: '#805030' }));
    const { bytes } = await targetPdf({ squares: many, inks, paper, title: '', size: 'Letter', fonts });
    expect((await pdfPages(bytes)).length).toBeGreaterThan(4);
  });
});
