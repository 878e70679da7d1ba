import { argumentsOf } from './arguments.js'
import { EXIT, type Exit, type Terminal } from './terminal.js'

/** Prints the JSON Schema of a leg's document, or writes it to a file. */
export async function schema(terminal: Terminal, args: readonly string[]): Promise<Exit> {
  const given = argumentsOf('schema', args, { to: { type: 'string' } })
  const { legJsonSchema } = await import('../leg/index.js')
  const text = JSON.stringify(legJsonSchema(), null, 2)
  const to = given.text('to')
  if (to === undefined) terminal.out(text)
  else terminal.writeText(to, `${text}\n`)
  return EXIT.holds
}
