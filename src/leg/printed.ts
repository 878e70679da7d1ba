import type { LegNumbers } from './leg-numbers.js'
import { isLayered, materialOf } from './schema/tables.js'

/** Whether parts of a material are built of layers. @internal */
export const isPrinted = ({ materials }: LegNumbers, material: string): boolean => isLayered(materialOf(material, materials))

/** Whether a leg has printed parts other than its toes. @internal */
export const hasPrints = (x: LegNumbers): boolean =>
  [
    ...Object.values(x.links).flatMap((link) => (typeof link === 'object' ? [link.material] : [])),
    ...Object.values(x.bosses).map(({ material }) => material),
    ...Object.values(x.plates).map(({ material }) => material),
    ...Object.values(x.bolts).flatMap(({ stack }) => stack.map(({ material }) => material)),
    ...Object.values(x.joints).flatMap((joint) => drivesOf(joint)),
  ].some((material) => isPrinted(x, material))

const drivesOf = (joint: LegNumbers['joints']['hip' | 'knee' | 'sidewaysHip']): string[] => {
  const drive = joint?.drive
  if (drive?.kind === 'cord') return [drive.drum.material]
  if (drive?.kind === 'belt') return [drive.material]
  return drive?.kind === 'gear' ? [drive.pinionMaterial, drive.wheelMaterial] : []
}
