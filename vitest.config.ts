import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const source = (folder: string) => fileURLToPath(new URL(`./src/${folder}`, import.meta.url))

export default defineConfig({
  resolve: {
    // Tests and guide examples import the public subpaths; they run against the source.
    alias: [
      { find: /^limbwright$/, replacement: source('index.ts') },
      { find: /^limbwright\/([a-z]+)$/, replacement: source('$1/index.ts') },
    ],
  },
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/setup.ts'],
    exclude: ['tests/consumers/**', 'node_modules/**'],
    // Modules are loaded once for each worker instead of once for each file: a third of the time. No test changes what another file sees.
    isolate: false,
    // By default one core is left idle, which on a machine with two is half of it.
    maxWorkers: '100%',
    unstubGlobals: true,
    restoreMocks: true,
    // A busy machine is no failure: speed is measured in bench/, and a hang ends here.
    testTimeout: 240_000,
    hookTimeout: 240_000,
    reporters: ['default'],
  },
})
