import { type Chart, type Renderer, svgOf } from '../../chart/index.js'
import { knownOptions } from '../options.js'
import type { Assessment } from '../result.js'
import type { Picture } from './blocks.js'
import { besides, chartsOf, type ReportChart } from './charts.js'
import { compactSvg } from './compact-svg.js'
import { forPhone } from './phone-chart.js'

/** A chart of the report with its picture. */
export interface ReportPicture extends ReportChart {
  /** The picture as SVG for embedding in a page; absent where it was not rendered. */
  readonly svg: string | undefined
}

/** The packages that draw. Bundlers know an import that may fail by the `try` around it. */
async function installed(): Promise<Renderer> {
  try {
    const vega = await import('vega')
    const lite = await import('vega-lite')
    return { vega, lite } as Renderer
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
  return svgOf(chart, await installed())
}

/** Options of `reportPictures`. */
export interface ReportPicturesOptions {
  /** Drawings that the page will show, as for `htmlReport`: a chart that the page leaves out beside them is not rendered. Default: every chart is. */
  readonly drawings?: readonly Picture[]
}

/**
 * The charts of a report, rendered: hand them to `htmlReport`. Where the packages that render are not installed the pictures are left out, and the
 * report shows the numbers as tables with a note.
 */
export async function reportPictures(assessment: Assessment, options: ReportPicturesOptions = {}): Promise<readonly ReportPicture[]> {
  knownOptions('reportPictures', options, ['drawings'])
  return renderedPictures(assessment, options, installed)
}

/** The pictures as drawn by what `load` finds; without pictures where it rejects with the reason of a missing package. */
export async function renderedPictures(
  assessment: Assessment,
  options: ReportPicturesOptions,
  load: () => Promise<Renderer>,
): Promise<readonly ReportPicture[]> {
  // The first drawing stands beside the verdict, away from the charts.
  const [, ...others] = options.drawings ?? []
  const charts = besides(chartsOf(assessment), others)
  try {
    const renderer = await load()
    const svgs = await Promise.all(charts.map(({ chart }) => svgOf(forPhone(chart), renderer)))
    return charts.map((chart, i) => ({ ...chart, svg: separate(compactSvg(svgs[i] as string), chart.id) }))
  } catch (error) {
    if (error instanceof Error && error.cause !== undefined) return charts.map((chart) => ({ ...chart, svg: undefined }))
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
