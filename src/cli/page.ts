import { refuse } from '../units/index.js'
import { argumentsOf, rejectWords } from './arguments.js'
import { FileError } from './file-error.js'
import { EXIT, type Exit, type Terminal } from './terminal.js'

const verb = 'page'
/** The page with a place for the document, and that place. */
const PAGE = 'dist/page.html'
const PLACEHOLDER = '<!--EXAMPLE-->'

/** Writes a page for the browser that holds editor, library and a leg: the verdict follows every change, without a server or network. */
export async function page(terminal: Terminal, args: readonly string[]): Promise<Exit> {
  const given = argumentsOf(verb, args, { to: { type: 'string' } })
  const [file = 'examples/mudflat-leg-revised.yaml', ...more] = given.words
  if (more.length > 0) rejectWords(verb, given.words, 'must be one document, or none for the example')
  const to = given.text('to') ?? 'leg.html'
  const { upgradeLegText } = await import('../leg/index.js')
  const source = given.words.length === 0 ? terminal.packaged(file) : terminal.readText(file)
  // The document stands between the tags of a script, as it is.
  if (/<\/script|<!--/i.test(source)) refuse(verb, file, '</script or <!--', 'must not hold the tags of a page')
  try {
    const text = upgradeLegText(source)
    terminal.writeText(
      to,
      terminal.packaged(PAGE).replace(PLACEHOLDER, () => text),
    )
  } catch (error) {
    throw new FileError(file, error)
  }
  terminal.out(given.flag('json') ? JSON.stringify({ written: [to] }, null, 2) : `Wrote ${to}: open it in a browser. It sends nothing.`)
  return EXIT.holds
}
