import { describe, expect, it } from 'vitest';
import { frameState, isAtHand, withFrame, withInside, withoutFrame } from '../../../../src/engine/explore/prepare/frames.ts';
import { keptCuts, USUAL_FILMS, withCuts } from '../../../../src/engine/output/film/settings.ts';
import { apply } from '../../../../src/engine/project/apply.ts';
import { perform, startHistory, undo } from '../../../../src/engine/project/history.ts';
import { readSections } from '../../../../src/engine/project/read-sections.ts';
import { readProject } from '../../../../src/engine/project/read.ts';
import { smallProject } from '../../../helpers/small-project.ts';

describe('frames', () => {
  it('should stand in one state at a time, whatever was said before', () => {
    let frames = withFrame(undefined, 'a', 'to make');
    for (const state of ['film made', 'made', 'reclaimed', 'to make', 'drawn'] as const) {
      frames = withFrame(frames, 'a', state);
      expect(frameState('a', frames)).toBe(state);
      expect(isAtHand('a', frames)).toBe(state !== 'drawn' && state !== 'reclaimed');
    }
    expect(frames).toEqual({ made: [], toMake: [] });
  });

  it('should keep its size until it is forgotten', () => {
    const frames = withInside(withFrame(undefined, 'a', 'made'), 'a', { widthMm: 700, heightMm: 900 });
    expect(withFrame(frames, 'a', 'reclaimed').inside).toEqual({ a: { widthMm: 700, heightMm: 900 } });
    expect(withoutFrame(frames, 'a')).toMatchObject({ made: [], inside: {} });
  });

  it('should carry a number that no other frame has', () => {
    const project = smallProject();
    const [first, second] = project.drawer.screens;
    const numbered = (number: number) =>
      apply(project, { kind: 'change-screen', screen: first!.id, number }).project.drawer.screens[0]!.number;
    expect(numbered(42)).toBe(42);
    expect(numbered(first!.number)).toBe(first!.number);
    for (const number of [0, 1.5, second!.number])
      expect(() => numbered(number)).toThrow(expect.objectContaining({ code: 'command.number' }));
  });

  it('should have films made the way that was said last, kept with the project and its file', () => {
    const project = smallProject();
    const films = { ...USUAL_FILMS, side: 'squeegee' as const, spreadMm: -0.2, paper: 'A3' as const };
    const said = apply(project, { kind: 'set-films', films }).project;
    expect(readProject(JSON.stringify(said), 'p.json').value!.films).toEqual(films);
    const read = readSections({ ...said, films: { ...films, side: 'front' } }, project, 'p.json');
    expect([read.project.films, read.aside.length]).toEqual([undefined, 1]);
    expect(() => apply(project, { kind: 'set-films', films: { ...films, spreadMm: 50 } })).toThrow(
      expect.objectContaining({ code: 'command.films' }),
    );
  });

  it('should keep where a sheet is cut by the size of the sheet, with the project and its file', () => {
    const [large, small] = [
      { widthMm: 700, heightMm: 500 },
      { widthMm: 300, heightMm: 200 },
    ];
    const one = withCuts(USUAL_FILMS, large, { acrossMm: [350], downMm: [], overlapMm: 6 });
    const both = withCuts(one, small, { acrossMm: [], downMm: [90] });
    const project = smallProject();
    const said = apply(project, { kind: 'set-films', films: both });
    const read = readProject(JSON.stringify(said.project), 'p.json').value!.films!;
    expect([keptCuts(read, large), keptCuts(read, small), keptCuts(read, { widthMm: 500, heightMm: 700 })]).toEqual([
      { ...large, acrossMm: [350], downMm: [], overlapMm: 6 },
      { ...small, acrossMm: [], downMm: [90], overlapMm: 0 },
      undefined,
    ]);
    const moved = withCuts(read, large, { acrossMm: [300], downMm: [] });
    expect([keptCuts(moved, large)?.acrossMm, keptCuts(moved, small)]).toEqual([[300], keptCuts(read, small)]);
    // No cut is no entry, and without any the settings are as before there were cuts.
    const none = withCuts(withCuts(read, large, { acrossMm: [], downMm: [] }), small, { acrossMm: [], downMm: [] });
    expect(none).toEqual(USUAL_FILMS);
    expect(apply(said.project, { kind: 'set-films', films: none }).project.films).toEqual(USUAL_FILMS);
    // A cut is undone apart from other settings.
    const steps = [both, { ...both, spreadMm: 0.1 }, withCuts({ ...both, spreadMm: 0.1 }, large, { acrossMm: [300], downMm: [] })];
    const history = steps.reduce((so, films) => perform(so, { kind: 'set-films', films }), startHistory(project));
    expect(undo(history).project.films).toEqual(steps[1]);
    expect(undo(undo(history)).project.films).toEqual(steps[0]);
  });

  it('should be kept with the project and come back from its file, and leave with the screen', () => {
    const project = smallProject();
    const [screen] = project.drawer.screens;
    const id = screen!.id;
    const frames = withInside(withFrame(undefined, id, 'film made'), id, { widthMm: 700, heightMm: 900 });
    const said = apply(project, { kind: 'set-frames', frames }).project;
    expect(said.frames).toEqual({ made: [], toMake: [], film: [id], inside: { [id]: { widthMm: 700, heightMm: 900 } } });
    expect(readProject(JSON.stringify(said), 'p.json').value!.frames).toEqual(said.frames);
    const gone = apply({ ...said, bench: [], lesson: [], pins: [] }, { kind: 'remove-screen', screen: id }).project;
    expect(frameState(id, gone.frames)).toBe('drawn');
    expect(gone.frames?.inside).toEqual({});
  });
});
