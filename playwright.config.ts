import { defineConfig } from '@playwright/test'

// Both come from src/cli/browser-tests.js; set them by hand to run playwright against an app that is already served.
const { SECOND_INK_BROWSER, SECOND_INK_URL } = process.env

export default defineConfig({
  testDir: 'tests/browser',
  outputDir: 'test-results',
  fullyParallel: true,
  forbidOnly: true,
  workers: 2,
  // The last net, not a cure: a test that passes only the second time is told as flaky at the end, and is put right.
  retries: 1,
  reporter: 'list',
  // No test asserts a time: these only end what hangs, on a slow machine as well.
  timeout: 120_000,
  expect: { timeout: 20_000 },
  use: {
    baseURL: SECOND_INK_URL,
    browserName: 'chromium',
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    trace: 'off',
    // Every test is a first visit; only offline.spec.ts asks for what stays behind.
    serviceWorkers: 'block',
    actionTimeout: 30_000,
    launchOptions: {
      executablePath: SECOND_INK_BROWSER,
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
})
