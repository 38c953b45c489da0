import type { Segment } from '@seamwright/geometry';
import type { Study } from '../../study/study.ts';
import buttonStyles from '../../ui/button.module.css';
import { Popover } from '../../ui/popover.tsx';
import { rove } from '../../ui/roving.ts';
import { usePointing } from '../../ui/use-pointing.ts';
import styles from './in-hand.module.css';
import { patchLabel } from './patch-label.ts';

/** A patch that can be chosen. */
export interface Candidate {
  readonly patch: number;
  /** What is said of it beside its name. */
  readonly words: string;
  /** Shown on the canvas with it. */
  readonly seams?: readonly Segment[];
}

interface PatchMenuProps {
  readonly button: string;
  /** What is chosen here, as far as the patch's name: `Sew A3 before`. */
  readonly label: string;
  /** Why there is nothing to choose. */
  readonly none: string;
  readonly study: Study;
  readonly candidates: readonly Candidate[];
  readonly onChoose: (patch: number) => void;
}

/** More would be no list to choose from; two patches in hand do the same. */
const MOST_LISTED = 200;

/** A button that opens a list of patches; each shows on the canvas where it is. */
export function PatchMenu({ button, label, none, study, candidates, onChoose }: PatchMenuProps) {
  return (
    <Popover button={button} label={label} buttonClass={`${buttonStyles.button} ${styles.pin}`}>
      {(close) => (
        <div className={styles.menu}>
          <p className={styles.question}>{candidates.length === 0 ? none : `${label}:`}</p>
          <ul aria-label={label} onKeyDown={rove}>
            {candidates.slice(0, MOST_LISTED).map((candidate, index) => (
              <CandidateLine
                key={candidate.patch}
                study={study}
                candidate={candidate}
                first={index === 0}
                choose={() => {
                  close();
                  onChoose(candidate.patch);
                }}
              />
            ))}
          </ul>
          {candidates.length > MOST_LISTED && (
            <p className={styles.question}>
              For others, take both patches in hand: press one, then the other with Shift.
            </p>
          )}
        </div>
      )}
    </Popover>
  );
}

interface CandidateLineProps {
  readonly study: Study;
  readonly candidate: Candidate;
  readonly first: boolean;
  readonly choose: () => void;
}

function CandidateLine({ study, candidate, first, choose }: CandidateLineProps) {
  const { patch, words, seams = [] } = candidate;
  const pointing = usePointing({ of: study.drawing, patches: [patch], seams });
  return (
    <li>
      <button
        type="button"
        data-stop
        data-first={first ? '' : undefined}
        tabIndex={first ? 0 : -1}
        className={styles.candidate}
        onClick={choose}
        {...pointing}
      >
        <span>{patchLabel(study, patch)}</span>
        <span className={styles.words}>{words}</span>
      </button>
    </li>
  );
}
