import '@testing-library/jest-dom/vitest';
import { cleanup } from '@testing-library/react';
import { afterEach } from 'vitest';

// Testing Library unmounts by itself only where test globals are on; here they are off.
afterEach(cleanup);
