import './ui/base/fonts.css';
import './ui/base/tokens.css';
import './ui/base/base.css';
import { z } from 'zod';

// Zod would try to compile its checks with `new Function`, which the content policy rightly refuses. It decides when the first
// schema is made, so everything that makes one is loaded after this.
z.config({ jitless: true });

const [{ createRoot }, { App }] = await Promise.all([
  import('react-dom/client'),
  import('#renderer/app/app'),
]);
const host = document.getElementById('root');
if (host !== null) createRoot(host).render(<App />);
