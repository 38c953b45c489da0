import { cleanName, type OutlineEntry, type PagePlan, type Print } from '@seamwright/pages';

/**
 * The sheets of several blocks as one document, one block after the other. Each block keeps the numbering of its own
 * pages, so that it can be printed alone; the document's outline has an entry for each block.
 *
 * @param title of the document; one without a letter gives way to the first block's name
 * @param plans one or more, all on the same paper
 */
export function bindPlans(title: string, plans: readonly PagePlan[]): PagePlan {
  const [first] = plans;
  if (first === undefined) throw new RangeError('There is no plan to bind');
  if (plans.length === 1) return first;
  let before = 0;
  const outline: OutlineEntry[] = [];
  const prints: Print[] = [];
  for (const plan of plans) {
    const offset = before;
    outline.push({ title: plan.title, sheet: offset, children: moved(plan.outline, offset) });
    for (const print of plan.prints)
      prints.push({ ...print, sheets: print.sheets.map((sheet) => sheet + offset) });
    before += plan.sheets.length;
  }
  return {
    title: cleanName(title) || first.title,
    paper: first.paper,
    sheets: plans.flatMap(({ sheets }) => sheets),
    outline,
    prints,
  };
}

const moved = (entries: readonly OutlineEntry[], by: number): OutlineEntry[] =>
  entries.map(({ title, sheet, children }) => ({ title, sheet: sheet + by, children: moved(children, by) }));
