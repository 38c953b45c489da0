import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Practice } from './practice.ts';

describe('Practice', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('waits until nobody asks, and then studies again until that is enough', () => {
    const again = vi.fn();
    const practice = new Practice();
    for (let move = 0; move < 5; move += 1) {
      practice.after(200, again);
      vi.advanceTimersByTime(16);
    }
    expect(again).not.toHaveBeenCalled();
    vi.runAllTimers();
    // 20 studies of 200 patches in all, the five asked for among them.
    expect(again).toHaveBeenCalledTimes(15);
    practice.after(200, again);
    vi.runAllTimers();
    expect(again).toHaveBeenCalledTimes(15);
  });

  it('stops for a question, and goes on with what was asked', () => {
    const [before, now] = [vi.fn(), vi.fn()];
    const practice = new Practice();
    practice.after(150, before);
    vi.advanceTimersToNextTimer();
    practice.after(150, now);
    vi.runAllTimers();
    expect(before).toHaveBeenCalledTimes(1);
    expect(now).toHaveBeenCalled();
  });

  it('does not study small blocks for ever, nor what would hold up a question for long', () => {
    const again = vi.fn();
    new Practice().after(1, again);
    vi.runAllTimers();
    expect(again).toHaveBeenCalledTimes(20);
    new Practice().after(401, again);
    new Practice().after(0, again);
    vi.runAllTimers();
    expect(again).toHaveBeenCalledTimes(20);
  });

  it('studies every drawing as often as is wished, each time when that suits, and can be stopped', () => {
    const tasks: (() => void)[] = [];
    const again = vi.fn();
    const practice = new Practice({
      later: (task) => {
        tasks.push(task);
        return () => void tasks.splice(tasks.indexOf(task), 1);
      },
      least: 3,
      most: 10,
      isEnough: (studied) => studied >= 2000,
    });
    const doAll = () => {
      vi.runAllTimers();
      while (tasks.length > 0) tasks.shift()!();
    };
    practice.after(100, again);
    doAll();
    expect(again).toHaveBeenCalledTimes(10);
    practice.after(200, again);
    doAll();
    // 2100 patches in all: 11 studies of 100, 5 of 200, those that were asked for among them.
    expect(again).toHaveBeenCalledTimes(14);
    practice.after(200, again);
    doAll();
    expect(again).toHaveBeenCalledTimes(17);
    practice.after(200, again);
    vi.runAllTimers();
    practice.stop();
    expect(tasks).toEqual([]);
    practice.after(200, again);
    practice.stop();
    doAll();
    expect(again).toHaveBeenCalledTimes(18);
  });
});
