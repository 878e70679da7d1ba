import type { Check } from '../../cases/check.js'
import type { LegNumbers } from '../../leg-numbers.js'
import type { Joint } from '../../numbers.js'
import { ZONE } from '../prints/values.js'
import * as loads from './loads.js'
import { tappedChecks } from './tapped.js'
import * as tightening from './tightening.js'
import { preload } from './values.js'

const SIDES = {
  stack: {
    name: 'stack bolt joint',
    scope: 'leg',
    pressure: loads.stackPressure,
    pressureAllowed: loads.stackPressureAllowed,
    notPressed: loads.stackNotPressed,
    shear: loads.stackShear,
    slip: loads.stackSlip,
  },
  motor: {
    name: 'motor bolt joint',
    scope: 'joint',
    pressure: loads.motorPressure,
    pressureAllowed: loads.motorPressureAllowed,
    notPressed: loads.motorNotPressed,
    shear: loads.motorShear,
    slip: loads.motorSlip,
  },
} as const

/** The group that holds the plate of the hip, and that of a joint's motor. */
const GROUPS = {
  stack: (x: LegNumbers) => groupOr(x.plates[x.joints.hip.plate ?? '']?.bolts, 'the plate of the hip has no bolts of its own'),
  motor: (x: LegNumbers, joint: Joint) => groupOr(x.joints[joint].motorBolts, 'no bolts are given for its motor'),
}
const groupOr = (boltGroup: string | undefined, why: string) => (boltGroup === undefined ? why : { boltGroup })

/** Checks of the bolts under their load. */
function jointChecksOf(group: 'stack' | 'motor'): readonly Check[] {
  const { name, scope, pressure, pressureAllowed, notPressed, shear, slip } = SIDES[group]
  const of = GROUPS[group]
  return [
    {
      id: `${group}Bolt.tightening`,
      part: name,
      mode: 'yields when it is tightened',
      consequence: 'breaks',
      kind: 'force',
      scope,
      of,
      when: ['asBuilt'],
      demand: preload,
      capacity: tightening.preloadAllowed,
      demandIs: 'the preload from the tightening torque',
      capacityIs: 'the preload at nine tenths of yield, torsion included',
      remedy: 'less torque or a higher property class',
    },
    {
      id: `${group}Bolt.headPressure`,
      part: `clamped part under the heads of the ${group} bolts`,
      mode: 'is crushed',
      consequence: 'fails to work',
      kind: 'stress',
      scope,
      of,
      when: ['walks', 'repeats'],
      demand: pressure,
      capacity: pressureAllowed,
      unless: notPressed,
      demandIs: 'the pressure under head or washer at full preload, with what warm layers add',
      capacityIs: 'the strength of the clamped part for a day at its temperature',
      remedy: 'large washers, metal sleeves, or less torque',
    },
    {
      id: `${group}Bolt.slip`,
      part: name,
      mode: 'lets the clamped parts slide',
      consequence: 'fails to work',
      kind: 'force',
      scope,
      of,
      when: ['moves', 'rare'],
      demand: shear,
      capacity: slip,
      demandIs: 'the force across each bolt',
      capacityIs: 'the friction of the clamp load after heat, months and cold',
      remedy: 'metal sleeves, a dowel or a shoulder that takes the force across, or tightening again after a week',
    },
  ]
}

/** Checks of what holds the nut and bears the head. */
function printChecksOf(group: 'stack' | 'motor'): readonly Check[] {
  const { scope } = SIDES[group]
  const of = GROUPS[group]
  return [
    {
      id: `${group}Bolt.nut`,
      part: `nut pocket of the ${group} bolts`,
      mode: 'lets its nut round out',
      consequence: 'fails to work',
      kind: 'torque',
      scope,
      of,
      when: ['asBuilt'],
      demand: tightening.nutTorque,
      capacity: tightening.roundingTorque,
      unless: tightening.noPocket,
      demandIs: 'the torque that the thread puts on the nut',
      capacityIs: 'the torque at which the flats of the print yield',
      remedy: 'a six-sided pocket instead of a slot, a taller nut, a metal insert plate, or a spanner that holds the nut',
    },
    {
      id: `${group}Bolt.zone`,
      part: `print under the heads of the ${group} bolts`,
      scope,
      of,
      demand: tightening.zoneNeeded,
      capacity: tightening.zoneSolid,
      unless: tightening.sleeved,
      remark: tightening.zoneRemark,
      ...ZONE,
    },
  ]
}

/** Checks of the groups of bolts. */
export const boltChecks: readonly Check[] = [
  ...jointChecksOf('stack'),
  ...printChecksOf('stack'),
  {
    id: 'stackBolt.separation',
    part: 'stack bolt joint',
    mode: 'lets the clamped parts separate',
    consequence: 'fails to work',
    kind: 'force',
    scope: 'leg',
    of: GROUPS.stack,
    when: ['moves', 'rare'],
    demand: loads.stackPull,
    capacity: loads.separationPull,
    demandIs: 'the pull on the hardest loaded bolt from the bending moment of the foot force',
    capacityIs: 'the pull at which the clamp load after months, and in the cold, is used up',
    remedy: 'metal sleeves that carry the clamp load, a wider bolt pattern, or tightening again after a week',
  },
  {
    id: 'stackBolt.overload',
    part: 'stack bolt joint',
    mode: 'is pulled beyond its proof load',
    consequence: 'breaks',
    kind: 'force',
    scope: 'leg',
    of: GROUPS.stack,
    when: ['oneMoment'],
    demand: loads.stackPull,
    capacity: loads.overloadPull,
    demandIs: 'the pull on the hardest loaded bolt',
    capacityIs: 'the pull that takes the bolt from its preload, with what warm layers add, to its proof load',
    remedy: 'thicker bolts, less preload, or a wider bolt pattern',
  },
  ...jointChecksOf('motor'),
  ...printChecksOf('motor'),
  ...tappedChecks(GROUPS.motor),
]
