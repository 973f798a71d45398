import { sveltekit } from '@sveltejs/kit/vite'
import { svelteTesting } from '@testing-library/svelte/vite'
import { defineConfig } from 'vitest/config'
import { shippedSyllabi } from './src/cli/syllabus-plugin.ts'

/**
 * The libraries of every page, and small modules that import nothing, as one file: each further one costs a slow line a part of a round
 * trip. Modules that import others stay outside: a group takes all that they import with it.
 */
const FRAME = new RegExp(
  [
    String.raw`/node_modules/(?:svelte|@sveltejs|esm-env|clsx|valibot|idb-keyval)/`,
    String.raw`/src/lib/components/(?:demo-changed|download|draft-keeper|message-of|new-id|one-window|writing-clock)\.ts$`,
    String.raw`/src/lib/recall/(?:by-time|day|demo|outcomes|papers|settings)\.ts$`,
    String.raw`/src/lib/view/(?:addresses|taken|words|writing)\.ts$`,
  ].join('|'),
)

export default defineConfig({
  plugins: [shippedSyllabi(), sveltekit()],
  build: {
    rolldownOptions: {
      // Who takes one thing from a room's index gets that one: no YAML parser on the pages that only read an idea.
      treeshake: {
        moduleSideEffects: (id) => !/\/src\/lib\/[a-z]+\/(?:[a-z0-9-]+\/)*[a-z-]+\.ts$/.test(id),
      },
      output: {
        codeSplitting: {
          groups: [{ name: 'frame', test: FRAME }],
        },
      },
    },
  },
  // The default format inlines dynamic imports into the worker.
  worker: { format: 'es' },
  server: { host: '127.0.0.1' },
  preview: { host: '127.0.0.1' },
  test: {
    // Property tests of large inputs on a busy machine; no test asserts a time.
    testTimeout: 60_000,
    // One processor is left idle otherwise: of two, that is half of them.
    maxWorkers: '100%',
    projects: [
      {
        extends: './vite.config.ts',
        test: {
          name: 'unit',
          environment: 'node',
          // The rooms keep nothing of their own, and the store believes the database alone: loaded once for all files,
          // they take a third less time. What a test put in the place of something is taken back after it.
          isolate: false,
          restoreMocks: true,
          unstubGlobals: true,
          include: ['tests/unit/**/*.test.ts', 'tests/outside/**/*.test.ts'],
        },
      },
      {
        extends: './vite.config.ts',
        plugins: [svelteTesting()],
        test: {
          name: 'component',
          environment: 'jsdom',
          // One window for all files: each page that was shown is taken out of it, and what it kept is erased.
          isolate: false,
          include: ['tests/component/**/*.test.ts'],
          // The last net, not a cure: a test that passes only the second time is told as retried, and is put right.
          retry: 1,
          setupFiles: ['tests/component/setup.ts'],
        },
      },
    ],
  },
})
