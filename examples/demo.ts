/**
 * The story of one leg, told with the library: `npm run demo`.
 *
 * A first design and what gives first; what moves that; a revised design; an optimised one; how it is built; what the test stand then teaches; the
 * reports of all of it in `out/`. Every number of the two designs and of the stand's logs beside this file is invented. Run it from the
 * repository, or copy it into a project that has limbwright installed.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import {
  type Assessment,
  assemblyPlan,
  assess,
  compareLegs,
  comparisonText,
  describeLeg,
  htmlPlans,
  htmlReport,
  learn,
  learntText,
  legDrawings,
  legFigures,
  legFormula,
  markdownReport,
  rankedTable,
  reportPictures,
  standPlan,
  verdictText,
} from 'limbwright/leg'
import { optimise, sensitivity } from 'limbwright/study'

const here = (name: string) => new URL(name, import.meta.url)
const started = performance.now()
const progress = (text: string) => console.log(`[${((performance.now() - started) / 1000).toFixed(1)} s] ${text}`)
const chapter = (title: string) => console.log(`\n== ${title} ${'='.repeat(Math.max(4, 100 - title.length))}\n`)

function look(file: string, rows: number): Assessment {
  progress(`reading ${file}`)
  const leg = describeLeg(readFileSync(here(file), 'utf8'))
  progress(`${leg.name}: ${leg.defaults.length} values left open and filled in; assessing`)
  const assessment = assess(leg)
  console.log(`\n${rankedTable(assessment, rows)}\n`)
  console.log(verdictText(assessment))
  console.log(assessment.governing.sentence)
  console.log(`Remedy: ${assessment.governing.remedy}.`)
  return assessment
}

chapter('1  A first design, and what gives first')
const first = look('mudflat-leg-first.yaml', 14)

chapter('2  What moves it')
const { governing } = first
const check = governing.joint === undefined ? governing.id : `${governing.id} ${governing.joint}`
progress(`what moves "${check}" in "${governing.caseTitle}", each field by a tenth`)
const moves = sensitivity(legFormula(first.leg, { check, cases: [governing.case], uncertain: [] }), {
  usage: { dropHeight: '60 mm', landingTravel: '90 mm' },
  cords: { braid: { axialRigidity: '26 kN' } },
  drives: { knee: { pretension: '90 N', drum: { grooveDiameter: '74.56 mm' } } },
  robot: { standHeight: '270 mm', mass: '10.5 kg' },
})
for (const { path, value, atFrom, atTo } of moves.inputs.slice(0, 6)) {
  console.log(
    `  ${path.padEnd(34)} ${String(value).padEnd(10)} a tenth less: ${atFrom ?? 'no answer'}, a tenth more: ${atTo ?? 'no answer'}`,
  )
}
const best = Math.max(...moves.inputs.flatMap(({ atFrom, atTo }) => [atFrom?.si ?? 0, atTo?.si ?? 0]))
console.log(`The best of these single changes leaves a reserve of ${best.toPrecision(2)}: the revised design changes several at once.`)

chapter('3  The revised design')
const revised = look('mudflat-leg-revised.yaml', 8)

chapter('4  The same, optimised')
const plan = {
  vary: {
    'drives.hip.pretension': { from: '150 N', to: '230 N' },
    'drives.knee.pretension': { from: '240 N', to: '320 N' },
    'bosses.hip.outerDiameter': { from: '13 mm', to: '18 mm' },
    'bosses.knee.outerDiameter': { from: '15 mm', to: '20 mm' },
    'bosses.hip.hole': { from: '3.96 mm', to: '3.99 mm' },
    'bosses.knee.hole': { from: '4.955 mm', to: '4.99 mm' },
    'plate.thickness': { from: '5 mm', to: '9 mm' },
    'sink.thickness': { from: '1.5 mm', to: '5 mm' },
  },
  choices: { plate: { ASA: { plate: { material: 'ASA' } }, PC: { plate: { material: 'PC' } } } },
  goals: { minimise: 'driveMass' },
  constraints: { margin: { min: 1 } },
  evaluations: 2000,
} as const
progress('searching eight fields and two polymers for the lightest drives that keep every required reserve')
let told = 0
const found = optimise(legFigures(revised.leg, { uncertain: [] }), {
  ...plan,
  onProgress: (done, of) => {
    if (done < told) return
    progress(`  ${done} of ${of} legs`)
    told += 500
  },
})
const changes = {
  ...Object.fromEntries(Object.entries(found.best.inputs).map(([path, value]) => [path, String(value)])),
  'plate.material': found.best.choices.plate,
}
for (const [path, value] of Object.entries(changes)) console.log(`  ${path.padEnd(34)} ${value}`)
const before = legFigures(revised.leg, { uncertain: [] })({})
console.log(
  `  drives of one leg: ${before.driveMass} before, ${found.best.results.driveMass} now; margin ${before.margin} before, ${found.best.results.margin} now`,
)
const sides = compareLegs(revised.leg, changes)
console.log(verdictText(sides.after))

chapter('5  How the revised one is built')
const { cuts, tensioners, tightening, cautions } = assemblyPlan(revised.leg)
for (const one of cuts.cords) console.log(`  cut ${one.cutLength} of ${one.cord} for the ${one.joint}, ends: ${one.ends}`)
for (const one of tensioners)
  console.log(
    `  turn the tensioner of the ${one.joint} ${one.turnsToStart.in('1').toFixed(1)} turns to tight, ${one.turnsToSet.in('1').toFixed(1)} more to ${one.pretension}`,
  )
for (const one of tightening) console.log(`  tighten ${one.what}: ${one.count} x ${one.thread}, ${one.passes.join(', ')}`)
console.log(`  ${cautions[0]}`)
const [mostTelling] = standPlan(revised.leg).measurements
console.log(`  on the test stand first: ${mostTelling?.what} (expect ${mostTelling?.predicted}, ${mostTelling?.band.join(' to ')})`)

chapter('6  What the test stand teaches (invented logs)')
const logs = Object.fromEntries(
  ['cordFriction knee', 'pretension knee', 'windup knee', 'heating'].map((log) => [
    log,
    readFileSync(here(`stand-logs/${log.replace(' ', '-')}.csv`), 'utf8'),
  ]),
)
progress(`reading ${Object.keys(logs).length} logs`)
const learnt = learn(revised.leg, logs)
for (const one of learnt.moved)
  console.log(
    `  ${one.path.padEnd(28)} ${one.before.padEnd(20)} is ${one.after.padEnd(28)} (95 %: ${one.interval?.join(' to ') ?? 'undetermined'})`,
  )
for (const { log, line, message } of learnt.remarks) console.log(`  ${log}${line === undefined ? '' : `, line ${line}`}: ${message}`)
console.log(verdictText(learnt.comparison.after))

chapter('7  On paper')
/** The report with its drawings and charts. */
async function pageOf(verdict: Assessment): Promise<string> {
  const drawings = legDrawings(verdict, { style: 'page' })
  return htmlReport(verdict, { drawings, pictures: await reportPictures(verdict, { drawings }) })
}

mkdirSync('out', { recursive: true })
for (const [file, content] of [
  ['out/leg-report.md', markdownReport(first)],
  ['out/leg-report.html', await pageOf(first)],
  ['out/leg-report-revised.md', markdownReport(revised)],
  ['out/leg-report-revised.html', await pageOf(revised)],
  ['out/leg-optimised.md', comparisonText(sides)],
  ['out/leg-workshop.html', htmlPlans(revised.leg)],
  ['out/leg-learnt.md', learntText(learnt)],
] as const) {
  writeFileSync(file, content)
  progress(`wrote ${file} (${Math.round(content.length / 1024)} kB)`)
}
progress('done. Estimates for trained judgement: guard tensioned cords, mind pinch points, hot motors, batteries and dropped loads.')
