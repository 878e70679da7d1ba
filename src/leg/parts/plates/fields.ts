import { field, optional, reference, word } from '../../leaves.js'

export const material = reference('plate.material', ['plate'], 'material', (x) => x.plate.material)
export const thickness = field('plate.thickness', ['plate'], 'length', (x) => x.plate.thickness)
export const width = field('plate.width', ['plate'], 'length', (x) => x.plate.width)
export const height = field('plate.height', ['plate'], 'length', (x) => x.plate.height)
export const emissivity = field('plate.emissivity', ['plate'], 'ratio', (x) => x.plate.emissivity)
export const contactConductance = field('plate.contactConductance', ['plate'], 'heatTransferCoefficient', (x) => x.plate.contactConductance)
/** Whether a metal sink lies between motor and plate. */
export const hasSink = word('plate.hasSink', ['plate'], (x) => x.sink !== undefined)
export const sink = {
  material: reference('sink.material', ['plate'], 'material', (x) => x.sink?.material ?? x.plate.material),
  thickness: optional('sink.thickness', ['plate'], 'length', (x) => x.sink?.thickness),
  width: optional('sink.width', ['plate'], 'length', (x) => x.sink?.width),
  height: optional('sink.height', ['plate'], 'length', (x) => x.sink?.height),
  emissivity: optional('sink.emissivity', ['plate'], 'ratio', (x) => x.sink?.emissivity),
}
