/**
 * From a wish to a leg: `npm run demo:wish`, some minutes on one core.
 *
 * Ten lines say what the robot shall do and what lies in the drawer. The library answers with a few complete legs, makes the first one robust, and writes
 * documents and reports into `out/`. Further wishes are met or refused; what was expected of each stands in its first line. What is finished is kept in
 * `out/wish-kept.json`: stop the demo at any moment and run it again. Every value of the wishes is invented.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { htmlReport, type Kept, proposeLeg, robustLeg } from 'limbwright/leg'

const FIRST = 'dune-walker'
const OTHERS = [
  'tide-pool-scout',
  'terrace-courier',
  'quarry-sampler',
  'cellar-inspector',
  'crate-hauler',
  'furnace-hall-surveyor',
  'glasshouse-hexapod',
]

const wishOf = (name: string) => readFileSync(new URL(`wishes/${name}.yaml`, import.meta.url), 'utf8')
const KEPT = 'out/wish-kept.json'
mkdirSync('out', { recursive: true })
const kept: Record<string, Kept> = existsSync(KEPT) ? JSON.parse(readFileSync(KEPT, 'utf8')) : {}
/** Options that keep what is finished under a name, and go on from it. */
const keeping = (name: string) => ({
  ...(kept[name] !== undefined && { resume: kept[name] }),
  onKept: (pieces: Kept) => {
    kept[name] = pieces
    writeFileSync(KEPT, JSON.stringify(kept))
  },
})

const started = performance.now()
let told = 0
const seconds = () => ((performance.now() - started) / 1000).toFixed(0)
const progress = (text: string) => {
  if (performance.now() - told < 5000 && !text.includes('afresh')) return
  told = performance.now()
  console.log(`[${seconds()} s] ${text}`)
}
const chapter = (title: string) => console.log(`\n== ${title} ${'='.repeat(Math.max(4, 100 - title.length))}\n`)
const onProgress = (text: string, done: number) => progress(`${done} legs judged; ${text}`)

chapter('1  A wish of ten lines')
const wish = wishOf(FIRST)
console.log(wish)

chapter('2  Legs that meet it')
const found = proposeLeg(wish, { evaluations: 2000, onProgress, ...keeping(FIRST) })
console.log(found.message)
for (const { title, stock, goals, boundBy } of found.proposals) {
  const { mass, energyPerMetre, printVolume, cost, margin } = goals
  console.log(`\n  ${title}: motor ${stock.motor}, cord ${stock.cord}, ${stock.frame} with drums of ${stock.drum}`)
  console.log(
    `    ${mass.toFixed(2)} kg, ${energyPerMetre.toFixed(0)} J/m, ${(1e6 * printVolume).toFixed(0)} cm^3 of print, cost ${cost.toFixed(0)}, smallest margin ${margin.toFixed(3)}`,
  )
  console.log(`    bound by: ${boundBy.slice(0, 3).join('; ') || 'nothing within a twentieth'}`)
}
const [first] = found.proposals
if (first === undefined) throw new Error(found.message)

chapter('3  The price of robustness')
const robust = robustLeg(found.wish, first, { draws: 150, chance: 0.9, evaluations: 250, onProgress: progress, ...keeping('robust') })
console.log(robust.message)
for (const [check, share] of robust.failures.slice(0, 5))
  console.log(`  at typical values: ${check}, in ${(100 * share).toFixed(0)} % of the draws`)

chapter('4  More wishes, each with what was expected')
for (const name of OTHERS) {
  const text = wishOf(name)
  const [title, expected] = (text.split('\n')[0] ?? '').replace('name: ', '').split(' # ')
  console.log(`${title}: ${expected}`)
  const { state, message, proposals, evaluations } = proposeLeg(text, { evaluations: 1000, onProgress, ...keeping(name) })
  console.log(`After ${evaluations} legs, ${state}. ${message}`)
  for (const { title, stock } of proposals.slice(0, 1)) console.log(`  ${title}: motor ${stock.motor}, cord ${stock.cord}, ${stock.frame}`)
  console.log()
}

chapter('5  On paper')
for (const [file, content] of [
  ['out/wish-leg.json', JSON.stringify(first.document, null, 2)],
  ['out/wish-leg-report.html', htmlReport(first.assessment)],
  ['out/wish-leg-robust.json', JSON.stringify(robust.robust.document, null, 2)],
  ['out/wish-leg-robust-report.html', htmlReport(robust.robust.assessment)],
] as const) {
  writeFileSync(file, content)
  console.log(`wrote ${file} (${Math.round(content.length / 1024)} kB)`)
}
console.log(`done after ${seconds()} s`)
console.log('Estimates for trained judgement: guard tensioned cords, mind pinch points, hot motors, batteries and dropped loads.')
