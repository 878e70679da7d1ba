import type { Chart } from './chart.js'

/** Takes what the renderer reports of a specification. */
interface Logger {
  readonly level: (value?: number) => never
  readonly error: (...parts: never[]) => Logger
  readonly warn: (...parts: never[]) => Logger
  readonly info: (...parts: never[]) => Logger
  readonly debug: (...parts: never[]) => Logger
}

/** Drops remarks on sizes that a chart leaves open on purpose; a specification that cannot be drawn throws. */
const quiet: Logger = {
  level: () => quiet as never,
  error: (...parts) => {
    throw new Error(parts.join(' '))
  },
  warn: () => quiet,
  info: () => quiet,
  debug: () => quiet,
}

/** What renders a specification: of the packages vega and vega-lite, which need not be installed, what is used here. */
export interface Renderer {
  readonly vega: {
    readonly parse: (specification: never) => unknown
    readonly View: new (runtime: never, options: { renderer: 'none' }) => { toSVG(): Promise<string>; finalize(): unknown }
  }
  readonly lite: { readonly compile: (specification: never, options: { logger: Logger }) => { readonly spec: unknown } }
}

const FAINT = '#88888855'
/** The grey of guides, which the charts name themselves. */
const GREY = /#595959/g

/**
 * A chart as SVG in one colour of ink. `currentColor` is the colour of the page that the picture is put into, so that light and dark both read. The
 * figure around the picture carries title and description.
 */
export async function svgOf(
  chart: Chart,
  { vega, lite }: Renderer,
  ink = 'currentColor',
  background: string | null = null,
): Promise<string> {
  const { title: _, description: __, ...spec } = chart
  const config = {
    background,
    aria: false,
    font: 'system-ui, sans-serif',
    view: { stroke: FAINT },
    axis: { labelColor: ink, titleColor: ink, domainColor: ink, tickColor: ink, gridColor: FAINT, labelFontSize: 11, titleFontSize: 11 },
    legend: { labelColor: ink, titleColor: ink, orient: 'bottom', columns: 1, labelLimit: 320, labelFontSize: 11, titleFontSize: 11 },
    title: { color: ink },
    text: { color: ink, fontSize: 11 },
  }
  const { spec: compiled } = lite.compile({ ...spec, config } as never, { logger: quiet })
  const view = new vega.View(vega.parse(compiled as never) as never, { renderer: 'none' })
  const svg = await view.toSVG()
  view.finalize()
  return svg.replaceAll(/ xmlns:\w+="[^"]*"/g, '').replaceAll(GREY, ink)
}

/** A package by a name that bundlers do not follow: a bundle without the renderer is whole. */
const installed = (name: string): Promise<unknown> => import(/* @vite-ignore */ /* webpackIgnore: true */ name)

/** The picture that a notebook keeps for viewers that run no scripts; nothing where the renderer is not installed. */
export async function notebookSvg(chart: Chart): Promise<string | undefined> {
  try {
    const renderer = { vega: await installed('vega'), lite: await installed('vega-lite') } as Renderer
    const svg = await svgOf(chart, renderer, '#1a1a1a', '#ffffff')
    // Hundredths of a pixel: without the digits behind them it is half as long.
    return svg.replaceAll(/ (?:d|transform)="[^"]*"/g, (places) =>
      places.replaceAll(/\d+\.\d{3,}/g, (x) => String(Number(Number(x).toFixed(2)))),
    )
  } catch {
    return undefined
  }
}
