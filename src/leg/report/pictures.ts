import type { Chart } from '../../chart/index.js'
import type { Assessment } from '../result.js'
import { type ReportChart, reportCharts } from './charts.js'

/** A chart of the report with its picture. */
export interface ReportPicture extends ReportChart {
  /** The picture as SVG for embedding in a page; absent where it was not rendered. */
  readonly svg: string | undefined
}

/** What draws in the page's own colours, so that light and dark both read. */
const INK = 'currentColor'
const FAINT = '#88888855'
const CONFIG = {
  background: null,
  aria: false,
  font: 'system-ui, sans-serif',
  view: { stroke: FAINT },
  axis: { labelColor: INK, titleColor: INK, domainColor: INK, tickColor: INK, gridColor: FAINT },
  legend: { labelColor: INK, titleColor: INK, orient: 'bottom', columns: 2, labelLimit: 320 },
  title: { color: INK },
  text: { color: INK },
}
/** The grey of guides, which the charts name themselves. */
const GREY = /#595959/g

/** The packages that draw. Bundlers know an import that may fail by the `try` around it. */
async function renderer() {
  try {
    const vega = await import('vega')
    const lite = await import('vega-lite')
    return { vega, lite }
  } catch (error) {
    throw new Error('Pictures need the packages vega and vega-lite: npm install vega vega-lite', { cause: error })
  }
}

/**
 * One chart as SVG, in the colours of the page that it is put into (`currentColor`).
 *
 * Needs the packages `vega` and `vega-lite` (6) beside limbwright; rejects with an error that names them where they are missing.
 */
export async function chartSvg(chart: Chart): Promise<string> {
  const { vega, lite } = await renderer()
  // The figure around it carries title and description.
  const { title: _, description: __, ...spec } = chart
  const { spec: compiled } = lite.compile({ ...spec, config: CONFIG } as never)
  const view = new vega.View(vega.parse(compiled), { renderer: 'none' })
  const svg = await view.toSVG()
  view.finalize()
  return svg.replaceAll(/ xmlns:\w+="[^"]*"/g, '').replaceAll(GREY, INK)
}

/**
 * The charts of a report, rendered: hand them to `htmlReport`. Where the packages that render are not installed the pictures are left out, and the
 * report shows the numbers as tables with a note.
 */
export async function reportPictures(assessment: Assessment): Promise<readonly ReportPicture[]> {
  const charts = reportCharts(assessment)
  try {
    const svgs = await Promise.all(charts.map(({ chart }) => chartSvg(chart)))
    return charts.map((one, i) => ({ ...one, svg: separate(svgs[i] as string, one.id) }))
  } catch (error) {
    if (error instanceof Error && error.cause !== undefined) return charts.map((one) => ({ ...one, svg: undefined }))
    throw error
  }
}

/** Names inside a picture made its own, so that several pictures can stand in one page. A page names no address, not even that of the format. */
function separate(svg: string, id: string): string {
  return svg
    .replace(/ xmlns="[^"]*"/, '')
    .replaceAll(/ id="([^"]*)"/g, ` id="${id}-$1"`)
    .replaceAll(/url\(#([^)]*)\)/g, `url(#${id}-$1)`)
}
