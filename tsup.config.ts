import { defineConfig } from 'tsup'

const subpaths = ['units', 'formula', 'capstan', 'kinematics', 'materials', 'fasteners', 'thermal', 'catalogue', 'study', 'leg', 'mathjs']

export default defineConfig({
  entry: { index: 'src/index.ts', ...Object.fromEntries(subpaths.map((name) => [name, `src/${name}/index.ts`])) },
  format: ['esm', 'cjs'],
  target: 'es2022',
  // Shared chunks, in CommonJS too: `instanceof InputError` must hold whichever subpath the error came through.
  splitting: true,
  // From its ES source: as a package of its own, parsing its CommonJS file made up most of the time that importing kinematics took.
  noExternal: ['ml-matrix'],
  esbuildOptions(options) {
    options.alias = { 'ml-matrix': './node_modules/ml-matrix/src/index.js' }
  },
  // Declarations are written by scripts/finish-build.ts.
  dts: false,
  clean: true,
})
