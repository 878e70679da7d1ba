/**
 * From a wish to a leg: `npx tsx examples/wish-demo.ts`.
 *
 * Ten lines say what the robot shall do and what lies in the drawer. The library answers with a few complete legs, makes the first one robust, and writes
 * document and report into `out/`. Three more wishes are met or rejected. Every value of the wishes is invented.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { htmlReport, proposeLeg, robustLeg } from 'limbwright/leg'

const here = (name: string) => new URL(`wishes/${name}.yaml`, import.meta.url)
const started = performance.now()
let told = 0
const progress = (text: string) => {
  if (performance.now() - told < 5000) return
  told = performance.now()
  console.log(`[${((told - started) / 1000).toFixed(0)} s] ${text}`)
}
const chapter = (title: string) => console.log(`\n== ${title} ${'='.repeat(Math.max(4, 100 - title.length))}\n`)
const onProgress = (text: string, done: number, of: number) => progress(`${done} of ${of} legs: ${text}`)

chapter('1  A wish of ten lines')
const wish = readFileSync(here('dune-walker'), 'utf8')
console.log(wish)

chapter('2  Legs that meet it')
const found = proposeLeg(wish, { evaluations: 3000, onProgress })
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
const robust = robustLeg(found.wish, first, { draws: 60, chance: 0.9, evaluations: 250, onProgress: progress })
console.log(robust.message)
for (const [check, share] of robust.failures.slice(0, 5))
  console.log(`  at typical values ${check} fails in ${(100 * share).toFixed(0)} % of the draws`)

chapter('4  Three more wishes')
for (const name of ['cellar-inspector', 'crate-hauler', 'furnace-hall-surveyor']) {
  const { state, message } = proposeLeg(readFileSync(here(name), 'utf8'), { evaluations: 2000, onProgress })
  console.log(`${name}: ${state}. ${message}\n`)
}

chapter('5  On paper')
mkdirSync('out', { recursive: true })
for (const [file, content] of [
  ['out/wish-leg.json', JSON.stringify(first.document, null, 2)],
  ['out/wish-leg-report.html', htmlReport(first.assessment)],
  ['out/wish-leg-robust.json', JSON.stringify(robust.robust.document, null, 2)],
  ['out/wish-leg-robust-report.html', htmlReport(robust.robust.assessment)],
] as const) {
  writeFileSync(file, content)
  console.log(`wrote ${file} (${Math.round(content.length / 1024)} kB)`)
}
console.log('Estimates for trained judgement: guard tensioned cords, mind pinch points, hot motors, batteries and dropped loads.')
