// The folders whose mutants are run, with the tests that belong to each. Data tables need no exception: what is calculated once, while a file is
// loaded, is not mutated (see `ignoreStatic` in run.ts).

export interface Folder {
  /** Its name on the command line and in the table: the path below `src`, with a hyphen between folders. */
  readonly name: string
  readonly source: string
  /** Test files, as globs. Only these run. */
  readonly tests: readonly string[]
  /** Slower ones, against which only those are run that the first do not notice. */
  readonly further?: readonly string[]
  /** Beginnings of the names of the published checks that run with them, with commas. */
  readonly published?: string
  /** Whether only the files of the folder itself are meant: its folders have rows of their own. */
  readonly flat?: true
}

/** A module of formulas: its own tests and its published checks. */
const moduleOf = (name: string): Folder => ({
  name,
  source: `src/${name}`,
  tests: [`tests/${name}/**/*.test.ts`, 'tests/published/published.test.ts'],
  published: name,
})

/** A folder that has no published checks. */
const plain = (name: string, ...more: string[]): Folder => ({ name, source: `src/${name}`, tests: [`tests/${name}/**/*.test.ts`, ...more] })

/** Tests of the leg that compare with outside values and take a second or two. */
const QUICK_LEG =
  'conservation,direct-layout,drive,belt-layout,gear-layout,hand,rod-bearings,rod-bearings-hand,rod-layout,sheets,through-layout,parts'

/** Those that compare legs with each other. The long ones (all load cases, drawings, plans, learning) are left to the ordinary run. */
const FURTHER_LEG =
  'changes,load-cases,sideways-push,sideways-layout,springs,missing-values,combined-loads,cold-seats-screws,worse-never-better,control-limits,duty,motion'

/** Tests of what the files beside the leg's folders do: the leg as a formula, its options, states of a material, words of the workshop, landings of a robot. */
const BESIDE =
  'material-state,specification,as-formula,options,workshop-words,robot-figures,heat-without-balance,printed-by-hand,passing-range'

/** What verdicts say: range, evidence, words, errors. */
const VERDICT = 'verdict-parts,evidence,display,sentences,options,words-of-cases'

const leg = (name: string, further = FURTHER_LEG, quick = QUICK_LEG): Folder => ({
  name: `leg-${name}`,
  source: `src/leg/${name}`,
  tests: ['tests/leg/run/*.test.ts', `tests/leg/{${quick}}.test.ts`],
  further: [`tests/leg/{${further}}.test.ts`],
})

/** Tests of the leg by the names of their files. */
const legTests = (files: string): readonly string[] => files.split(',').map((file) => `tests/leg/${file}.test.ts`)

/** What surrounds the calculation of a leg: each folder with the tests that were written for it, the slower ones apart. */
const AROUND: readonly Folder[] = (
  [
    [
      'plans',
      'plans-assembly,plans-assembly-drives,plans-control-drives,plans-stand,plans-compare,coupons,control-limits,through-plans',
      'plans-control,rod-plans,options',
    ],
    [
      'drawings',
      'drawings-of-parts,drawings-by-hand,drawings-by-hand-drives,drawings-marks',
      'drawings-leaders,drawings-parts,drawings-drives,drawings-bearings,drawings-springs,drawings-parameters,through-drawings,plate-profile',
    ],
    [
      'learning',
      'learning-parts,learning-plain,learning-digits,learning-few-readings,learning-drives,coupons',
      'learning-example,learning-parallel,learning,learning-slips,learning-coverage',
    ],
    ['plausibility', 'proportions-by-hand', 'unusual-values,invariances'],
    [
      'report',
      'report-pieces,report-sections,compact-svg,renderers,metal-words,printed-by-hand,words-of-cases,sentences',
      'changes,printed-words,charts,evidence,printed-sheet',
    ],
    ['proposal', 'proposal-parts,stock,proposal-ways,robust-leg', 'propose-leg'],
    ['document', 'document,document-schema,slips,impossible,hostile,edit-text,display', 'version-3,every-field'],
    ['robot', 'robot-figures,robot-across,robot-rotors,conservation', 'robot'],
    ['exchange', 'edit-text-forms,edit-text,urdf,exchange', 'springs'],
    ['schema', 'schema,document,document-schema,slips,impossible,hostile,display', 'as-formula,every-field'],
    ['field-range', 'passing-range'],
  ] as const
).map(([name, tests, further]) => ({
  name: `leg-${name}`,
  source: `src/leg/${name}`,
  tests: legTests(tests),
  ...(further === undefined ? {} : { further: legTests(further) }),
}))

export const folders: readonly Folder[] = [
  ...['capstan', 'fasteners', 'thermal', 'kinematics', 'materials'].map(moduleOf),
  // The stresses of a link bent both ways are checked with the leg.
  { ...moduleOf('structures'), published: 'structures,leg-sideways' },
  ...['units', 'numeric', 'study'].map((name) => plain(name)),
  plain('formula', 'tests/catalogue/*.test.ts', 'tests/materials/own.test.ts', 'tests/{capstan,fasteners}/propose.test.ts'),
  ...['run', 'parts'].map((name) => leg(name)),
  leg('cases', `${FURTHER_LEG},${VERDICT}`),
  leg('assess', 'changes,missing-values,survey,passing-range', `hand,parts,${VERDICT}`),
  { ...leg('', BESIDE), name: 'leg', source: 'src/leg', flat: true },
  ...AROUND,
  { ...plain('drawing'), further: legTests('drawings-parts,drawings-drives,drawings-bearings') },
  { ...plain('chart'), further: legTests('charts') },
  ...['catalogue', 'cli', 'mathjs'].map((name) => plain(name)),
]

/** Folders of which no mutant was run yet. The list may only shrink. */
export const NOT_RUN: readonly string[] = ['leg', 'catalogue']

export function folderOf(name: string | undefined): Folder {
  const found = folders.find((folder) => folder.name === name)
  if (found === undefined) throw new Error(`No folder "${name}". Folders: ${folders.map((folder) => folder.name).join(', ')}`)
  return found
}
