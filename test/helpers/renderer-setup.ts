import '@testing-library/jest-dom/vitest';
import { cleanup } from '@testing-library/react';
import { afterEach } from 'vitest';
// Declares `window.ringbound` for every test of the page.
import type {} from '#renderer/bridge/call';

// Testing Library unmounts by itself only where test globals are on; here they are off.
afterEach(cleanup);
// What one test leaves in a form is no business of the next.
afterEach(() => window.localStorage.clear());
