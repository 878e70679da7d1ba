import { formula } from '../formula/index.js'
import { crankFromRockerInto } from './four-bar-angles.js'
import { fourBarDriveRatio } from './four-bar-rates.js'
import { KNEE_ANGLE, KNEE_LIMITS } from './link-inputs.js'

/** A four-bar between hip and knee, as inputs. Angles are taken from the direction hip to knee, right-handed about +y. */
export const KNEE_LINKAGE = {
  /** Distance from hip axis to knee axis. */
  ground: { kind: 'length', above: 0 },
  /** Length of the crank on the hip axis. */
  crank: { kind: 'length', above: 0 },
  /** Distance of the pins of the rod. */
  coupler: { kind: 'length', above: 0 },
  /** Length of the rocker on the shank. */
  rocker: { kind: 'length', above: 0 },
  /** Direction of the rocker with the knee straight. */
  rockerAngleAtStraightKnee: 'angle',
  /** Side of the line from hip axis to rocker pin on which the crank lies; positive is right-handed about +y. */
  crankSide: { oneOf: ['positive', 'negative'] },
} as const

/** Directions of the links of a four-bar knee at a knee angle, with its ratio, the change of the ratio, and dead points. */
export const fourBarKneePose = /* @__PURE__ */ formula('kinematics.fourBarKneePose', {
  title: 'pose of a four-bar knee',
  inputs: {
    ...KNEE_LINKAGE,
    ...KNEE_ANGLE,
  },
  output: {
    /** Direction of the crank, without a jump where the knee turns on; in line with the rod where the links do not reach. */
    crankAngle: 'angle',
    /** Direction of the rod, from crank pin to rocker pin. */
    couplerAngle: 'angle',
    /** Direction of the rocker. */
    rockerAngle: 'angle',
    /** Turns of the crank per turn of the knee; infinite at a dead point of the crank and where the links do not reach. */
    ratio: { kind: 'ratio', infinite: true },
    /** Change of that ratio with the knee angle; infinite as the ratio. */
    ratioSlope: { kind: 'ratio', infinite: true },
    /** Acute angle between rod and rocker. */
    transmissionAngle: 'angle',
    /** Whether the crank drives the knee (`fourBarDriveRatio`), or the links do not reach at this knee angle. */
    state: { oneOf: ['drives', 'crankDeadPoint', 'rockerDeadPoint', 'apart'] },
  },
  assumes: ['rigid links, no clearance in the pins'],
  source: [
    { level: 'unverified', where: 'F. Freudenstein, Trans. ASME 77 (1955) 853: closure of the four-bar' },
    { level: 'unverified', where: 'R. L. Norton, Design of Machinery, ch. 6: speed ratio' },
  ],
  si: ({ ground, crank, coupler, rocker, rockerAngleAtStraightKnee, crankSide, kneeAngle }) => {
    const rockerAngle = rockerAngleAtStraightKnee + kneeAngle
    const pose = new Float64Array(3)
    const closes = crankFromRockerInto(pose, 0, { ground, crank, coupler, rocker }, rockerAngle, crankSide === 'positive' ? 1 : -1)
    if (closes) {
      const [crankAngle, couplerAngle] = pose as unknown as [number, number]
      const { couplerRatio: _, ...drive } = fourBarDriveRatio.si({ crank, coupler, rocker, crankAngle, couplerAngle, rockerAngle })
      // The pin of a rocker longer than the ground goes round the hip axis with it.
      const turns = rocker > ground ? Math.round((rockerAngle - pose[2]!) / (2 * Math.PI)) : 0
      return { crankAngle: crankAngle + 2 * Math.PI * turns, couplerAngle, rockerAngle, ...drive }
    }
    const [pinX, pinY] = [ground + rocker * Math.cos(rockerAngle), rocker * Math.sin(rockerAngle)]
    const crankAngle = Math.atan2(pinY, pinX) + (Math.hypot(pinX, pinY) < coupler - crank ? Math.PI : 0)
    const couplerAngle = Math.atan2(pinY - crank * Math.sin(crankAngle), pinX - crank * Math.cos(crankAngle))
    const across = rockerAngle - couplerAngle
    return {
      crankAngle,
      couplerAngle,
      rockerAngle,
      ratio: Number.POSITIVE_INFINITY,
      ratioSlope: Number.POSITIVE_INFINITY,
      transmissionAngle: Math.atan2(Math.abs(Math.sin(across)), Math.abs(Math.cos(across))),
      state: 'apart' as const,
    }
  },
})

/** Where a four-bar knee is at a dead point or comes apart: inside the knee's limits, or how far beyond them. */
export const fourBarDeadPoint = /* @__PURE__ */ formula('kinematics.fourBarDeadPoint', {
  title: 'dead points of a four-bar knee',
  inputs: {
    ...KNEE_LINKAGE,
    ...KNEE_LIMITS,
  },
  output: {
    /** Distance from the limits to the nearest dead point; zero where one is inside, infinite where the linkage has none. */
    margin: { kind: 'angle', infinite: true },
    /** Knee angle of that dead point, of several inside the first above the lowest; infinite where the linkage has none. */
    kneeAngle: { kind: 'angle', infinite: true },
    /** Whether the crank drives the knee throughout, or which dead point is inside; `apart` where the links do not reach at the lowest knee angle. */
    state: { oneOf: ['drivesThroughout', 'crankDeadPoint', 'rockerDeadPoint', 'apart'] },
  },
  assumes: ['rigid links, no clearance in the pins', 'the linkage stays on the side of the crank that is given'],
  requires: {
    kneeHighest: { accepts: 'must be at least the lowest', holds: ({ kneeLowest, kneeHighest }) => kneeHighest >= kneeLowest },
  },
  source: [{ level: 'computed', where: 'cosine rule with crank and coupler, and with rocker and coupler, in line' }],
  si: ({ kneeLowest, kneeHighest, ...linkage }) => {
    const side = linkage.crankSide === 'positive' ? 1 : -1
    let best = { distance: Number.POSITIVE_INFINITY, kneeAngle: Number.POSITIVE_INFINITY, state: 'drivesThroughout' as DeadPoint['state'] }
    for (const { rockerAngle, state } of deadPoints(linkage, side)) {
      const kneeAngle = nearestTurn(rockerAngle - linkage.rockerAngleAtStraightKnee, kneeLowest, kneeHighest)
      const distance = Math.max(0, kneeLowest - kneeAngle, kneeAngle - kneeHighest)
      if (distance < best.distance || (distance === 0 && kneeAngle < best.kneeAngle - SAME_DEAD_POINT))
        best = { distance, kneeAngle, state }
    }
    const pose = new Float64Array(3)
    const closes = crankFromRockerInto(pose, 0, linkage, linkage.rockerAngleAtStraightKnee + kneeLowest, side)
    return {
      margin: best.distance,
      kneeAngle: best.kneeAngle,
      state: closes ? (best.distance === 0 ? best.state : ('drivesThroughout' as const)) : ('apart' as const),
    }
  },
})

/** Dead points nearer than this are one, as those of crank and rocker of a parallelogram: that of the crank counts. */
const SAME_DEAD_POINT = 1e-6

/** The links of a parallelogram just come into line: rounding of their lengths may not lose its dead points. */
const ROUNDING = 1e-12
const withinOne = (cosine: number): number => (Math.abs(cosine) > 1 - ROUNDING ? Math.sign(cosine) : cosine)

interface DeadPoint {
  readonly rockerAngle: number
  readonly state: 'drivesThroughout' | 'crankDeadPoint' | 'rockerDeadPoint'
}

export interface Linkage {
  readonly ground: number
  readonly crank: number
  readonly coupler: number
  readonly rocker: number
  readonly rockerAngleAtStraightKnee: number
}

/** Of the whole turns of an angle, the first one within limits, or the nearest to them. */
export function nearestTurn(angle: number, lowest: number, highest: number): number {
  const first = angle + 2 * Math.PI * Math.ceil((lowest - angle) / (2 * Math.PI))
  return first <= highest ? first : angle + 2 * Math.PI * Math.round(((lowest + highest) / 2 - angle) / (2 * Math.PI))
}

/** Dead points of a linkage with its crank on one side, by the direction of the rocker. */
export function deadPoints({ ground, crank, coupler, rocker }: Linkage, side: -1 | 1): DeadPoint[] {
  const found: DeadPoint[] = []
  // Crank and coupler in line: hip axis and rocker pin are apart by their sum or their difference. The crank's side plays no part there.
  for (const apart of [coupler + crank, coupler - crank]) {
    const cosine = (apart * apart - ground * ground - rocker * rocker) / (2 * ground * rocker)
    if (Math.abs(cosine) > 1 + ROUNDING) continue
    const turn = Math.acos(withinOne(cosine))
    for (const rockerAngle of [turn, -turn]) found.push({ rockerAngle, state: 'crankDeadPoint' })
  }
  // Rocker and coupler in line: knee axis and crank pin are apart by their sum or their difference.
  for (const apart of [coupler + rocker, Math.abs(coupler - rocker)]) {
    const cosine = (ground * ground + crank * crank - apart * apart) / (2 * ground * crank)
    if (Math.abs(cosine) > 1 + ROUNDING || apart === 0) continue
    const turn = Math.acos(withinOne(cosine))
    const away = apart === coupler - rocker && coupler > rocker ? Math.PI : 0
    for (const crankAngle of [turn, -turn]) {
      const [x, y] = [crank * Math.cos(crankAngle), crank * Math.sin(crankAngle)]
      const rockerAngle = Math.atan2(y, x - ground) + away
      const crankSide = (ground + rocker * Math.cos(rockerAngle)) * y - rocker * Math.sin(rockerAngle) * x
      if (crankSide * side > 0) found.push({ rockerAngle, state: 'rockerDeadPoint' })
    }
  }
  return found
}
