import '#renderer/app/zod-settings';
import './ui/fonts.css';
import './ui/tokens.css';
import './ui/base.css';
import { createRoot } from 'react-dom/client';
import { App } from '#renderer/app/app';

const host = document.getElementById('root');
if (host !== null) createRoot(host).render(<App />);
