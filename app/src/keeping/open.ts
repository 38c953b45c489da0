import { sentence } from '@seamwright/geometry';
import { type History, type Pattern, startHistory } from '@seamwright/pattern';
import { freshPattern } from '../store/fresh.ts';
import { tell, warn } from '../store/notices.ts';
import { keptPrinting } from '../store/printing.ts';
import { NOTHING, type Origin, useWork, type Work } from '../store/work.ts';
import { flush, keepNow, useKeeping } from './autosave.ts';
import { recallCurrent, rememberCurrent } from './current.ts';
import { takeForThisTab } from './one-tab.ts';
import { type FoundWork, find, revive, untouchedDemo } from './shelf.ts';

/** Puts a document in the place of the open one. The open one stays on the shelf as it is. */
async function show(
  kept: string,
  history: History<Pattern>,
  origin: Origin,
  place: Partial<Pick<Work, 'blockId' | 'station' | 'colourwayId' | 'printing'>> = {},
): Promise<void> {
  await takeForThisTab(kept);
  // What was done while that took its time is kept, too, before it is out of sight.
  await flush();
  useWork.setState({
    kept,
    origin,
    history,
    blockId: place.blockId ?? history.present.blocks[0]!.id,
    station: place.station ?? 'draft',
    colourwayId: place.colourwayId ?? null,
    printing: place.printing ?? {},
    selection: NOTHING,
    inHand: null,
    study: null,
    sheets: null,
  });
}

const newKept = (): string => crypto.randomUUID();

/** Opens a pattern that is not on the shelf yet, and puts it there. */
export async function openPattern(pattern: Pattern, origin: Exclude<Origin, 'fresh'>): Promise<void> {
  await flush();
  await show(newKept(), startHistory(pattern), origin);
  await keepNow();
}

/** Begins anew; nothing is kept of it until something is drawn. */
export async function openFresh(): Promise<void> {
  await flush();
  const kept = newKept();
  await show(kept, startHistory(freshPattern()), 'fresh');
  rememberCurrent(kept);
  useKeeping.setState({ state: 'nothing' });
}

/** Opens the demo pattern: the one on the shelf if nobody has changed it, otherwise a new one. */
export async function openDemo(): Promise<void> {
  await flush();
  const known = await untouchedDemo().catch(() => undefined);
  if (known !== undefined && (await openKept(known))) return;
  // Loaded when it is asked for, not with the page.
  const { demoPattern } = await import('./demo.ts');
  await openPattern(demoPattern(), 'demo');
}

/** Opens a work from the shelf. False, with a sentence on the screen, when it cannot be read. */
export async function openKept(work: FoundWork): Promise<boolean> {
  await flush();
  const history = revive(work);
  if (!history.ok) {
    warn(`“${work.title}” cannot be opened. ${sentence(history.problem)}`);
    return false;
  }
  const origin = work.demo ? 'demo' : 'work';
  const place = { ...work, printing: keptPrinting(work.printing) };
  if (await takeForThisTab(work.id)) {
    await show(work.id, history.value, origin, place);
    rememberCurrent(work.id);
    useKeeping.setState({ state: 'kept' });
  } else {
    await show(newKept(), history.value, origin, place);
    await keepNow();
    tell(
      `“${work.title}” is open in another tab. This is a copy of it: what you change here does not change it there.`,
    );
  }
  return true;
}

/** What the page begins with: the demo when the address asks for it, otherwise the work that was open last. */
export async function openAtStart(): Promise<void> {
  const address = new URL(window.location.href);
  if (address.searchParams.has('demo')) {
    await openDemo();
    // Reloading then goes on with what was done since, instead of opening the demo again.
    address.searchParams.delete('demo');
    window.history.replaceState(null, '', address);
    return;
  }
  const id = recallCurrent();
  const work = id === null ? undefined : await find(id);
  if (work === undefined || !(await openKept(work))) await openFresh();
}
