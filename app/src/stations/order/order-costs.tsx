import type { Section } from '@seamwright/sewing';
import { counted } from '../../ui/plural.ts';
import styles from './order-station.module.css';

/** What the section's order costs, for those who open it. */
export function OrderCostsWords({ section }: { readonly section: Section }) {
  const { costs, optimal } = section;
  if (costs === undefined || section.order.length < 3) return null;
  return (
    <details className={styles.costs}>
      <summary>{optimal === true ? 'The best of all orders' : 'What this order costs'}</summary>
      <ul>
        {costWords(costs).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      {optimal === false && <p>A better order may exist: not all of them were compared.</p>}
    </details>
  );
}

function costWords({ uncleanFolds, jumps, showThrough }: NonNullable<Section['costs']>): string[] {
  return [
    uncleanFolds === 0
      ? 'Every seam folds along its whole length.'
      : `${counted(uncleanFolds, 'seam')} cannot be folded without crossing patches already sewn.`,
    jumps === 0
      ? 'The work never jumps across the section.'
      : `The work jumps across the section ${jumps === 1 ? 'once' : `${jumps} times`}.`,
    ...(showThrough === 0
      ? []
      : [`${counted(showThrough, 'patch lies', 'patches lie')} over a darker allowance.`]),
  ];
}
