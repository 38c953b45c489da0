import { asCloth } from '@seamwright/cloth';
import { type FoundationJob, patchFabrics } from '@seamwright/pages';
import { fabricIn } from '@seamwright/pattern';
import { useCuttingHabits } from '../store/cutting-habits.ts';
import { fabricsOf } from '../store/fabrics.ts';
import { chosenPrinter, usePrinters } from '../store/printers.ts';
import { useSettings } from '../store/settings.ts';
import { currentBlock, currentColourway, currentPrinting, pattern, type Work } from '../store/work.ts';
import type { Study } from './study.ts';

/** What the maker asks for, as it is to be laid out; null while there is nothing to lay out. */
export function foundationJob(work: Work): FoundationJob | null {
  const { study } = work;
  // The quick plan is not worth its paper: a better one follows at once.
  if (study === null || study.stale || !study.refined) return null;
  if (study.arrangement === null || study.plan === null) return null;
  const settings = useSettings.getState();
  const { allowance, shareTemplates, overlap, gap, keepUpright, fillSheets, ink, seamLengths } = settings;
  const { title, unit } = pattern(work);
  return {
    title: currentBlock(work).name,
    pattern: title,
    arrangement: study.arrangement,
    plan: study.plan,
    sizes: currentPrinting(work).sizes,
    unit,
    ...{ allowance, shareTemplates, overlap, gap, keepUpright, fillSheets, ink, seamLengths },
    effort: settings.saveSheets ? 'thorough' : 'quick',
    ...sheetWanted(),
    ...(settings.fabricsOnPaper && { fabrics: patchFabrics(fabricsOf(work), fabricIds(work, study)) }),
    ...(settings.cutSizesOnPaper && { cutting: cuttingOf(work, study) }),
  };
}

/** The sheet that is printed on, as it was chosen at Paper. */
export function sheetWanted(): Pick<FoundationJob, 'paper' | 'margins' | 'printer'> {
  const { paper, margins } = useSettings.getState();
  const printer = chosenPrinter(usePrinters.getState());
  if (printer === null) return { paper, margins };
  const { name, across, down } = printer;
  return { paper, margins: printer.margins, printer: { name, across, down } };
}

/** By the arrangement's patches, the id of what each is cut from in the colourway that is in hand. */
function fabricIds(work: Work, { records }: Study): readonly (string | undefined)[] {
  const colourway = currentColourway(work);
  const chosen = new Map(currentBlock(work).patches.map((patch) => [patch.id, fabricIn(patch, colourway)]));
  return records.map(({ id }) => chosen.get(id));
}

/** How pieces are cut at the Cloth station. */
function cuttingOf(work: Work, study: Study): NonNullable<FoundationJob['cutting']> {
  const { spare, turn, roundUpTo, usableWidth } = useCuttingHabits.getState();
  const cloths = new Map(fabricsOf(work).map((fabric) => [fabric.id, asCloth(fabric, usableWidth)]));
  return {
    rules: { spare, turn, roundUpTo: roundUpTo[pattern(work).unit] },
    cloths: fabricIds(work, study).map((id) => cloths.get(id ?? '') ?? null),
  };
}

/** Whether the sheets of one are those of the other. Lists and objects are made anew each time that a job is asked for. */
export function sameJob(a: FoundationJob, b: FoundationJob): boolean {
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]) as Set<keyof FoundationJob>;
  return [...keys].every((key) => a[key] === b[key] || (!LARGE.includes(key) && sameValue(a[key], b[key])));
}

/** Never made anew for the same drawing: what is another object is another one. */
const LARGE: readonly (keyof FoundationJob)[] = ['arrangement', 'plan'];

const sameValue = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
