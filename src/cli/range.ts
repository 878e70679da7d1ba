import { argumentsOf, rejectWords } from './arguments.js'
import { inFile } from './file-error.js'
import { casesOf, LEG_OPTIONS, legFrom } from './leg-file.js'
import { EXIT, type Exit, progress, type Terminal } from './terminal.js'

const verb = 'range'

/** Prints in which range of one field every check of a leg has its required reserve, and what decides beyond each end. */
export async function range(terminal: Terminal, args: readonly string[]): Promise<Exit> {
  const ends = { from: { type: 'string' }, to: { type: 'string' }, values: { type: 'string' } } as const
  const given = argumentsOf(verb, args, { ...LEG_OPTIONS, ...ends })
  const [file, path, ...more] = given.words
  if (file === undefined || path === undefined || more.length > 0)
    rejectWords(verb, given.words, 'must name one document of a leg and one of its fields, such as leg.yaml joints.knee.drive.pretension')
  const leg = await legFrom(terminal, verb, file as string, given)
  progress(terminal, given.flag('quiet'))(`read ${file}: ${leg.name}`)
  const { passingRange, passingRangeText } = await import('../leg/index.js')
  const values = given.text('values')
  const found = inFile(file as string, () =>
    passingRange(leg, path as string, {
      ...casesOf(given),
      ...(given.text('from') === undefined ? {} : { from: given.text('from') }),
      ...(given.text('to') === undefined ? {} : { to: given.text('to') }),
      ...(values === undefined ? {} : { values: Number(values) }),
    }),
  )
  if (given.flag('json')) terminal.out(JSON.stringify(found, null, 2))
  else terminal.out(passingRangeText(found))
  return found.passes.length > 0 ? EXIT.holds : EXIT.falls
}
