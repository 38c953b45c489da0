import type { Touching } from './contact.ts';

/**
 * Arrays as long as a block has patches, kept from one use to the next: to make them anew for every region of a large
 * block would take longer than what is done with them.
 */
export class WorkingMemory<T> {
  private readonly idle = new WeakMap<Touching, T[]>();

  constructor(private readonly make: (touching: Touching) => T) {}

  /** Lends it for as long as `use` runs; in the state in which it was left. */
  lend<R>(touching: Touching, use: (memory: T) => R): R {
    const idle = this.idle.get(touching) ?? [];
    this.idle.set(touching, idle);
    const memory = idle.pop() ?? this.make(touching);
    try {
      return use(memory);
    } finally {
      idle.push(memory);
    }
  }
}
