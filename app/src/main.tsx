import './ui/base.css';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { startAutosave } from './keeping/autosave.ts';
import { acceptDrops } from './keeping/choose-file.ts';
import { openAtStart, openFresh } from './keeping/open.ts';
import { acceptPastes } from './keeping/paste.ts';
import { prepareShelf } from './keeping/shelf.ts';
import { warn } from './store/notices.ts';
import { startStudying } from './study/client.ts';
import { listenForShortcuts } from './ui/shortcuts.ts';

async function start(): Promise<void> {
  try {
    await openAtStart();
  } catch {
    // Storage switched off or broken: the program works all the same, and says what it cannot do.
    warn('This browser does not let Seamwright keep your work. Save a pattern file before you leave.');
    await openFresh();
  }
  startAutosave();
  startStudying();
  listenForShortcuts();
  acceptDrops();
  acceptPastes();
  // Canvases do not wait for fonts: what they wrote before would keep a stand-in's shapes. Where there are none, it does.
  const fonts = document.fonts.load('600 16px "Source Sans 3"').catch(() => undefined);
  await Promise.all([fonts, prepareShelf()]);
  createRoot(document.getElementById('root')!).render(<App />);
  // Nothing that is seen at first needs it.
  const { startLayingOut } = await import('./study/lay-out.ts');
  startLayingOut();
}

void start();
