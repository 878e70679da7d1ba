import { argumentsOf } from './arguments.js'
import { casesOf, LEG_OPTIONS, legFrom, onlyWord } from './leg-file.js'
import { EXIT, type Exit, progress, type Terminal } from './terminal.js'

const verb = 'report'

/** Writes the report of a leg, its workshop sheets and the table of its checks into a folder. */
export async function report(terminal: Terminal, args: readonly string[]): Promise<Exit> {
  const given = argumentsOf(verb, args, { ...LEG_OPTIONS, to: { type: 'string', default: '.' } })
  const file = onlyWord(verb, given, 'the document of one leg, such as leg.yaml')
  const folder = given.text('to') as string
  const tell = progress(terminal, given.flag('quiet'))
  const leg = await legFrom(terminal, verb, file, given)
  tell(`read ${file}: ${leg.name}`)
  const { assess, checksTable, htmlPlans, htmlReport, legDrawings, markdownReport, reportPictures, verdictText } = await import(
    '../leg/index.js'
  )
  const verdict = assess(leg, casesOf(given))
  tell(`assessed ${verdict.checks.length} checks`)
  const drawings = legDrawings(verdict, { style: 'page' })
  const pictures = await reportPictures(verdict, { drawings })
  tell(
    pictures.some(({ svg }) => svg !== undefined)
      ? `drew ${pictures.length} charts`
      : 'charts are left as tables: install vega and vega-lite to have them drawn',
  )
  const written: string[] = []
  for (const [name, content] of [
    ['report.html', () => htmlReport(verdict, { pictures, drawings })],
    ['report.md', () => markdownReport(verdict)],
    ['checks.csv', () => checksTable(verdict).toCSV()],
    ['workshop.html', () => htmlPlans(leg)],
  ] as const) {
    const text = content()
    const path = `${folder}/${name}`
    terminal.writeText(path, text)
    written.push(path)
    tell(`wrote ${path} (${Math.round(text.length / 1024)} kB)`)
  }
  terminal.out(
    given.flag('json')
      ? JSON.stringify({ file, passes: verdict.passes, meetsTarget: verdict.meetsTarget, written }, null, 2)
      : verdictText(verdict),
  )
  return EXIT.holds
}
