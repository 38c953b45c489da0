import type { FoundationJob, PatchFabric } from '@seamwright/pages';
import { fabricIn } from '@seamwright/pattern';
import { fabricsOf } from '../store/fabrics.ts';
import { useSettings } from '../store/settings.ts';
import { currentBlock, currentColourway, currentPrinting, pattern, type Work } from '../store/work.ts';
import { sheetWanted } from './sheet-wanted.ts';
import type { Study } from './study.ts';

/** What the maker asks for, as it is to be laid out; null while there is nothing to lay out. */
export function foundationJob(work: Work): FoundationJob | null {
  const { study } = work;
  // The quick plan is not worth its paper: a better one follows at once.
  if (study === null || study.stale || !study.refined) return null;
  if (study.arrangement === null || study.plan === null) return null;
  const settings = useSettings.getState();
  const { allowance, shareTemplates, overlap, gap, keepUpright, ink, seamLengths, fabricsOnPaper } = settings;
  const { title, unit } = pattern(work);
  return {
    title: currentBlock(work).name,
    pattern: title,
    arrangement: study.arrangement,
    plan: study.plan,
    sizes: currentPrinting(work).sizes,
    unit,
    ...{ allowance, shareTemplates, overlap, gap, keepUpright, ink, seamLengths },
    ...sheetWanted(),
    ...(fabricsOnPaper && { fabrics: fabricsOfPatches(work, study) }),
  };
}

/** From what each patch is cut in the colourway that is in hand, by the arrangement's patches. */
function fabricsOfPatches(work: Work, { records }: Study): readonly (PatchFabric | undefined)[] {
  const colourway = currentColourway(work);
  const fabrics = fabricsOf(work);
  const chosen = new Map(currentBlock(work).patches.map((patch) => [patch.id, fabricIn(patch, colourway)]));
  return records.map(({ id }) => {
    const at = fabrics.findIndex((fabric) => fabric.id === chosen.get(id));
    const fabric = fabrics[at];
    if (fabric === undefined) return undefined;
    return {
      letter: fabricLetter(at),
      name: fabric.name,
      ...(fabric.grain === 'one way' && { upright: true }),
    };
  });
}

/** `a` … `z`, `aa`, `ab` …: small, as sections have capitals. */
const fabricLetter = (index: number): string =>
  (index < 26 ? '' : fabricLetter(Math.floor(index / 26) - 1)) + String.fromCharCode(97 + (index % 26));

/** Whether the sheets of one are those of the other. Lists and objects are made anew each time that a job is asked for. */
export function sameJob(a: FoundationJob, b: FoundationJob): boolean {
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]) as Set<keyof FoundationJob>;
  return [...keys].every((key) => a[key] === b[key] || (!LARGE.includes(key) && sameValue(a[key], b[key])));
}

/** Never made anew for the same drawing: what is another object is another one. */
const LARGE: readonly (keyof FoundationJob)[] = ['arrangement', 'plan'];

const sameValue = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
