import { CircleAlert, Info, X } from 'lucide-react';
import { dismiss, useNotices } from '../store/notices.ts';
import { Button, IconButton } from './button.tsx';
import { handOn } from './hand-on.ts';
import styles from './notice-bar.module.css';

const vanishes = handOn('#station');

/** The one notice, at the same place on every station, over what lies there. */
export function NoticeBar() {
  const notice = useNotices((notices) => notices.notice);
  const Icon = notice?.kind === 'problem' ? CircleAlert : Info;
  return (
    <div role={notice?.kind === 'word' ? 'status' : 'alert'} className={styles.place}>
      {notice !== null && (
        <div key={notice.id} className={`${styles.notice} ${styles[notice.kind]}`}>
          <Icon aria-hidden="true" size={18} />
          <p>{notice.text}</p>
          {notice.offer !== undefined && (
            <Button ref={vanishes} onClick={notice.offer.run}>
              {notice.offer.label}
            </Button>
          )}
          <IconButton ref={vanishes} label="Dismiss" icon={X} onClick={dismiss} />
        </div>
      )}
    </div>
  );
}

/** What screen readers are told of what the screen already shows. */
export function SpokenWords() {
  const said = useNotices((notices) => notices.said);
  // Two places in turn: the same words twice running are then two changes, and both are read out.
  return (
    <div className="heard">
      <p role="status">{said.id % 2 === 0 ? said.text : ''}</p>
      <p role="status">{said.id % 2 === 1 ? said.text : ''}</p>
    </div>
  );
}
