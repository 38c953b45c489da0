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
    const practice = new Practice((task) => {
      tasks.push(task);
      return () => void tasks.splice(tasks.indexOf(task), 1);
    }, 3);
    const doAll = () => {
      vi.runAllTimers();
      while (tasks.length > 0) tasks.shift()!();
    };
    practice.after(400, again);
    doAll();
    // 10 studies of 400 patches in all, the one asked for among them.
    expect(again).toHaveBeenCalledTimes(9);
    practice.after(200, again);
    doAll();
    expect(again).toHaveBeenCalledTimes(12);
    practice.after(200, again);
    vi.runAllTimers();
    practice.stop();
    expect(tasks).toEqual([]);
    practice.after(200, again);
    practice.stop();
    doAll();
    expect(again).toHaveBeenCalledTimes(13);
  });
});
