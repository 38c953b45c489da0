import type { OutlineEntry, PagePlan } from '@seamwright/pages';

/**
 * The sheets of several blocks as one document, one block after the other. Each block keeps the numbering of its own
 * pages, so that it can be printed alone; the document's outline has an entry for each block.
 *
 * @param plans one or more, all on the same paper
 */
export function bindPlans(title: string, plans: readonly PagePlan[]): PagePlan {
  const [first] = plans;
  if (first === undefined) throw new RangeError('There is no plan to bind');
  if (plans.length === 1) return first;
  let before = 0;
  const outline: OutlineEntry[] = [];
  for (const plan of plans) {
    outline.push({ title: plan.title, sheet: before, children: moved(plan.outline, before) });
    before += plan.sheets.length;
  }
  return {
    title: title || first.title,
    paper: first.paper,
    sheets: plans.flatMap(({ sheets }) => sheets),
    outline,
  };
}

const moved = (entries: readonly OutlineEntry[], by: number): OutlineEntry[] =>
  entries.map(({ title, sheet, children }) => ({ title, sheet: sheet + by, children: moved(children, by) }));
