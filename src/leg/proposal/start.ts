import { cordFibre, type FibreName, proposeDrive } from '../../capstan/index.js'
import { materialByName } from '../../materials/index.js'
import { Quantity } from '../../units/index.js'
import { STANDARD_GRAVITY } from '../gravity.js'
import type { LegSizes } from './sizes.js'
import type { LegStock } from './stock.js'
import { cordRigidity, pretensionLeft } from './stock.js'
import { BED_MARGIN } from './wish.js'
import type { LegWishData } from './wish-fields.js'

/** Temperature at which a leg is put together, K. */
const ASSEMBLY = 293.15
/** A foot of a drop carries this times its share of the weight, about. */
const SHOCK = 2.5

/** Lever arm of the foot about the knee of a folded leg over the length of a link. */
const ARM = 0.6

/**
 * Sizes to begin with: a leg long enough for step and obstacle, drives that `proposeDrive` finds for a landing, the rest as one would draw it. The search mends
 * what falls short.
 */
export function startOf(wish: LegWishData, stock: LegStock): LegSizes {
  const { walk, trot, obstacles, printer, robot } = wish
  const step = Math.max(walk.stepLength.si, trot?.stepLength.si ?? 0)
  const longest = printer.bed.si - BED_MARGIN
  const linkLength = Math.min(longest, Math.max(0.11, 1.3 * step, 2.2 * obstacles.height.si + 0.06))
  const foot = (SHOCK * robot.mass.si * STANDARD_GRAVITY) / 2
  const torque = ARM * linkLength * foot
  const heavy = Math.sqrt(robot.mass.si / 10)
  const sizes: LegSizes = {
    linkLength,
    stand: 0.86,
    hipRatio: 6,
    kneeRatio: 6,
    bendRatio: 10,
    hipPretension: 150,
    kneePretension: 150,
    tensionerTravel: 14e-3,
    anchorDiameter: 4e-3,
    anchorLength: 10e-3,
    drumBolts: 3,
    hipPin: heavy > 1.3 ? 4 : 2,
    kneePin: heavy > 1.3 ? 4 : 2,
    hipCheek: 10e-3 * heavy,
    kneeCheek: 10e-3 * heavy,
    hipLug: 14e-3 * heavy,
    kneeLug: 14e-3 * heavy,
    hipBoss: 3.75,
    kneeBoss: 3.75,
    hipFit: 0.006,
    kneeFit: 0.006,
    bossEdge: 2.25,
    upperDepth: 34e-3,
    upperWall: 2.4e-3,
    lowerDepth: 24e-3,
    lowerWall: 2.4e-3,
    stackThread: 0,
    stackArm: 48e-3,
    motorThread: 0,
    tightening: 0.6,
    plateThickness: 7e-3,
    plateMargin: 24e-3,
    sinkThickness: 3e-3,
    bearing: 2,
    bearingSpacing: 30e-3,
    seatFit: 0.05e-3,
    capThickness: 3e-3,
    toeThickness: 11e-3,
    toeLength: 32e-3,
    toeWidth: 16e-3,
    sidewaysHold: 12 * heavy,
    landing: 0.4 * linkLength,
  }
  return { ...sizes, ...proposed(wish, stock, torque) }
}

/** Ratio, pinion and pretension of the first proposal for a torque, trying lower ratios until one fits; what the sizes have where none does. */
function proposed(wish: LegWishData, stock: LegStock, torque: number): Partial<LegSizes> {
  const cord = wish.cords[stock.cord] as LegWishData['cords'][string]
  const { friction, expansion } = cordFibre(cord.fibre as FibreName)
  // The pretension must outlast the coldest morning: a cord that goes slack has no torque at all, and the search would not see which way to go.
  const { hot, cold } = wish.place
  const frame = materialByName(stock.frame).thermalExpansion
  for (const ratio of [8, 7, 6, 5]) {
    const { proposals } = proposeDrive({
      ratio,
      torque: new Quantity(torque, 'torque'),
      travel: '130 deg',
      drumSpace: '160 mm',
      axialSpace: '60 mm',
      hold: 'clampedMidPinion',
      requiredReserve: 1.3,
      coldest: new Quantity(Math.min(0, cold.si - ASSEMBLY), 'temperatureDifference'),
      warmest: new Quantity(Math.max(0, hot.si - ASSEMBLY), 'temperatureDifference'),
      ...(frame !== undefined && { frameExpansion: new Quantity(frame.si, frame.kind) }),
      cords: {
        cord: {
          diameter: cord.diameter,
          breakingStrength: cord.breakingStrength,
          axialRigidity: new Quantity(cordRigidity(cord), 'axialRigidity'),
          friction: { low: friction.low, high: friction.high },
          expansion,
          pretensionLeft: pretensionLeft(cord.fibre)[1],
        },
      },
    })
    const [first] = proposals
    if (first === undefined) continue
    const { bendRatio, pretension } = first.design
    return { hipRatio: ratio, kneeRatio: ratio, bendRatio: bendRatio.si, hipPretension: pretension.si, kneePretension: pretension.si }
  }
  return {}
}
