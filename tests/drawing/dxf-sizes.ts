import DxfParser from 'dxf-parser'

interface Entity {
  readonly type: string
  readonly radius?: number
  readonly vertices?: readonly { readonly x: number; readonly y: number }[]
}

/** Diameters of the circles, and widths and heights of the closed outlines of a DXF file, by an independent reader. */
export function dxfSizes(text: string | undefined) {
  if (text === undefined) throw new Error('the drawing has no view to scale')
  const entities = new DxfParser().parseSync(text)!.entities as unknown as readonly Entity[]
  const span = (all: readonly number[]) => Math.max(...all) - Math.min(...all)
  return {
    circles: entities.flatMap(({ type, radius }) => (type === 'CIRCLE' && radius !== undefined ? [2 * radius] : [])),
    outlines: entities.flatMap(({ type, vertices = [] }) =>
      type === 'POLYLINE' ? [[span(vertices.map(({ x }) => x)), span(vertices.map(({ y }) => y))] as const] : [],
    ),
  }
}
