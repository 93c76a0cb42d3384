import { describe, expect, it } from 'vitest';
import { hearTrackpadPinch } from '../../../../src/components/ui/kit/trackpad-pinch.ts';

function gesture(type: string, scale: number): Event {
  return Object.assign(new Event(type, { cancelable: true }), { scale, clientX: 30, clientY: 40 });
}

describe('hearTrackpadPinch', () => {
  it('should tell of each step, keep the page from scaling, and leave fingers on the screen to others', () => {
    const element = new EventTarget();
    const told: [number, number, number][] = [];
    let fingers = false;
    const end = new AbortController();
    hearTrackpadPinch(element, {
      busy: () => fingers,
      zoom: (ratio, { clientX, clientY }) => told.push([ratio, clientX, clientY]),
      signal: end.signal,
    });
    const change = gesture('gesturechange', 2);
    element.dispatchEvent(gesture('gesturestart', 1));
    element.dispatchEvent(change);
    element.dispatchEvent(gesture('gesturechange', 3));
    element.dispatchEvent(gesture('gestureend', 3));
    expect(told).toEqual([
      [2, 30, 40],
      [1.5, 30, 40],
    ]);
    expect(change.defaultPrevented).toBe(true);

    // The next begins anew.
    element.dispatchEvent(gesture('gesturestart', 1));
    element.dispatchEvent(gesture('gesturechange', 0.5));
    expect(told.at(-1)).toEqual([0.5, 30, 40]);

    fingers = true;
    element.dispatchEvent(gesture('gesturechange', 4));
    fingers = false;
    end.abort();
    element.dispatchEvent(gesture('gesturechange', 4));
    expect(told).toHaveLength(3);
  });
});
