import { centreLineRadius, cordFibre, type FibreName, groove, pinionLength } from '../../capstan/index.js'
import { metricThread, propertyClass, tighteningTorque } from '../../fasteners/index.js'
import { materialByName, requireProperty } from '../../materials/index.js'
import { boxSection } from '../../structures/index.js'
import { typicalMotor } from '../../thermal/index.js'
import { ALL_CASE_IDS } from '../cases/events.js'
import type { LegSpecification } from '../document/fields.js'
import { migrate } from '../document/migrate.js'
import type { LegSizes } from './sizes.js'
import { cordRigidity, pretensionLeft } from './stock.js'
import type { LegWishData } from './wish-fields.js'

/** What is taken from the builder's lists for one leg. */
export interface LegStock {
  /** Name of the motor in the wish. */
  readonly motor: string
  /** Name of the cord in the wish. */
  readonly cord: string
  /** Polymer of links, plate and bosses, and that of the drums. */
  readonly frame: string
  /** Polymer of the drums. */
  readonly drum: string
}

/** Load cases that a proposal must pass: all there are. */
export const PROPOSAL_CASES = ALL_CASE_IDS

/** Metal of the sinks and of the end cap. */
export const SINK = 'aluminium 6061-T6'

/** Mass of a motor from its can. */
export function motorMass(wish: LegWishData, { motor }: LegStock): number {
  const { price: _, ...five } = wish.motors[motor] as LegWishData['motors'][string]
  return typicalMotor(five).mass.si
}

/** Joint limits of every proposal: zero is the leg straight down. */
const LIMITS = { hip: [-80, 50], knee: [15, 140] } as const
const TURN = 360
const STACK_THREADS = ['M4', 'M5', 'M6', 'M8'] as const
const MOTOR_THREADS = ['M3', 'M4', 'M5', 'M6'] as const
const BEARINGS = [
  { size: '10x19x5', shaft: 'M10' },
  { size: '10x22x6', shaft: 'M10' },
  { size: '10x26x8', shaft: 'M10' },
  { size: '12x21x5', shaft: 'M12' },
] as const
/** Diameters of hardened pins, mm. */
export const PINS = [2.5, 3, 4, 5, 6, 8] as const
/** A motor takes this times its rated current for the seconds of a landing. */
const SHORT_TIME = 1.5

/** Rate of the position loop. Small legs have stiff drives, which a loop of 1 kHz would be too slow to damp. */
const LOOP_RATE = '4 kHz'
/** Friction in thread and under the head that the tightening torque is worked out with, and the share of the proof load. */
const FRICTION = 0.14
const PROOF_SHARE = 0.4

const mm = (x: number): `${number} mm` => `${Number((1000 * x).toPrecision(6))} mm`
const text = <U extends string>(x: number, unit: U): `${number} ${U}` => `${Number(x.toPrecision(6))} ${unit}`

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
  const { hot, cold, humidity, stallTime, stridesPerDay, days } = wish.place
  const clearance = Math.max(0.02, wish.obstacles.height.si + 0.01)
  const gait = (speed: number, dutyFactor: number, stepLength: number) => ({
    speed: text(speed, 'm/s'),
    dutyFactor,
    stepLength: mm(stepLength),
    clearance: mm(clearance),
  })
  const trot = wish.trot ?? wish.walk
  const { size, shaft } = BEARINGS[sizes.bearing] as (typeof BEARINGS)[number]
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
    cords: {
      cord: {
        fibre: cord.fibre,
        diameter: mm(cord.diameter.si),
        breakingStrength: text(cord.breakingStrength.si, 'N'),
        axialRigidity: text(cordRigidity(cord), 'N'),
        thermalExpansion: text(1e6 * cordFibre(cord.fibre as FibreName).expansion.si, 'ppm/K'),
        pretensionLeft: pretensionLeft(cord.fibre),
      },
    },
    drives: { hip: drive('hip', cord, stock, sizes), knee: drive('knee', cord, stock, sizes) },
    pins: { hip: pin(sizes.hipPin, sizes.hipCheek, sizes.hipLug), knee: pin(sizes.kneePin, sizes.kneeCheek, sizes.kneeLug) },
    bosses: {
      hip: boss(stock.frame, sizes.hipPin, sizes.hipBoss, sizes.hipFit, sizes.hipCheek, sizes.bossEdge),
      knee: boss(stock.frame, sizes.kneePin, sizes.kneeBoss, sizes.kneeFit, sizes.kneeCheek, sizes.bossEdge),
    },
    bolts: boltGroups(stock, sizes, motor.canDiameter.si),
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
    motor: {
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
    },
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
    usage: {
      walk: gait(wish.walk.speed.si, 0.75, wish.walk.stepLength.si),
      trot: gait(trot.speed.si, 0.55, trot.stepLength.si),
      hopHeight: mm(Math.min(0.03, wish.obstacles.drop.si)),
      dropHeight: mm(wish.obstacles.drop.si),
      landingTravel: mm(sizes.landing),
      slope: text(wish.obstacles.slope.in('deg'), 'deg'),
      stallTime: text(stallTime.si, 's'),
      stridesPerDay: stridesPerDay.si,
      days: days.si,
    },
  }) as unknown as LegSpecification
}

/** Mass of a square plate with its sink. */
function mountMass(material: string, side: number, { plateThickness, sinkThickness }: LegSizes): number {
  return side * side * (plateThickness * densityOf(material) + sinkThickness * densityOf(SINK))
}

/** Pins, screws and cord on a link. */
const SMALL_PARTS = 0.03

/** A printed link: a box as wide as three quarters of its depth; its mass is that of the box and of what it carries. */
function link(material: string, length: number, depth: number, wall: number, carries: number) {
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

function drive(joint: 'hip' | 'knee', cord: LegWishData['cords'][string], stock: LegStock, sizes: LegSizes) {
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

const pin = (place: number, cheek: number, lug: number) => ({
  size: `ISO 8734 ${PINS[place]} mm m6`,
  cheekThickness: mm(cheek),
  lugThickness: mm(lug),
})

function boss(material: string, place: number, over: number, fit: number, engagement: number, edge: number) {
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

function boltGroups(stock: LegStock, sizes: LegSizes, can: number) {
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
