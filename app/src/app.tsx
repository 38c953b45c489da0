import { Suspense, useEffect, useState } from 'react';
import { BlockPicker } from './shell/block-picker.tsx';
import frame from './shell/frame.module.css';
import { useGlobalKeys } from './shell/global-keys.ts';
import { Header } from './shell/header.tsx';
import { HelpDialog } from './shell/help-dialog.tsx';
import { Shelf } from './shell/shelf.tsx';
import { VerdictBar } from './shell/verdict-bar.tsx';
import { STATIONS } from './stations/stations.ts';
import { announce } from './store/notices.ts';
import { useWork } from './store/work.ts';
import { NoticeBar, SpokenWords } from './ui/notice-bar.tsx';

export function App() {
  const [help, setHelp] = useState(false);
  useGlobalKeys(() => setHelp(true));
  return (
    <div className={frame.frame}>
      <a className={frame.skip} href="#station">
        Go to the work
      </a>
      <Header onHelp={() => setHelp(true)} />
      <section className={frame.bar} aria-label="Block">
        <BlockPicker />
        <VerdictBar />
      </section>
      <NoticeBar />
      <OpenStation />
      <SpokenWords />
      <Shelf />
      <HelpDialog open={help} onClose={() => setHelp(false)} />
    </div>
  );
}

function OpenStation() {
  const id = useWork((work) => work.station);
  const title = useWork((work) => work.history.present.title);
  const { name, Screen } = STATIONS.find((station) => station.id === id)!;
  useEffect(() => {
    document.title = `${title} – ${name} – Seamwright`;
  }, [title, name]);
  useEffect(() => announce(`${name} station`), [name]);
  return (
    <main id="station" tabIndex={-1} className={frame.main} aria-label={name}>
      <Suspense fallback={null}>
        <Screen />
      </Suspense>
    </main>
  );
}
