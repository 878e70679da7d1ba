import { centreLineRadius, cordFibre, type FibreName, groove, pinionLength } from '../../capstan/index.js'
import { metricThread, propertyClass, tighteningTorque } from '../../fasteners/index.js'
import { materialByName, requireProperty } from '../../materials/index.js'
import { boxSection } from '../../structures/index.js'
import type { LegSizes } from './sizes.js'
import type { LegStock } from './stock.js'
import type { LegWishData } from './wish-fields.js'

/** Metal of the sinks and of the end cap. */
export const SINK = 'aluminium 6061-T6'

/** Joint limits of every proposal: zero is the leg straight down. */
export const LIMITS = { hip: [-80, 50], knee: [15, 140] } as const
const TURN = 360
const STACK_THREADS = ['M4', 'M5', 'M6', 'M8'] as const
const MOTOR_THREADS = ['M3', 'M4', 'M5', 'M6'] as const
/** Diameters of hardened pins, mm. */
export const PINS = [2.5, 3, 4, 5, 6, 8] as const
/** Friction in thread and under the head that the tightening torque is worked out with, and the share of the proof load. */
const FRICTION = 0.14
const PROOF_SHARE = 0.4

export const mm = (x: number): `${number} mm` => `${Number((1000 * x).toPrecision(6))} mm`
export const text = <U extends string>(x: number, unit: U): `${number} ${U}` => `${Number(x.toPrecision(6))} ${unit}`

/** Mass of a square plate with its sink. */
export function mountMass(material: string, side: number, { plateThickness, sinkThickness }: LegSizes): number {
  return side * side * (plateThickness * densityOf(material) + sinkThickness * densityOf(SINK))
}

/** Pins, screws and cord on a link. */
const SMALL_PARTS = 0.03

/** A printed link: a box as wide as three quarters of its depth; its mass is that of the box and of what it carries. */
export function link(material: string, length: number, depth: number, wall: number, carries: number) {
  const width = 0.75 * depth
  const { area } = boxSection.si({ width, depth, wall })
  const mass = area * length * densityOf(material) + SMALL_PARTS + carries
  return { length: mm(length), mass: text(mass, 'kg'), material, width: mm(width), depth: mm(depth), wall: mm(wall) }
}

/** Density of a material of the table, kg/m³. */
export function densityOf(name: string): number {
  return requireProperty('proposeLeg', materialByName(name), 'density').si
}

/** Tensile strength of a material of the table, Pa. Throws where the table has none. */
export function strengthOf(name: string): number {
  return requireProperty('proposeLeg', materialByName(name), 'tensileStrength').si
}

/** Ratio, pinion and pretension of a joint's drive, and its pulleys' radii to the cord's centre line. */
export function pulleys(joint: 'hip' | 'knee', cordDiameter: number, sizes: LegSizes) {
  const ratio = joint === 'hip' ? sizes.hipRatio : sizes.kneeRatio
  const pinionRadius = (sizes.bendRatio * cordDiameter) / 2
  return { ratio, pinionRadius, drumRadius: ratio * pinionRadius, pretension: joint === 'hip' ? sizes.hipPretension : sizes.kneePretension }
}

export function drive(joint: 'hip' | 'knee', cord: LegWishData['cords'][string], stock: LegStock, sizes: LegSizes) {
  const diameter = cord.diameter.si
  const { ratio, pinionRadius, drumRadius, pretension } = pulleys(joint, diameter, sizes)
  const { pitch } = groove.si({ cordDiameter: diameter, pitchClearance: 0.2, seatFactor: 0.54, depthFactor: 0.33 })
  const travel = ((LIMITS[joint][1] - LIMITS[joint][0]) / TURN) * 2 * Math.PI
  const wraps = Math.ceil((ratio * travel) / (2 * Math.PI) + 1)
  const grooved = pinionLength.si({ groovePitch: pitch, wraps: wraps + 1, ratio, travel, spare: 0.5 }).length
  // The bottom of the groove, where a calliper reaches: half a cord below the centre line either side.
  const bottom = (radius: number) => 2 * (radius - centreLineRadius.si({ grooveDiameter: 0, cordDiameter: diameter }))
  const nearest = pinionRadius + drumRadius + 3 * diameter
  const { friction } = cordFibre(cord.fibre as FibreName)
  return {
    arrangement: 'crossed',
    pinion: { grooveDiameter: mm(bottom(pinionRadius)), wraps, length: mm(grooved) },
    drum: {
      grooveDiameter: mm(bottom(drumRadius)),
      material: stock.drum,
      bore: mm(Math.min(joint === 'hip' ? 0.022 : 0.016, drumRadius)),
      length: mm(Math.max(0.012, pitch * (travel / (2 * Math.PI) + 2.5))),
      groovePitch: mm(pitch),
      throughBolts: sizes.drumBolts,
    },
    centreDistance: mm(joint === 'hip' ? nearest : Math.max(nearest, 0.72 * sizes.linkLength)),
    cord: 'cord',
    pretension: text(pretension, 'N'),
    friction: [friction.low, friction.si, friction.high],
    hold: 'clampedMidPinion',
    ends: 'splice',
    anchor: { postDiameter: mm(sizes.anchorDiameter), postLength: mm(sizes.anchorLength), edgeDistance: mm(2.25 * sizes.anchorDiameter) },
    tensioner: { thread: 'M3', travel: mm(sizes.tensionerTravel) },
  }
}

export const pin = (place: number, cheek: number, lug: number) => ({
  size: `ISO 8734 ${PINS[place]} mm m6`,
  cheekThickness: mm(cheek),
  lugThickness: mm(lug),
})

export function boss(material: string, place: number, over: number, fit: number, engagement: number, edge: number) {
  const diameter = (PINS[place] as number) * 1e-3
  return {
    material,
    outerDiameter: mm(over * diameter),
    hole: mm(diameter * (1 - fit)),
    holeScatter: '0.01 mm',
    engagement: mm(engagement),
    edgeDistance: mm(edge * diameter),
    axis: 'acrossLayers',
  }
}

export function boltGroups(stock: LegStock, sizes: LegSizes, can: number) {
  const arm = sizes.stackArm
  const near = Math.min(8e-3, arm / 3)
  const group = (thread: string) => ({
    thread,
    propertyClass: '8.8',
    count: 4,
    tighteningTorque: text(sizes.tightening * usualTorque(thread), 'N m'),
    sleeves: true,
  })
  const plate = { material: stock.frame, thickness: mm(sizes.plateThickness) }
  return {
    stack: {
      ...group(STACK_THREADS[sizes.stackThread] as string),
      nut: 'onWasher',
      rows: [mm(near), mm(near), mm(arm), mm(arm)],
      leverArm: mm(0.058),
      stack: [plate, { material: stock.frame, thickness: '8 mm' }],
    },
    motor: {
      ...group(MOTOR_THREADS[sizes.motorThread] as string),
      nut: 'tappedMetal',
      circleDiameter: mm(0.48 * can),
      stack: [...(sizes.sinkThickness > 0 ? [{ material: SINK, thickness: mm(sizes.sinkThickness) }] : []), plate],
    },
  }
}

/** Tightening torque at a share of the proof load. */
function usualTorque(name: string): number {
  const thread = metricThread.si(name as 'M4')
  const { proofStress } = propertyClass.si('8.8')
  const preload = PROOF_SHARE * proofStress * thread.stressArea
  const ring = { bearingDiameter: 2 * thread.diameter, holeDiameter: 1.1 * thread.diameter }
  return tighteningTorque.si({ preload, thread, threadFriction: FRICTION, headFriction: FRICTION, ...ring, prevailingTorque: 0 }).torque
}
