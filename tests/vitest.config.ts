import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  // The built command, and a browser that prints, take their time on a busy machine.
  test: { include: ['tests/**/*.test.ts'], testTimeout: 60_000, hookTimeout: 120_000 },
})
