import { type Kind, Quantity, significant } from '../../units/index.js'
import type { LegNumbers } from '../leg-numbers.js'
import { type DrivenJoint, driveKindOf } from '../numbers.js'

/** Kinds of the fields that logs tell; those that are not here are plain ratios. */
const KINDS: Readonly<Record<string, Kind>> = {
  axialRigidity: 'axialRigidity',
  pretension: 'force',
  windingToMount: 'thermalResistance',
  specificHeat: 'specificHeat',
  speedConstant: 'speedConstant',
  noLoadCurrent: 'current',
  clearance: 'length',
  stiffness: 'torsionalStiffness',
  freeAngle: 'angle',
  freeLength: 'length',
  initialTension: 'force',
  beyond: 'length',
}

/** Kind of a field by its path: a rate is a torque or a force over its deflection. The backlash of gears is along their pitch circle, that of a gearbox an angle. */
export function kindOf(x: LegNumbers, path: string): Kind {
  const [, joint, , name = path.split('.').at(-1)] = path.split('.')
  if (name === 'backlash') return driveKindOf(x, joint as DrivenJoint) === 'gear' ? 'length' : 'angle'
  if (name === 'rate') return x.joints[joint as 'hip']?.spring?.kind === 'torsion' ? 'torsionalStiffness' : 'linearStiffness'
  return KINDS[name as string] ?? 'ratio'
}

/** A number of a field as a reader would write it. */
export const shown = (leg: LegNumbers, path: string, x: number): string => {
  const kind = kindOf(leg, path)
  return kind === 'ratio' ? significant(x, 4) : String(new Quantity(x, kind))
}
