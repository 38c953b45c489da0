import { giftsOf, sameGifts } from '@seamwright/arrangement';
import { amendPattern } from '../store/changes.ts';
import { currentBlock, useWork } from '../store/work.ts';

/** The carried records become part of the document, unless the drawing studied is not the document's (any more). */
export function keepRecords(): void {
  const work = useWork.getState();
  const { study } = work;
  const block = currentBlock(work);
  if (study === null || study.stale || study.drawing !== block.drawing) return;
  const records = withGifts(study.records, block.patches);
  if (sameRecords(records, block.patches)) return;
  amendPattern((before) => ({
    ...before,
    blocks: before.blocks.map((one) => (one.id === block.id ? { ...one, patches: records } : one)),
  }));
}

type Records = ReturnType<typeof currentBlock>['patches'];

/** What the maker gave the patches while they were being studied stands. */
function withGifts(records: Records, now: Records): Records {
  const nowOf = new Map(now.map((record) => [record.id, record]));
  return records.map((record) => {
    const given = nowOf.get(record.id);
    if (given === undefined || sameGifts(given, record)) return record;
    const { id, signature, at } = record;
    return { id, signature, at, ...giftsOf(given) };
  });
}

const sameRecords = (a: Records, b: Records): boolean =>
  a.length === b.length &&
  a.every((one, i) => {
    const other = b[i]!;
    return (
      one.id === other.id &&
      one.signature === other.signature &&
      sameGifts(one, other) &&
      one.at.x === other.at.x &&
      one.at.y === other.at.y
    );
  });
