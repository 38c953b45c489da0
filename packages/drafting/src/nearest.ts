/** The item that is least far, if any is within `reach`; of equally far ones the first. */
export function nearest<T>(items: Iterable<T>, reach: number, far: (item: T) => number): T | undefined {
  let best: T | undefined;
  let least = reach;
  let found = false;
  for (const item of items) {
    const d = far(item);
    if (d > least || (found && d === least)) continue;
    best = item;
    least = d;
    found = true;
  }
  return best;
}
