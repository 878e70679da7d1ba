/** Each verb with its purpose, its call and its options. */
export const VERBS: Readonly<Record<string, { readonly does: string; readonly call: string; readonly options: readonly string[] }>> = {
  start: {
    does: 'write an example leg to edit, with the schema that editors complete from',
    call: 'start leg.yaml',
    options: ['--force               write over an old file'],
  },
  check: {
    does: 'assess a leg: which part fails first, and by how much',
    call: "check leg.yaml [more.yaml …] [--set joints.knee.drive.pretension='200 N']",
    options: [
      '--set path=value      change a field, without touching the document',
      '--remove path         take a field out, so that its default comes back',
      '--cases stand,walk    load cases by id, with commas between them; default: every load case',
      '--rows 10             how many of the weakest checks are listed',
      '--csv                 every check as comma-separated text',
      '--allow-short         exit with 0 where every reserve is at least 1, though short of what is required',
    ],
  },
  compare: {
    does: 'assess two designs, or one with changed fields, and list what moved',
    call: "compare before.yaml after.yaml, or compare leg.yaml --set joints.knee.drive.pretension='200 N'",
    options: ['--set, --remove, --cases, --allow-short   as for check; the exit code is that of the second design'],
  },
  range: {
    does: 'find in which range of one field a leg has its required reserves, and what decides beyond each end',
    call: "range leg.yaml joints.knee.drive.pretension --from '150 N' --to '350 N'",
    options: [
      '--from, --to          the ends of the search; default: half the value of the leg, and one and a half times',
      '--values 41           how many values are tried, 3 to 1001; a range between two of them is not found',
      '--set, --remove, --cases   as for check; the exit code is 1 where no value passes',
    ],
  },
  report: {
    does: 'write the report, the workshop sheets and the table of checks',
    call: 'report leg.yaml --to out',
    options: ['--to folder           where the files go; default: here', '--set, --remove, --cases   as for check'],
  },
  page: {
    does: 'write a page for the browser: the leg in an editor and its verdict beside it, without a server',
    call: 'page leg.yaml --to leg.html',
    options: ['--to file             default: leg.html; without a document the page holds the example'],
  },
  robot: {
    does: 'assess the robot of four such legs: feet, loads, supply, energy, running time',
    call: "robot leg.yaml [--set supply.energy='90 W h']",
    options: ['--set, --remove       as for check'],
  },
  learn: {
    does: 'correct a leg from logs of the test stand',
    call: 'learn leg.yaml logs/pretension-knee.csv logs/windup-knee.csv --to leg-learnt.yaml',
    options: [
      '--to file             write the corrected document; comments and order stay',
      '--keep-spikes         use readings that stand far from the others',
      '--insist LOG,LOG      use these logs although they are far from what is expected',
      '--set, --remove, --cases   as for check',
    ],
  },
  schema: {
    does: 'print the JSON Schema of a leg document',
    call: 'schema --to leg.schema.json',
    options: ['--to file             write it to a file'],
  },
  formulas: {
    does: 'list formulas and other functions, or print everything about one',
    call: 'formulas slack tension, or formulas capstan.slackTension',
    options: [],
  },
  call: {
    does: 'call one formula, or solve it for an input',
    call: "call capstan.slackTension load='500 N' friction=0.2 wrapAngle='3 turn'",
    options: ['--solve wrapAngle --target "2 N"   find the input that gives this result'],
  },
}

const COMMON = [
  '--json                the result as JSON; mistakes too',
  '--quiet, -q           no progress on the error stream',
  '--help, -h            this text',
]

/** The list of verbs. */
export const overview = (version: string): string =>
  [
    `limbwright ${version}: engineering calculations for printed, cord-driven robot legs`,
    '',
    'limbwright <verb> …',
    ...Object.entries(VERBS).map(([verb, { does }]) => `  ${verb.padEnd(9)} ${does}`),
    '',
    'limbwright <verb> --help lists the options of a verb.',
    'Exit codes: 0 every check has its required reserve; 1 a check fails or falls short; 2 the command line or a document cannot be used; 3 a fault of the program.',
    'Results are estimates for trained judgement.',
  ].join('\n')

/** The help of one verb. */
export function helpOf(verb: string): string {
  const { does, call, options } = VERBS[verb] as (typeof VERBS)[string]
  return [`limbwright ${call}`, '', `  ${does}`, '', ...[...options, ...COMMON].map((line) => `  ${line}`)].join('\n')
}
