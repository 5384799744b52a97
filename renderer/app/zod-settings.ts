import { z } from 'zod';

// Zod would try to compile its checks with `new Function`, which the content policy rightly refuses. It decides when the first
// schema is made, so this module must be the first that the page loads.
z.config({ jitless: true });
