import { Suspense } from 'react';
import { STATIONS } from './stations/stations.ts';
import { useWork } from './store/work.ts';
import { NoticeBar, SpokenWords } from './ui/notice-bar.tsx';

export function App() {
  const id = useWork((work) => work.station);
  const { Screen } = STATIONS.find((station) => station.id === id)!;
  return (
    <>
      <NoticeBar />
      <main style={{ height: '100%' }}>
        <Suspense fallback={null}>
          <Screen />
        </Suspense>
      </main>
      <SpokenWords />
    </>
  );
}
