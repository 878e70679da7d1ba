import { readFileSync } from 'node:fs'
import { dirname, relative, resolve } from 'node:path'
import { defineConfig, type Options } from 'tsup'
import ts from 'typescript'
import folders from './folders.json' with { type: 'json' }

/**
 * One file for each folder of the source, importing its neighbours as the folders do. Chunks of the bundler's own would tie every formula
 * into the namespaces that index and catalogue make of the modules, and nothing could be left out of a user's bundle.
 */
const folderByFolder: NonNullable<Options['esbuildPlugins']>[number] = {
  name: 'folder-by-folder',
  setup(build) {
    build.onResolve({ filter: /^\.{1,2}\/.*\bindex\.js$/ }, ({ path, importer, resolveDir }) => {
      const folder = dirname(relative('src', resolve(resolveDir, path)))
      const own = dirname(relative('src', importer)).split('/')[0]
      return folder === own || folder.includes('/') ? undefined : { path: `./${folder}.js`, external: true }
    })
    build.onResolve({ filter: /^ml-matrix$/ }, () => ({ path: './ml-matrix.js', external: true }))
  },
}

/** Inputs that hold others: `{ ...WRAP, … } as const`. */
const sharedInputs = (value: ts.Expression | undefined) =>
  value !== undefined && ts.isAsExpression(value) && ts.isObjectLiteralExpression(value.expression)

/**
 * A record with shared inputs (`...WRAP`), and such inputs themselves, become the result of a pure call. Bundlers take a spread for an effect, and would keep every formula that
 * has one, used or not.
 */
const pureRecords: NonNullable<Options['esbuildPlugins']>[number] = {
  name: 'pure-records',
  setup(build) {
    build.onLoad({ filter: /[\\/]src[\\/].*\.ts$/ }, ({ path }) => {
      const text = readFileSync(path, 'utf8')
      if (!text.includes('...')) return undefined
      const file = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true)
      const records: ts.Node[] = []
      const visit = (node: ts.Node): void => {
        const record = ts.isCallExpression(node) && node.expression.getText(file) === 'formula' ? node.arguments[1] : undefined
        if (record !== undefined && ts.isObjectLiteralExpression(record)) records.push(record)
        else if (ts.isVariableDeclaration(node) && node.parent.parent.parent === file && sharedInputs(node.initializer))
          records.push(node.initializer!)
        else ts.forEachChild(node, visit)
      }
      visit(file)
      const contents = records.reduceRight((all, record) => {
        const [start, end] = [record.getStart(file), record.getEnd()]
        const inner = all.slice(start, end)
        return inner.includes('...') ? `${all.slice(0, start)}/* @__PURE__ */ (() => (${inner}))()${all.slice(end)}` : all
      }, text)
      return { contents, loader: 'ts' }
    })
  },
}

/** Large data become text that is parsed: engines read it several times faster than an object in the code. */
const dataAsText: NonNullable<Options['esbuildPlugins']>[number] = {
  name: 'data-as-text',
  setup(build) {
    build.onLoad({ filter: /[\\/]src[\\/].*\.json$/ }, ({ path }) => {
      const text = JSON.stringify(JSON.parse(readFileSync(path, 'utf8')))
      return { contents: `export default /* @__PURE__ */ JSON.parse(${JSON.stringify(text)})`, loader: 'js' }
    })
  },
}

const common = {
  // ES modules alone: scripts/finish-build.ts writes the files for require, which load them, so that a process never holds two copies.
  format: ['esm'],
  target: 'es2022',
  splitting: false,
  sourcemap: true,
  // scripts/finish-build.ts minifies, and writes the declarations.
  dts: false,
} satisfies Options

const { programs: _, ...libraries } = folders

const library = defineConfig({
  entry: {
    index: 'src/index.ts',
    ...Object.fromEntries(Object.values(libraries).flatMap((names) => names.map((name) => [name, `src/${name}/index.ts`]))),
    // Bundled from its ES source: as a package of its own, loading its CommonJS file made up most of the time that importing kinematics
    // took. In a file of its own, since what it does when loaded would keep a whole module in a user's bundle.
    'ml-matrix': 'node_modules/ml-matrix/src/index.js',
  },
  ...common,
  // Tree-shaken into the folders that read documents: loaded as packages they make up two thirds of the time that importing leg takes.
  noExternal: ['zod', 'yaml', '@noble/hashes', 'pure-rand'],
  esbuildOptions(options) {
    options.alias = { yaml: './node_modules/yaml/browser/index.js' }
  },
  esbuildPlugins: [folderByFolder, pureRecords, dataAsText],
  clean: true,
})

/** The command line, which imports the folders of the library as a user does. */
const program = defineConfig({
  entry: { limbwright: 'src/cli/limbwright.ts' },
  ...common,
  esbuildPlugins: [folderByFolder],
})

export default [library, program]
