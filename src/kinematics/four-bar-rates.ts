import { formula } from '../formula/index.js'
import { COUPLER, CRANK, FOUR_BAR_POSE, ROCKER } from './four-bar-inputs.js'

// Directions of crank, coupler and rocker, right-handed; plain numbers, so that a control loop can use them without objects.

/** Crank speed over rocker speed. */
export const crankOverRocker = (crank: number, rocker: number, t2: number, t3: number, t4: number) =>
  (rocker * Math.sin(t4 - t3)) / (crank * Math.sin(t2 - t3))

/** Coupler speed over rocker speed: the closure, projected square to the crank. */
export const couplerOverRocker = (coupler: number, rocker: number, t2: number, t3: number, t4: number) =>
  (rocker * Math.sin(t4 - t2)) / (coupler * Math.sin(t3 - t2))

/** Change of crank speed over rocker speed with the rocker's angle. */
export function crankOverRockerSlope(crank: number, coupler: number, rocker: number, t2: number, t3: number, t4: number): number {
  const ratio = crankOverRocker(crank, rocker, t2, t3, t4)
  const byCoupler = couplerOverRocker(coupler, rocker, t2, t3, t4)
  const across = Math.sin(t2 - t3)
  return (
    (rocker / crank) *
    ((Math.cos(t4 - t3) * (1 - byCoupler)) / across - (Math.sin(t4 - t3) * Math.cos(t2 - t3) * (ratio - byCoupler)) / (across * across))
  )
}

/** How well a four-bar drives its rocker, from the directions of its links: ratios, their change, and whether it is at a dead point. */
export const fourBarDriveRatio = /* @__PURE__ */ formula('kinematics.fourBarDriveRatio', {
  inputs: {
    ...CRANK,
    ...COUPLER,
    ...ROCKER,
    ...FOUR_BAR_POSE,
  },
  output: {
    /** Crank speed over rocker speed; infinite with crank and coupler in line. */
    ratio: { kind: 'ratio', infinite: true },
    /** Coupler speed over rocker speed; infinite with crank and coupler in line. */
    couplerRatio: { kind: 'ratio', infinite: true },
    /** Change of the ratio with the angle of the rocker; infinite with crank and coupler in line. */
    ratioSlope: { kind: 'ratio', infinite: true },
    /** Acute angle between coupler and rocker. */
    transmissionAngle: 'angle',
    /**
     * Whether the crank drives the rocker. At the dead point of the crank, crank and coupler are in line and no torque of the crank moves the rocker. At
     * that of the rocker, rocker and coupler are in line and no torque of the rocker moves the crank.
     */
    state: { oneOf: ['drives', 'crankDeadPoint', 'rockerDeadPoint'] },
  },
  equation: [
    'ratio = rocker * sin(rockerAngle - couplerAngle) / (crank * sin(crankAngle - couplerAngle))',
    'couplerRatio = rocker * sin(rockerAngle - crankAngle) / (coupler * sin(couplerAngle - crankAngle))',
    'ratioSlope = rocker / crank * (cos(rockerAngle - couplerAngle) * (1 - couplerRatio) / sin(crankAngle - couplerAngle) - sin(rockerAngle - couplerAngle) * cos(crankAngle - couplerAngle) * (ratio - couplerRatio) / sin(crankAngle - couplerAngle)^2)',
    'transmissionAngle = acos(min(1, abs(cos(rockerAngle - couplerAngle))))',
  ],
  assumes: ['rigid links, no clearance in the pins'],
  source: [
    { level: 'unverified', where: 'R. L. Norton, Design of Machinery, ch. 6: speed ratio and coupler ratio' },
    { level: 'computed', where: 'the ratio differentiated once more along the closure' },
  ],
  si: ({ crank, coupler, rocker, crankAngle: t2, couplerAngle: t3, rockerAngle: t4 }) => {
    const transmissionAngle = Math.atan2(Math.abs(Math.sin(t4 - t3)), Math.abs(Math.cos(t4 - t3)))
    if (Math.abs(Math.sin(t2 - t3)) < IN_LINE) {
      const none = Number.POSITIVE_INFINITY
      return { ratio: none, couplerRatio: none, ratioSlope: none, transmissionAngle, state: 'crankDeadPoint' as const }
    }
    return {
      ratio: crankOverRocker(crank, rocker, t2, t3, t4),
      couplerRatio: couplerOverRocker(coupler, rocker, t2, t3, t4),
      ratioSlope: crankOverRockerSlope(crank, coupler, rocker, t2, t3, t4),
      transmissionAngle,
      state: Math.abs(Math.sin(t4 - t3)) < IN_LINE ? ('rockerDeadPoint' as const) : ('drives' as const),
    }
  },
})

/** Sine of the angle below which two links count as in line. */
export const IN_LINE = 1e-9
