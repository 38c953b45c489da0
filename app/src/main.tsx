import './ui/base.css';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { startStudying } from './study/client.ts';
import { listenForShortcuts } from './ui/shortcuts.ts';

startStudying();
listenForShortcuts();
createRoot(document.getElementById('root')!).render(<App />);
