import type { Contacts } from './contact.ts';

/**
 * Arrays as long as a block has patches, kept from one use to the next: to make them anew for every region of a large
 * block would take longer than what is done with them.
 */
export class WorkingMemory<T> {
  private readonly idle = new WeakMap<Contacts, T[]>();

  constructor(private readonly make: (contacts: Contacts) => T) {}

  /** Lends it for as long as `use` runs; in the state in which it was left. */
  lend<R>(contacts: Contacts, use: (memory: T) => R): R {
    let idle = this.idle.get(contacts);
    if (idle === undefined) {
      idle = [];
      this.idle.set(contacts, idle);
    }
    const memory = idle.pop() ?? this.make(contacts);
    try {
      return use(memory);
    } finally {
      idle.push(memory);
    }
  }
}
