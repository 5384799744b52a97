import './ui/fonts.css';
import './ui/tokens.css';
import './ui/base.css';
import { createRoot } from 'react-dom/client';
import { z } from 'zod';
import { App } from '#renderer/app/app';

// Zod would try to compile its checks with `new Function`, which the content policy rightly refuses.
z.config({ jitless: true });

const host = document.getElementById('root');
if (host !== null) createRoot(host).render(<App />);
