import type { Chart } from '../../chart/index.js'

/** Width at which nothing is below eleven pixels on a phone. */
const WIDTH = 360
const HEIGHT = 240
/** Names of bars break into lines of about so many letters. */
const LINE = 22
const STEP = 31

interface Layer {
  readonly data?: { readonly values: readonly { readonly name?: string }[] }
  readonly mark: { readonly type: string }
  readonly encoding: Readonly<Record<string, { readonly axis?: object }>>
}

/** A chart at the width of a phone; names of bars stand in lines, so that none is cut. */
export function forPhone(chart: Chart): Chart {
  const layers = (chart.layer as readonly Layer[]).map(thinned)
  const sized = { ...chart, width: WIDTH, autosize: { type: 'fit-x', contains: 'padding' } }
  if (!layers.some(({ mark }) => mark.type === 'bar')) return { ...sized, height: HEIGHT, layer: layers }
  const layer = layers.map((layer) => {
    const { y } = layer.encoding
    if (y?.axis === undefined) return layer
    return {
      ...layer,
      data: { values: layer.data?.values.map((value) => ({ ...value, name: inLines(value.name ?? '') })) },
      encoding: { ...layer.encoding, y: { ...y, axis: { ...y.axis, labelLimit: 0, labelExpr: "split(datum.value, '\\n')" } } },
    }
  })
  return { ...sized, height: { step: STEP }, layer }
}

/** Clouds of points keep every fourth: a page is to be small, and they lie close. */
const EVERY = 4
const thinned = (layer: Layer): Layer =>
  layer.mark.type === 'point' ? { ...layer, data: { values: (layer.data?.values ?? []).filter((_, i) => i % EVERY === 0) } } : layer

/** A name in lines of about equal length. */
function inLines(name: string): string {
  let [text, length] = ['', 0]
  for (const word of name.split(' ')) {
    const breaks = length > 0 && length + word.length > LINE
    text += text === '' ? word : `${breaks ? '\n' : ' '}${word}`
    length = breaks ? word.length : length + 1 + word.length
  }
  return text
}
