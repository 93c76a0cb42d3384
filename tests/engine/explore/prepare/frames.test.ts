import { describe, expect, it } from 'vitest';
import { frameState, isAtHand, withFrame, withInside, withoutFrame } from '../../../../src/engine/explore/prepare/frames.ts';
import { USUAL_FILMS } from '../../../../src/engine/output/film/settings.ts';
import { apply } from '../../../../src/engine/project/apply.ts';
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
