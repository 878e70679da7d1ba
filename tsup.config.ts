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

/** Text with parts of it replaced, from the last one to the first. No line is added or taken away, so that source maps hold. */
type Edit = readonly [start: number, end: number, text: string]

/** A record whose last field is its kernel becomes a function of the kernel, and the kernel follows it. */
function recordOfKernel(record: ts.ObjectLiteralExpression, file: ts.SourceFile): Edit[] | undefined {
  const last = record.properties.at(-1)
  if (last === undefined || !ts.isPropertyAssignment(last) || last.name.getText(file) !== 'si') return undefined
  const start = record.getStart(file)
  return [
    [start, start, 'function (si) { return ('],
    [last.getStart(file), last.initializer.getStart(file), 'si }) }, '],
    [record.end - 1, record.end, ''],
  ]
}

const usesThis = (node: ts.Node): boolean =>
  node.kind === ts.SyntaxKind.ThisKeyword || (ts.forEachChild(node, (child) => usesThis(child) || undefined) ?? false)

/** An arrow function of a module's own level becomes a function expression: engines only look for the end of these, until the first call. */
function asExpression(arrow: ts.ArrowFunction, file: ts.SourceFile): Edit[] {
  const { parameters, typeParameters, body, equalsGreaterThanToken: sign } = arrow
  const open = (typeParameters ?? parameters).pos - 1
  if (open < arrow.getStart(file) || usesThis(arrow)) return []
  const head: Edit = [open, open, 'function ']
  if (ts.isBlock(body)) return [head, [sign.getStart(file), sign.end, '']]
  return [head, [sign.getStart(file), sign.end, '{ return ('], [body.end, body.end, ') }']]
}

/**
 * Formulas make their records when they are first asked for them: engines read what a function holds at its first call, and importing a module took twice
 * as long. Inputs that hold others (`...WRAP`) become the result of a pure call. Bundlers take a spread for an effect, and would keep every one, used or not.
 */
const lazyRecords: NonNullable<Options['esbuildPlugins']>[number] = {
  name: 'lazy-records',
  setup(build) {
    build.onLoad({ filter: /[\\/]src[\\/].*\.ts$|[\\/]node_modules[\\/].*\.js$/ }, ({ path }) => {
      const text = readFileSync(path, 'utf8')
      const file = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true)
      const edits: Edit[] = []
      // The smallest bundle of a user holds most of units and formula, and an arrow function is shorter.
      const rarelyRun = !/[\\/]src[\\/](units|formula)[\\/]/.test(path)
      const pure = (node: ts.Node) => {
        if (node.getText(file).includes('...'))
          edits.push([node.getStart(file), node.getStart(file), '/* @__PURE__ */ (() => ('], [node.end, node.end, '))()'])
      }
      const visit = (node: ts.Node): void => {
        const record = ts.isCallExpression(node) && node.expression.getText(file) === 'formula' ? node.arguments[1] : undefined
        if (record !== undefined && ts.isObjectLiteralExpression(record)) {
          const lazy = recordOfKernel(record, file)
          if (lazy === undefined) pure(record)
          else edits.push(...lazy)
          if (lazy !== undefined) visit((record.properties.at(-1) as ts.PropertyAssignment).initializer)
        } else if (ts.isVariableDeclaration(node) && node.parent.parent.parent === file && sharedInputs(node.initializer))
          pure(node.initializer!)
        else if (ts.isArrowFunction(node)) edits.push(...(rarelyRun ? asExpression(node, file) : []))
        else if (!ts.isFunctionLike(node) && !ts.isClassLike(node)) ts.forEachChild(node, visit)
      }
      visit(file)
      if (edits.length === 0) return undefined
      const contents = edits
        .sort((a, b) => a[0] - b[0] || a[1] - b[1])
        .reduceRight((all, [start, end, replacement]) => all.slice(0, start) + replacement + all.slice(end), text)
      return { contents, loader: path.endsWith('.ts') ? 'ts' : 'js' }
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
  // Gathers the imports of each file, of which every file of the source brings its own.
  treeshake: true,
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
  esbuildPlugins: [folderByFolder, lazyRecords, dataAsText],
  clean: true,
})

/** The command line, which imports the folders of the library as a user does. */
const program = defineConfig({
  entry: { limbwright: 'src/cli/limbwright.ts' },
  ...common,
  esbuildPlugins: [folderByFolder],
})

export default [library, program]
