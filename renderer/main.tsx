import { createRoot } from 'react-dom/client';

const host = document.getElementById('root');
if (host !== null) createRoot(host).render(<h1>Ringbound</h1>);
