import { field, optional, reference, word } from '../../leaves.js'
import type { LegNumbers } from '../../leg-numbers.js'
import { partOf } from '../../numbers.js'

const plateIn = (x: LegNumbers, { plate }: { readonly plate: string }) => partOf(x.plates, plate, 'plate')

export const material = reference('plate.material', ['plate'], 'material', (x, at) => plateIn(x, at).material)
export const thickness = field('plate.thickness', ['plate'], 'length', (x, at) => plateIn(x, at).thickness)
export const width = field('plate.width', ['plate'], 'length', (x, at) => plateIn(x, at).size.width)
export const height = field('plate.height', ['plate'], 'length', (x, at) => plateIn(x, at).size.height)
export const emissivity = field('plate.emissivity', ['plate'], 'ratio', (x, at) => plateIn(x, at).emissivity)
export const contactConductance = field(
  'plate.contactConductance',
  ['plate'],
  'heatTransferCoefficient',
  (x, at) => plateIn(x, at).contactConductance,
)
/** Whether a metal sink lies between motor and plate. */
export const hasSink = word('plate.hasSink', ['plate'], (x, at) => plateIn(x, at).sink !== undefined)
export const sink = {
  material: reference('sink.material', ['plate'], 'material', (x, at) => plateIn(x, at).sink?.material ?? plateIn(x, at).material),
  thickness: optional('sink.thickness', ['plate'], 'length', (x, at) => plateIn(x, at).sink?.thickness),
  width: optional('sink.width', ['plate'], 'length', (x, at) => plateIn(x, at).sink?.size.width),
  height: optional('sink.height', ['plate'], 'length', (x, at) => plateIn(x, at).sink?.size.height),
  emissivity: optional('sink.emissivity', ['plate'], 'ratio', (x, at) => plateIn(x, at).sink?.emissivity),
}
/** The body, or the link, that the plate is fixed to, and how far from the upper joint of that link. */
export const mountedOn = word('plate.mountedOn', ['plate'], (x, at) => plateIn(x, at).mountedOn)
export const distance = field('plate.distance', ['plate'], 'length', (x, at) => plateIn(x, at).distance)
/** The plate that a joint's controller sits on; `air` where it is in free air. */
export const boardOn = word('controller.on', ['joint'], (x, { joint }) => x.joints[joint].controllerOn)
