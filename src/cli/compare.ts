import { argumentsOf, rejectWords } from './arguments.js'
import { asData } from './check.js'
import { inFile } from './file-error.js'
import { casesOf, changesOf, LEG_OPTIONS, legFrom } from './leg-file.js'
import { EXIT, type Exit, progress, type Terminal } from './terminal.js'

const verb = 'compare'

/** Assesses two designs, or one with and without some changed fields, and prints what moved. */
export async function compare(terminal: Terminal, args: readonly string[]): Promise<Exit> {
  const given = argumentsOf(verb, args, { ...LEG_OPTIONS, 'allow-short': { type: 'boolean' } })
  const [first, second, ...more] = given.words
  const changes = changesOf(verb, given)
  if (first === undefined || more.length > 0 || (second === undefined) === (Object.keys(changes).length === 0))
    rejectWords(
      verb,
      given.words,
      "must name two documents, or one document and what to change in it (--set joints.knee.drive.pretension='200 N')",
    )
  const tell = progress(terminal, given.flag('quiet'))
  const plain = argumentsOf(verb, [], LEG_OPTIONS)
  const before = await legFrom(terminal, verb, first, plain)
  const options = casesOf(given)
  const { compareDesigns, compareLegs, comparisonText } = await import('../leg/index.js')
  tell(`read ${first}: ${before.name}`)
  const sides =
    second === undefined
      ? inFile(first, () => compareLegs(before, changes, options))
      : compareDesigns(before, await legFrom(terminal, verb, second, plain), options)
  tell(`assessed both designs: ${sides.checks.length} checks`)
  if (given.flag('json')) {
    const checks = sides.checks.map(({ id, place, before: b, after: a, factor }) => ({
      id,
      place,
      before: b?.reserve,
      after: a?.reserve,
      factor,
    }))
    const whole = { changed: sides.changed, before: asData(first, sides.before), after: asData(second ?? first, sides.after), checks }
    terminal.out(JSON.stringify(whole, null, 2))
  } else terminal.out(comparisonText(sides))
  const { passes, meetsTarget } = sides.after
  return (given.flag('allow-short') ? passes : meetsTarget) ? EXIT.holds : EXIT.falls
}
