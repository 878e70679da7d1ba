import { refuse } from '../../units/index.js'
import { DOCUMENT_VERSION } from '../document/fields.js'
import { legDrawings } from '../drawings/index.js'
import { legNumbers } from '../numbers.js'
import { knownOptions } from '../options.js'
import type { Assessment } from '../result.js'
import { type Block, facts, led, type Page, type Picture, points, section, text } from './blocks.js'
import { casesSection, footSection, measureSection } from './cases-section.js'
import { cautionsOf } from './cautions.js'
import { type Changes, changesOf } from './changes.js'
import { changesSection, firstChange } from './changes-section.js'
import { chartTable, withColumns } from './chart-table.js'
import { besides, chartsOf } from './charts.js'
import { chainsSection, checksNamed, rankedSection } from './checks-section.js'
import { measurementText, priorsText, standing, verdictText } from './content.js'
import { drawingPictures } from './drawing-pictures.js'
import { specificationHash } from './hash.js'
import type { ReportPicture } from './pictures.js'
import { assumptionsSection, notEvaluatedBlocks, numberedSheet } from './sheet-sections.js'
import { unusualSection } from './unusual-section.js'
import { LIBRARY_VERSION } from './version.js'

/** Options of the reports. */
export interface ReportOptions {
  /**
   * Whether the calculation of every check is there, or only that of the decisive ones: the four nearest to their limit. Default: all in HTML, the
   * decisive ones in Markdown and plain text.
   */
  readonly steps?: 'all' | 'decisive'
  /** Charts as `reportPictures` returns them. Default: the numbers of the charts alone. */
  readonly pictures?: readonly ReportPicture[]
  /** Drawings to show, as `legDrawings` returns them with `style: 'page'`: the first one beside the verdict, the others in a part of their own. Default: the leg in the hardest pose of its governing check. */
  readonly drawings?: readonly Picture[]
  /** Date of the calculation, as it is to be printed. Default: a line to write on. */
  readonly date?: string
  /** Who calculated. Default: a line to write on. */
  readonly by?: string
  /** Who checked. Default: a line to write on. */
  readonly checkedBy?: string
}

const OPTIONS = ['steps', 'pictures', 'drawings', 'date', 'by', 'checkedBy'] as const

/** The report as a page of blocks, which every form of it is printed from. */
export function reportPage(assessment: Assessment, options: ReportOptions = {}): Page {
  knownOptions('report', options, OPTIONS)
  for (const name of ['date', 'by', 'checkedBy'] as const)
    if (options[name] !== undefined && typeof options[name] !== 'string')
      refuse('report', name, options[name], 'must be text, such as 2026-03-31')
  const { steps = 'all' } = options
  if (steps !== 'all' && steps !== 'decisive') refuse('report', 'steps', steps, 'must be all or decisive')
  const { leg } = assessment
  const chosen = steps === 'all' ? assessment.checks : decisive(assessment)
  const sheet = numberedSheet(assessment, chosen)
  const [first, ...others] = drawingPictures(assessment, options.drawings ?? legDrawings(assessment, { style: 'page', only: ['leg'] }))
  const changes = changesOf(assessment)
  return {
    title: `${leg.name}: calculation sheet`,
    blocks: [
      ...(leg.remark === undefined ? [] : [led('Remark:', leg.remark)]),
      verdictSection(assessment, first, changes),
      ...unusualSection(assessment),
      titleBlock(assessment, options, sheet.count),
      section('cautions', 'Cautions', [points(cautionsOf(legNumbers(leg)))]),
      rankedSection(assessment),
      ...changesSection(assessment, changes),
      ...(others.length === 0 ? [] : [section('drawings', 'Drawings', [{ kind: 'pictures', pictures: others }])]),
      chartsSection(assessment, options.pictures, others),
      casesSection(assessment),
      footSection(assessment),
      measureSection(assessment),
      sheet.specification,
      assumptionsSection(assessment),
      chainsSection(assessment, chosen, sheet),
      sheet.steps,
      sheet.values,
      sheet.sources,
      ...notEvaluatedBlocks(assessment, checksNamed),
    ],
  }
}

/** Checks whose calculation stands in a short report. */
const DECISIVE = 4
const decisive = ({ checks }: Assessment) => checks.slice(0, DECISIVE)

/** The first screen: does it hold, what fails first, what to change. */
function verdictSection(assessment: Assessment, drawing: Picture | undefined, changes: readonly Changes[]): Block {
  const { governing } = assessment
  const measurement = measurementText(assessment)
  const tone = assessment.passes ? (assessment.meetsTarget ? 'holds' : 'short') : standing(governing)
  return section('verdict', 'Verdict', [
    { kind: 'text', text: verdictText(assessment), tone },
    text(governing.sentence),
    ...firstChange(assessment, changes),
    text(priorsText(assessment)),
    ...(measurement === undefined ? [] : [text(measurement)]),
    ...(drawing === undefined ? [] : [{ kind: 'picture', ...drawing } as const]),
  ])
}

/** Purpose of the sheet, and room to sign it. */
const titleBlock = ({ leg }: Assessment, { date = '', by = '', checkedBy = '' }: ReportOptions, count: number): Block =>
  section('title-block', 'Title block', [
    facts('Leg, versions and signatures', [
      ['Leg', leg.name],
      ['Specification', `layout ${DOCUMENT_VERSION}, SHA-256 ${specificationHash(leg)}`],
      ['Calculated with', `limbwright ${LIBRARY_VERSION}; ${count} distinct steps`],
      ['Signed here', 'all before "Specification"; the rest is the appendix'],
      ['Date', date],
      ['Calculated by', by],
      ['Checked by', checkedBy],
    ]),
  ])

function chartsSection(assessment: Assessment, pictures: readonly ReportPicture[] | undefined, drawings: readonly Picture[]): Block {
  const all = pictures ?? chartsOf(assessment).map((chart) => ({ ...chart, svg: undefined }))
  const drawn = all.some(({ svg }) => svg !== undefined)
  // The reserves stand in the ranking: their chart is there to be seen.
  const charts = besides(all, drawings)
    .filter(({ id }) => drawn || id !== 'reserves')
    .map((beside) => ({ ...beside, table: withColumns(chartTable(beside.chart)) }))
  const [shown, empty] = [charts.filter(({ table }) => table.rows.length > 0), charts.filter(({ table }) => table.rows.length === 0)]
  return section('charts', 'Charts', [
    ...(!drawn
      ? [
          text(
            'The charts are not drawn in this copy of the report; the tables hold their numbers. Drawn charts need the packages vega and vega-lite.',
          ),
        ]
      : []),
    ...empty.map(({ chart }) => text(chart.description)),
    {
      kind: 'pictures',
      pictures: shown.map(({ id, chart, svg, table }) => ({
        id: `chart-${id}`,
        title: chart.title,
        description: chart.description,
        svg,
        table,
      })),
    },
  ])
}
