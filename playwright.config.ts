import { defineConfig } from '@playwright/test';

// Real windows of the built program: `e2e` as developers start it, `package` as people will get it.
export default defineConfig({
  outputDir: 'test-results',
  fullyParallel: true,
  // One more than cores: a window waits half of its time.
  workers: 3,
  forbidOnly: process.env['CI'] !== undefined,
  // A flaky test is fixed, not repeated.
  retries: 0,
  timeout: 120_000,
  expect: { timeout: 15_000 },
  reporter: [['list']],
  use: { trace: 'off' },
  projects: [
    { name: 'e2e', testDir: 'test/e2e' },
    { name: 'package', testDir: 'test/package' },
  ],
});
