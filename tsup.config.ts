import { defineConfig } from 'tsup'

const subpaths = ['units', 'formula', 'capstan', 'kinematics', 'materials', 'fasteners', 'thermal', 'catalogue', 'study', 'leg', 'mathjs']

export default defineConfig({
  entry: { index: 'src/index.ts', ...Object.fromEntries(subpaths.map((name) => [name, `src/${name}/index.ts`])) },
  format: ['esm', 'cjs'],
  target: 'es2022',
  // Shared chunks, in CommonJS too: `instanceof InputError` must hold whichever subpath the error came through.
  splitting: true,
  // Declarations are written by scripts/declarations.ts.
  dts: false,
  clean: true,
})
