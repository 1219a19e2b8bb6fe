import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  // The built command, and a browser that prints, take their time on a busy machine.
  // Nothing under test keeps state between calls, so files share what they have loaded: half the time.
  // Two at a time, also where there are only two cores: a test that waits for the browser leaves its core to another.
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/learn-languages.ts'],
    isolate: false,
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
})
