import { InputError } from '../units/index.js'
import { argumentsOf } from './arguments.js'
import { onlyWord } from './leg-file.js'
import { EXIT, type Exit, type Terminal } from './terminal.js'

const verb = 'start'

/** Writes the invented example leg as a document to edit, and the schema next to it, from which editors complete its fields. */
export async function start(terminal: Terminal, args: readonly string[]): Promise<Exit> {
  const given = argumentsOf(verb, args, { force: { type: 'boolean' } })
  const file = onlyWord(verb, given, 'the file to write, such as leg.yaml')
  const schema = 'leg.schema.json'
  if (terminal.exists(file) && !given.flag('force'))
    throw new InputError(verb, [{ path: file, given: 'there already', accepts: 'must be a new file; --force writes over an old one' }])
  const { legJsonSchema, upgradeLegText } = await import('../leg/index.js')
  const folder = file.includes('/') ? file.slice(0, file.lastIndexOf('/') + 1) : ''
  terminal.writeText(
    file,
    `# yaml-language-server: $schema=./${schema}\n${upgradeLegText(terminal.packaged('examples/mudflat-leg-revised.yaml'))}`,
  )
  terminal.writeText(`${folder}${schema}`, `${JSON.stringify(legJsonSchema(), null, 2)}\n`)
  const written = [file, `${folder}${schema}`]
  terminal.out(
    given.flag('json')
      ? JSON.stringify({ written }, null, 2)
      : `Wrote ${written.join(' and ')}. Every value is invented: put yours in their place, then run: limbwright check ${file}`,
  )
  return EXIT.holds
}
