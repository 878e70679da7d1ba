import { cordFibre, type FibreName } from '../../capstan/index.js'
import { typicalMotor } from '../../thermal/index.js'
import { ALL_CASE_IDS } from '../cases/events.js'
import type { LegSpecification } from '../document/fields.js'
import { migrate } from '../document/migrate.js'
import { boltGroups, boss, drive, LIMITS, link, mm, mountMass, pin, SINK, text } from './document-parts.js'
import type { LegSizes } from './sizes.js'
import { cordRigidity, type LegStock, pretensionLeft } from './stock.js'
import type { LegWishData } from './wish-fields.js'

/** Load cases that a proposal must pass: all there are. */
export const PROPOSAL_CASES = ALL_CASE_IDS

/** Mass of a motor from its can. */
export function motorMass(wish: LegWishData, { motor }: LegStock): number {
  const { price: _, ...five } = wish.motors[motor] as LegWishData['motors'][string]
  return typicalMotor(five).mass.si
}

const BEARINGS = [
  { size: '10x19x5', shaft: 'M10' },
  { size: '10x22x6', shaft: 'M10' },
  { size: '10x26x8', shaft: 'M10' },
  { size: '12x21x5', shaft: 'M12' },
] as const
/** A motor takes this times its rated current for the seconds of a landing. */
const SHORT_TIME = 1.5

/** Rate of the position loop. Small legs have stiff drives, which a loop of 1 kHz would be too slow to damp. */
const LOOP_RATE = '4 kHz'

/**
 * The document of a leg from a wish, what is taken from the lists, and the sizes: in the form that `describeLeg` reads. All that follows from other sizes
 * (lengths of pulleys, holes, plates, masses of links) is worked out here, so that no size contradicts another.
 */
export function legDocument(wish: LegWishData, stock: LegStock, sizes: LegSizes): LegSpecification {
  const motor = wish.motors[stock.motor] as LegWishData['motors'][string]
  const cord = wish.cords[stock.cord] as LegWishData['cords'][string]
  const { price: _, ...five } = motor
  const typical = typicalMotor(five)
  const plate = sizes.plateMargin + motor.canDiameter.si
  const { hot, cold, humidity } = wish.place
  return migrate({
    schemaVersion: 3,
    name: `${wish.name}: ${stock.motor}, ${stock.cord}, ${stock.frame}`,
    remark: 'A proposal from a wish. Nothing here was built; weigh, measure and test before you trust it.',
    robot: {
      mass: text(wish.robot.mass.si, 'kg'),
      legs: wish.robot.legs,
      standHeight: mm(sizes.stand * 2 * sizes.linkLength),
      hipSpacing: mm(wish.robot.hipSpacing.si),
      hipTrack: mm(wish.robot.hipTrack.si),
    },
    links: {
      hipOffset: mm(motor.canLength.si + sizes.plateThickness + 0.018),
      // The upper link carries the knee's motor with plate and sink, which the layout of version 3 counts in its mass.
      upper: link(stock.frame, sizes.linkLength, sizes.upperDepth, sizes.upperWall, typical.mass.si + mountMass(stock.frame, plate, sizes)),
      lower: link(stock.frame, sizes.linkLength, sizes.lowerDepth, sizes.lowerWall, 0),
    },
    joints: {
      sidewaysHip: { from: '-25 deg', to: '30 deg', holdingTorque: text(sizes.sidewaysHold, 'N m') },
      hip: { from: text(LIMITS.hip[0], 'deg'), to: text(LIMITS.hip[1], 'deg') },
      knee: { from: text(LIMITS.knee[0], 'deg'), to: text(LIMITS.knee[1], 'deg') },
    },
    cords: { cord: cordSection(cord) },
    drives: { hip: drive('hip', cord, stock, sizes), knee: drive('knee', cord, stock, sizes) },
    pins: { hip: pin(sizes.hipPin, sizes.hipCheek, sizes.hipLug), knee: pin(sizes.kneePin, sizes.kneeCheek, sizes.kneeLug) },
    bosses: {
      hip: boss(stock.frame, sizes.hipPin, sizes.hipBoss, sizes.hipFit, sizes.hipCheek, sizes.bossEdge),
      knee: boss(stock.frame, sizes.kneePin, sizes.kneeBoss, sizes.kneeFit, sizes.kneeCheek, sizes.bossEdge),
    },
    bolts: boltGroups(stock, sizes, motor.canDiameter.si),
    ...shaftSections(stock, sizes),
    motor: motorSection(motor, typical),
    plate: { material: stock.frame, thickness: mm(sizes.plateThickness), width: mm(plate), height: mm(plate) },
    ...(sizes.sinkThickness > 0 && {
      sink: { material: SINK, thickness: mm(sizes.sinkThickness), width: mm(plate), height: mm(plate), emissivity: 0.85 },
    }),
    controller: { currentLimit: text(SHORT_TIME * motor.ratedCurrent.si, 'A'), toAir: '9 K/W', loopRate: LOOP_RATE },
    foot: {
      toes: 2,
      toeLength: mm(sizes.toeLength),
      toeThickness: mm(sizes.toeThickness),
      toeWidth: mm(sizes.toeWidth),
      material: 'TPU 95A',
    },
    supply: { voltage: text(wish.supply.voltage.si, 'V'), currentLimit: text(wish.supply.currentLimit.si, 'A') },
    environment: { hotAir: text(hot.in('degC'), 'degC'), coldAir: text(cold.in('degC'), 'degC'), humidity: humidity.si },
    usage: usageSection(wish, sizes),
  }) as unknown as LegSpecification
}

type Typical = ReturnType<typeof typicalMotor>

const cordSection = (cord: LegWishData['cords'][string]) => ({
  fibre: cord.fibre,
  diameter: mm(cord.diameter.si),
  breakingStrength: text(cord.breakingStrength.si, 'N'),
  axialRigidity: text(cordRigidity(cord), 'N'),
  thermalExpansion: text(1e6 * cordFibre(cord.fibre as FibreName).expansion.si, 'ppm/K'),
  pretensionLeft: pretensionLeft(cord.fibre),
})

function shaftSections(stock: LegStock, sizes: LegSizes) {
  const { size, shaft } = BEARINGS[sizes.bearing] as (typeof BEARINGS)[number]
  return {
    shaft: {
      thread: shaft,
      propertyClass: '8.8',
      innerThread: 'M4',
      innerPropertyClass: '8.8',
      innerEngagement: '8 mm',
      innerTighteningTorque: '1.5 N m',
      capThickness: mm(sizes.capThickness),
      capSpan: '18 mm',
      capMaterial: SINK,
    },
    bearings: {
      size,
      spacing: mm(sizes.bearingSpacing),
      overhang: mm(sizes.plateThickness + 0.02),
      seatMaterial: stock.frame,
      seatInterference: mm(sizes.seatFit),
      retained: true,
    },
  }
}

const motorSection = (motor: LegWishData['motors'][string], typical: Typical) => ({
  speedConstant: text(motor.speedConstant.in('rpm/V'), 'rpm/V'),
  terminalResistance: text(motor.terminalResistance.si, 'ohm'),
  noLoadCurrent: text(typical.noLoadCurrent.si, 'A'),
  rotorInertia: text(1e6 * typical.rotorInertia.si, 'kg mm^2'),
  mass: text(typical.mass.si, 'kg'),
  canDiameter: mm(motor.canDiameter.si),
  canLength: mm(motor.canLength.si),
  mountInnerDiameter: mm(typical.ringInnerDiameter.si),
  mountOuterDiameter: mm(typical.ringOuterDiameter.si),
  windingToMount: text(typical.windingToStator.si + typical.statorToBase.si, 'K/W'),
  mountToCan: text(typical.statorToCan.si, 'K/W'),
})

/** Gaits and landings of the wish. */
function usageSection(wish: LegWishData, sizes: LegSizes) {
  const { stallTime, stridesPerDay, days } = wish.place
  const clearance = Math.max(0.02, wish.obstacles.height.si + 0.01)
  const gait = (speed: number, dutyFactor: number, stepLength: number) => ({
    speed: text(speed, 'm/s'),
    dutyFactor,
    stepLength: mm(stepLength),
    clearance: mm(clearance),
  })
  const trot = wish.trot ?? wish.walk
  return {
    walk: gait(wish.walk.speed.si, 0.75, wish.walk.stepLength.si),
    trot: gait(trot.speed.si, 0.55, trot.stepLength.si),
    hopHeight: mm(Math.min(0.03, wish.obstacles.drop.si)),
    dropHeight: mm(wish.obstacles.drop.si),
    landingTravel: mm(sizes.landing),
    slope: text(wish.obstacles.slope.in('deg'), 'deg'),
    stallTime: text(stallTime.si, 's'),
    stridesPerDay: stridesPerDay.si,
    days: days.si,
  }
}
