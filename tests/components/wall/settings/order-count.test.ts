import { nothing } from 'lit';
import { describe, expect, it } from 'vitest';
import { OrderCountNote } from '../../../../src/components/wall/settings/order-count.ts';
import { smallProject } from '../../../helpers/small-project.ts';

describe('how many orders may differ', () => {
  it('should not be said of a stack with other pulls than were counted, as of the project before', () => {
    const note = new OrderCountNote();
    note.project = smallProject();
    const count = (pulls: number) => Object.assign(note, { counted: { pulls, overlaps: 2, count: '4', oneByOne: true } });
    count(3);
    expect(note.render()).not.toBe(nothing);
    count(12);
    expect(note.render()).toBe(nothing);
  });
});
