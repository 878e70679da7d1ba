/** A Vega-Lite specification; notebooks display it, `JSON.stringify` gives the plain specification. */
export interface Chart {
  /** Address of the Vega-Lite schema. */
  readonly $schema: string
  /** Title of the chart. */
  readonly title: string
  /** What the chart shows, for those who do not see it. */
  readonly description: string
  readonly [field: string]: unknown
}
