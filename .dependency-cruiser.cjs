// The layer rule: which folder of src may import which. An arrow that is not listed here is an error.
const { modules, core: units, tools, internal } = require('./folders.json')
const groupsOf = require('./.dependency-folders.cjs')

const core = [...internal, ...units]
const mayImport = {
  numeric: [],
  chart: [],
  drawing: [],
  units: ['numeric'],
  formula: ['numeric', 'units'],
  ...Object.fromEntries(modules.map((name) => [name, core])),
  study: core,
  catalogue: [...core, ...modules],
  leg: [...core, ...modules, 'study'],
  mathjs: core,
  cli: [...core, ...modules, ...tools],
}

const layers = Object.entries(mayImport).map(([folder, allowed]) => ({
  name: `layer-${folder}`,
  severity: 'error',
  comment: `src/${folder} may import ${allowed.length > 0 ? allowed.join(', ') : 'no other folder'}.`,
  from: { path: `^src/${folder}/` },
  to: { path: '^src/', pathNot: `^src/(${[folder, ...allowed].join('|')})/` },
}))

// Inside the leg: the engine knows no part, parts know neither assessment nor report. A folder below never imports one above.
const legFolders = ['run', 'cases', 'parts', 'assess']
const insideLeg = legFolders.slice(0, 3).map((name, i) => ({
  name: `leg-${name}`,
  severity: 'error',
  comment: `src/leg/${name} imports only what stands below it: ${legFolders.slice(0, i + 1).join(', ')}.`,
  from: { path: `^src/leg/${name}/` },
  to: { path: `^src/leg/(${legFolders.slice(i + 1).join('|')}|report|plans|learning)/` },
}))

// Inside the other large folders: groups of files, each above those before it.
const insideFolders = Object.entries(groupsOf).flatMap(([folder, groups]) => {
  const names = Object.keys(groups)
  const named = Object.values(groups).filter((files) => files !== undefined)
  const within = (files) => ({ path: `^src/${folder}/(${files})\\.ts$` })
  const group = (name) =>
    groups[name] === undefined
      ? { path: `^src/${folder}/[^/]+\\.ts$`, pathNot: `^src/${folder}/(index|${named.join('|')})\\.ts$` }
      : within(groups[name])
  return names.flatMap((below, i) =>
    names.slice(i + 1).map((above) => ({
      name: `${folder}-${below}-below-${above}`,
      severity: 'error',
      comment: `In src/${folder} the files of ${below} come before those of ${above}: ${names.join(' ← ')}.`,
      from: group(below),
      to: group(above),
    })),
  )
})

const onlyFrom = (what, packages, folders, why) => ({
  name: `${what}-only-in-${folders.join('-and-')}`,
  severity: 'error',
  comment: why,
  from: { path: '^src/', pathNot: `^src/(${folders.join('|')})/` },
  to: { path: packages },
})

module.exports = {
  forbidden: [
    ...layers,
    ...insideLeg,
    ...insideFolders,
    {
      name: 'through-the-index',
      severity: 'error',
      comment: 'What another folder offers is what its index.ts names; its other files are its own affair.',
      from: { path: '^src/([^/]+)/' },
      to: { path: '^src/[^/]+/', pathNot: ['^src/$1/', '^src/[^/]+/index\\.ts$'] },
    },
    {
      name: 'known-folder',
      severity: 'error',
      comment: 'A folder of src without a line in the layer rule.',
      from: {},
      to: { path: '^src/[^/]+/', pathNot: `^src/(${Object.keys(mayImport).join('|')})/` },
    },
    {
      name: 'no-circle',
      severity: 'error',
      comment: 'Two files that need each other at run time are one file, or need a third below both.',
      from: { path: '^src/' },
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'no-circle-of-types',
      severity: 'error',
      comment:
        'Types that need each other stand in one file, or in a third below both. The cells of a calculation and what tries them are one machine in five files.',
      from: { path: '^src/', pathNot: '^src/leg/run/' },
      to: { circular: true },
    },
    {
      name: 'source-stands-alone',
      severity: 'error',
      comment: 'The library imports nothing from its tests, benches, examples or scripts.',
      from: { path: '^src/' },
      to: { path: '^(tests|bench|examples|scripts|dist)/' },
    },
    {
      name: 'resolvable',
      severity: 'error',
      comment: 'An import that leads nowhere.',
      from: { path: '^src/' },
      to: { couldNotResolve: true },
    },
    {
      name: 'no-development-package',
      severity: 'error',
      comment: 'What the library imports at run time is a dependency, or bundled (tsup.config.ts).',
      from: { path: '^src/' },
      to: {
        pathNot: '(^|/)node_modules/(@noble/hashes|ml-matrix|pure-rand|yaml|zod)/',
        dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'],
        // A peer package is there for development and tests too.
        dependencyTypesNot: ['type-only', 'npm-peer'],
      },
    },
    onlyFrom(
      'mathjs',
      '(^|/)node_modules/mathjs/',
      ['mathjs'],
      'mathjs takes about a second to import; only limbwright/mathjs may cost that.',
    ),
    onlyFrom(
      'vega',
      '(^|/)node_modules/vega',
      ['leg', 'chart'],
      'Pictures are drawn by the report alone, where its optional packages are installed.',
    ),
    onlyFrom('documents', '(^|/)node_modules/(zod|yaml)/', ['leg', 'materials'], 'zod and yaml read documents; formulas do without.'),
    {
      name: 'node-only-in-study',
      severity: 'error',
      comment: 'The library runs in a browser too; only the worker pool of study and the command line may ask for Node.',
      from: { path: '^src/', pathNot: '^src/(study|cli)/' },
      to: { dependencyTypes: ['core'] },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    // Type imports are arrows too.
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'types', 'node', 'default'] },
  },
}
