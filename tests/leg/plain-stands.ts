import { readFileSync } from 'node:fs'
import { describeLeg, type Leg } from '../../src/leg/index.js'
import { type RandomStream, randomStream } from '../../src/numeric/index.js'
import { cordSlip, cordWindup } from './plain-cord.js'
import { sprungAndBalanced, torsion } from './sprung-legs.js'

// Logs of a test stand from plain laws of the handbooks with known values. Nothing here asks the library what to expect: lengths, radii and numbers
// of a sheet are read off the documents. Instruments are off as the guide says of them, readings scatter, and displays round.

const read = (name: string): Leg => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))

/** Legs that the logs are of. */
export const LEGS = {
  cord: read('mudflat-leg-revised'),
  slipping: read('mudflat-leg-first'),
  belt: read('orchard-leg-revised'),
  sprung: torsion,
  balanced: sprungAndBalanced,
} as const

/** A log as text, and what it was made with: fields by their path, or the one quantity that a log is compared by. */
export interface PlainStand {
  readonly text: string
  readonly truth: Readonly<Record<string, number>>
}
/** The key of what a compared log measures. */
export const COMPARED = 'compared'

/** One kind of log on one leg. */
export interface PlainLog {
  readonly leg: keyof typeof LEGS
  readonly log: string
  readonly readings: readonly number[]
  readonly make: (draw: Draw, readings: number) => PlainStand
}

/** What is drawn for one stand. */
export interface Draw extends Pick<RandomStream, 'uniformBetween' | 'normal'> {
  /** The error of an instrument of which 95 % are within a half-width. */
  readonly off: (within: number) => number
  /** A value within a share on either side. */
  readonly about: (value: number, share: number) => number
  /** What a display shows of a value: scattered by a standard deviation and rounded to a step. */
  readonly shown: (value: number, deviation: number, step: number) => number
}

/** The draws of a stand; the same at every run. */
export function drawOf(seed: number, index: number): Draw {
  const random = randomStream(seed, index)
  return {
    uniformBetween: random.uniformBetween,
    normal: random.normal,
    off: (within) => random.normal(0, within / 1.96),
    about: (value, share) => value * random.uniformBetween(1 - share, 1 + share),
    shown: (value, deviation, step) => Number((Math.round((value + random.normal(0, deviation)) / step) * step).toFixed(9)),
  }
}

const csv = (head: string, rows: readonly (readonly number[])[]) => `${head}\n${rows.map((row) => row.join(',')).join('\n')}\n`
const times = <T>(n: number, make: (i: number) => T): T[] => Array.from({ length: n }, (_, i) => make(i))
/** Evenly spread values, both ends in them. */
const spread = (low: number, high: number, n: number) => times(n, (i) => Number((low + ((high - low) * i) / (n - 1)).toPrecision(3)))
const DEGREE = Math.PI / 180
const G = 9.80665

/** Times of a decay over a month, in days. */
const DAYS: Readonly<Record<number, readonly number[]>> = {
  3: [0.042, 2, 30],
  5: [0.042, 0.5, 3, 10, 30],
  10: [0.042, 0.1, 0.25, 0.5, 1, 3, 7, 14, 21, 30],
}
const HOURS_OF_YEAR = 8766
/** Creep strain grows by the decade at constant tension: what is left is 1 / (1 + a log t). */
const leftAfter = (days: number, year: number) =>
  1 / (1 + ((1 / year - 1) * Math.log10(Math.max(1, 24 * days))) / Math.log10(HOURS_OF_YEAR))

/** Euler and Eytelwein; the braid rubs a little otherwise each time. */
const cordFriction: PlainLog = {
  leg: 'cord',
  log: 'cordFriction knee',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const mu = draw.uniformBetween(0.1, 0.18)
    const [gain, zero, drag, more] = [draw.off(0.03), draw.off(0.1), draw.off(0.04), draw.off(10) / 360]
    const rows = times(n, (i) => {
      const turns = [0.5, 1, 1.5][i % 3]!
      const taut = 5 * Math.exp(mu * (1 + draw.normal(0, 0.05)) * 2 * Math.PI * (turns + more))
      return [5, draw.shown(taut * (1 + drag) * (1 + gain) + zero, 0.02, 0.05), turns]
    })
    return { text: csv('slack tension [N],taut tension [N],wrap angle [turn]', rows), truth: { 'joints.knee.drive.friction': mu } }
  },
}

const pretension: PlainLog = {
  leg: 'cord',
  log: 'pretension knee',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const [start, year] = [draw.about(280, 0.08), draw.uniformBetween(0.82, 0.95)]
    const [gain, zero] = [draw.off(0.03), draw.off(2)]
    // 1.2 N/K: a rigidity of 24 kN, and 50 ppm/K between frame and cord.
    const warmer = draw.off(4) * 1.2
    const rows = DAYS[n]!.map((days) => {
      const tension = start * leftAfter(days, year) + (warmer * days) / 30
      return [days, draw.shown(tension * (1 + gain) + zero, 2, 0.5)]
    })
    return {
      text: csv('time [day],tension [N]', rows),
      truth: { 'joints.knee.drive.pretension': start, 'cords.braid.pretensionLeft': year },
    }
  },
}

const pullOut: PlainLog = {
  leg: 'cord',
  log: 'pullOut knee',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const share = draw.uniformBetween(0.8, 0.94)
    const gain = draw.off(0.03)
    // Spliced ends scatter by some per cent.
    const rows = times(n, () => [draw.shown(STRENGTH * share * (1 + draw.normal(0, 0.06)) * (1 + gain), 5, 10)])
    return { text: csv('breaking force [N]', rows), truth: { 'joints.knee.drive.endRetention': share } }
  },
}

const STRENGTH = LEGS.cord.cords.braid?.breakingStrength.si ?? Number.NaN

/** Cord on rigid pulleys, slip by slip on every arc. */
const windup: PlainLog = {
  leg: 'cord',
  log: 'windup knee',
  readings: [5, 9, 17],
  make: (draw, n) => {
    const rigidity = draw.about(24e3, 0.15)
    const mu = 0.14 * Math.exp(draw.normal(0, Math.log(2.5) / 2 / 1.645))
    const tension = 280 * (1 + draw.off(0.1))
    const [arm, lever, zero] = [draw.off(0.02), draw.off(0.02), draw.uniformBetween(-0.3, 0.3)]
    const half = (n + 1) / 2
    const torques = times(n, (i) => Number((12 * (1 - Math.abs(i + 1 - half) / (half - 1))).toFixed(2)))
    // Radii to the middle of the cord of 1.6 mm: grooves of 14.4 mm and 100 mm, axes 118 mm apart, crossed.
    const angles = cordWindup(
      { rigidity, mu, tension, small: 8e-3, large: 50.8e-3, axes: 118e-3, turns: 3 },
      torques.map((x) => x * (1 - arm)),
    )
    // Frames only give: half of the bell.
    const give = (Math.abs(draw.off(0.12)) * angles[half - 1]!) / (12 * (1 - arm))
    const rows = torques.map((torque, i) => [
      torque,
      draw.shown(((angles[i]! + give * torque) * (1 + lever)) / DEGREE + zero, 0.006, 0.005),
    ])
    return { text: csv('joint torque [N m],joint angle [deg]', rows), truth: { 'cords.braid.axialRigidity': rigidity } }
  },
}

/** Torque at which the cord slips all round its pinion. */
const cordSlips: PlainLog = {
  leg: 'slipping',
  log: 'slipTorque knee',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const mu = draw.uniformBetween(0.08, 0.2)
    const tension = 90 * (1 + draw.off(0.1))
    const arm = draw.off(0.02)
    const torque = cordSlip({ rigidity: 24e3, mu, tension, small: 6.8e-3, large: 38.08e-3, axes: 118e-3, turns: 3 })
    const rows = times(n, () => [draw.shown(torque * (1 + draw.normal(0, 0.05)) * (1 + arm), 0.02, 0.05)])
    return { text: csv('joint torque [N m]', rows), truth: { 'joints.knee.drive.friction': mu } }
  },
}

/** Belt of 5 mm on 18 and 108 teeth, axes 130 mm apart: radii, span and wrap of two pitch circles. */
const BELT = { small: (18 * 5e-3) / 2 / Math.PI, large: (108 * 5e-3) / 2 / Math.PI }
const LEAN = Math.asin((BELT.large - BELT.small) / 0.13)
const SPAN = 0.13 * Math.cos(LEAN)

/** The last tooth on the slack side lifts when its flank pushes it out harder than its tension holds it in. */
const beltJumps: PlainLog = {
  leg: 'belt',
  log: 'slipTorque hip',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const mu = draw.uniformBetween(0.1, 0.25)
    const tension = 700 * (1 + draw.off(0.1))
    const arm = draw.off(0.02)
    const wrap = Math.PI - 2 * LEAN
    const lift = Math.tan((FLANK - Math.atan(mu) / DEGREE) * DEGREE)
    const torque = (BELT.large * tension) / (0.5 + Math.max(0, lift) / wrap)
    const rows = times(n, () => [draw.shown(torque * (1 + draw.normal(0, 0.03)) * (1 + arm), 0.1, 0.2)])
    return { text: csv('joint torque [N m]', rows), truth: { 'belts.wide.friction': mu } }
  },
}
/** Trapezoidal teeth of 40 degrees. */
const FLANK = 20

const beltWindup: PlainLog = {
  leg: 'belt',
  log: 'windup hip',
  readings: [5, 9, 17],
  make: (draw, n) => {
    const rigidity = draw.about(420e3, 0.25)
    const play = (2 * (0.05e-3 * Math.exp(draw.normal(0, 0.2)))) / BELT.large
    const [arm, lever, zero] = [draw.off(0.02), draw.off(0.02), draw.uniformBetween(-0.3, 0.3)]
    const give = 1 + Math.abs(draw.off(0.12))
    const rows = spread(-40, 40, n).map((torque) => {
      const load = torque * (1 - arm)
      const angle = (load * SPAN * give) / (2 * rigidity * BELT.large ** 2) + (play / 2) * Math.sign(load)
      return [torque, draw.shown((angle * (1 + lever)) / DEGREE + zero, 0.004, 0.002)]
    })
    return { text: csv('joint torque [N m],joint angle [deg]', rows), truth: { 'belts.wide.axialRigidity': rigidity } }
  },
}

const beltPitch: PlainLog = {
  leg: 'belt',
  log: 'beltPitch hip',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const [start, year] = [draw.about(700, 0.08), draw.uniformBetween(0.8, 0.92)]
    const [span, mass] = [SPAN * (1 + draw.off(0.01)), 0.11 * (1 + draw.off(0.05))]
    const rows = DAYS[n]!.map((days) => [days, draw.shown(Math.sqrt((start * leftAfter(days, year)) / mass) / 2 / span, 3, 1)])
    return {
      text: csv('time [day],pitch [Hz]', rows),
      truth: { 'joints.hip.drive.pretension': start, 'belts.wide.pretensionLeft': year },
    }
  },
}

const freePlay: PlainLog = {
  leg: 'belt',
  log: 'freePlay hip',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const clearance = CLEARANCE * Math.exp(draw.normal(0, 0.25))
    const gain = draw.off(0.03)
    const rows = times(n, () => [
      draw.shown(((2 * clearance) / BELT.large / DEGREE) * (1 + draw.normal(0, 0.06)) * (1 + gain), 0.003, 0.005),
    ])
    return { text: csv('free play [deg]', rows), truth: { 'belts.wide.clearance': clearance } }
  },
}
const CLEARANCE = LEGS.belt.belts.wide?.clearance.si ?? Number.NaN

/** Torque for each ampere of peak phase current: 3/2 of the peak EMF of a phase over the speed. */
const perAmpere = (speedConstant: number) => ((1.5 / Math.sqrt(3) / speedConstant) * 60) / (2 * Math.PI)

const efficiency: PlainLog = {
  leg: 'belt',
  log: 'efficiency hip',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const eta = draw.uniformBetween(0.88, 0.98)
    const per = 6 * perAmpere(48 * (1 + draw.off(0.1)))
    const [arm, gain, drag] = [draw.off(0.02), draw.off(0.02), draw.uniformBetween(0.4, 1.2)]
    const rows = spread(5, 40, n).map((torque) => {
      const ampere = (torque * (1 - arm)) / per
      return [torque, ...[ampere / eta + drag, ampere * eta - drag].map((one) => draw.shown(one * (1 + gain), 0.15, 0.05))]
    })
    return {
      text: csv('joint torque [N m],lifting current [A],lowering current [A]', rows),
      truth: { 'joints.hip.drive.efficiency': eta },
    }
  },
}

/** A spring that is wound from its free angle on. */
const springTorque: PlainLog = {
  leg: 'sprung',
  log: 'springTorque knee',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const [rate, free] = [draw.about(1, 0.12), draw.uniformBetween(6, 14)]
    const [gain, zero] = [draw.off(0.02), draw.off(1)]
    const rows = spread(25, 130, n).map((angle) => {
      const bare = -0.4 * Math.sin(angle * DEGREE)
      const wound = -rate * Math.max(0, angle + zero - free) * DEGREE
      return [angle, draw.shown(bare + wound * (1 + gain), 0.03, 0.01), draw.shown(bare, 0.03, 0.01)]
    })
    return {
      text: csv('joint angle [deg],torque with spring [N m],torque without spring [N m]', rows),
      truth: { 'joints.knee.spring.rate': rate, 'joints.knee.spring.freeAngle': free * DEGREE },
    }
  },
}

const weightTorque: PlainLog = {
  leg: 'balanced',
  log: 'weightTorque knee',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const [beyond, mass] = [draw.about(0.045, 0.15), 0.25 * (1 + draw.off(0.01))]
    const [gain, zero] = [draw.off(0.02), draw.off(1)]
    const rows = spread(-80, 80, n % 2 === 0 ? n : n + 1)
      .slice(0, n)
      .map((angle) => {
        const bare = -0.3 * Math.sin(angle * DEGREE)
        const more = mass * G * beyond * Math.sin((angle + zero) * DEGREE) * (1 + gain)
        return [angle, draw.shown(bare + more, 0.002, 0.001), draw.shown(bare, 0.002, 0.001)]
      })
    return {
      text: csv('link angle [deg],torque with weight [N m],torque without weight [N m]', rows),
      truth: { 'links.lower.counterweight.beyond': beyond },
    }
  },
}

const torqueConstant: PlainLog = {
  leg: 'cord',
  log: 'torqueConstant',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const speedConstant = draw.about(110, 0.06)
    const [ampere, arm, rest] = [draw.off(0.02), draw.off(0.02), draw.uniformBetween(0, 0.02)]
    const rows = spread(5, 35, n).map((current) => [
      draw.shown(current * (1 + ampere), 0.05, 0.1),
      draw.shown((perAmpere(speedConstant) * current - rest) * (1 + arm), 0.01, 0.005),
    ])
    const truth = { 'motors.main.speedConstant': (speedConstant * 2 * Math.PI) / 60 }
    return { text: csv('peak phase current [A],motor torque [N m]', rows), truth }
  },
}

const noLoad: PlainLog = {
  leg: 'cord',
  log: 'noLoad',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const current = draw.about(0.6, 0.3)
    const [gain, volts] = [draw.off(0.02), draw.off(0.01)]
    const rise = draw.uniformBetween(0.01, 0.04)
    const rows = spread(5, 15, n).map((volt) => [
      volt,
      draw.shown(current * (1 + rise * (volt * (1 - volts) - 10)) * (1 + gain), 0.012, 0.01),
    ])
    return { text: csv('voltage [V],current [A]', rows), truth: { 'motors.main.noLoadCurrent': current } }
  },
}

/** A force upward on the foot; drives and links in series give in proportion. The gauge starts anywhere. */
const footDeflection: PlainLog = {
  leg: 'cord',
  log: 'footDeflection',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const compliance = draw.uniformBetween(0.02, 0.12)
    const [scale, gauge, zero] = [draw.off(0.03), draw.off(0.01), draw.uniformBetween(-0.4, 0.4)]
    const rows = spread(0, 25, n).map((force) => [
      draw.shown(force * (1 + scale), 0.1, 0.1),
      draw.shown(force * compliance * (1 + gauge) + zero, 0.012, 0.01),
    ])
    return { text: csv('upright force [N],upright deflection [mm]', rows), truth: { [COMPARED]: compliance * 1e-3 } }
  },
}

const couponHoles: PlainLog = {
  leg: 'cord',
  log: 'couponHoles knee',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const narrower = draw.uniformBetween(-0.12, 0.04)
    const zero = draw.off(0.02)
    const rows = spread(3.89, 4.07, n).map((hole) => [hole, draw.shown(hole + narrower + zero, 0.015, 0.01)])
    return { text: csv('drawn hole [mm],measured hole [mm]', rows), truth: { [COMPARED]: narrower * 1e-3 } }
  },
}

/** Prints break at strengths that scatter, across the layers more than along them. */
const couponBars: PlainLog = {
  leg: 'cord',
  log: 'couponBars ASA',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const share = draw.uniformBetween(0.35, 0.8)
    const gain = 1 + draw.off(0.03)
    const rows = times(n, () => [
      draw.shown(70 * (1 + draw.normal(0, 0.04)) * gain, 0.2, 0.5),
      draw.shown(70 * share * (1 + draw.normal(0, 0.1)) * gain, 0.2, 0.5),
    ])
    return { text: csv('flat breaking force [N],upright breaking force [N]', rows), truth: { [COMPARED]: share } }
  },
}

const couponSplit: PlainLog = {
  leg: 'cord',
  log: 'couponSplit knee',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const fit = draw.uniformBetween(0.06, 0.2)
    const zero = draw.off(0.02)
    const rows = times(n, () => [4.01, draw.shown(4.01 - fit * (1 + draw.normal(0, 0.12)) + zero, 0.005, 0.01)])
    return { text: csv('pin diameter [mm],measured hole [mm]', rows), truth: { [COMPARED]: fit * 1e-3 } }
  },
}

const couponDrum: PlainLog = {
  leg: 'cord',
  log: 'couponDrum knee',
  readings: [3, 5, 10],
  make: (draw, n) => {
    const mu = draw.uniformBetween(0.08, 0.25)
    const [gain, zero, more] = [draw.off(0.03), draw.off(0.1), draw.off(10) / 360]
    const rows = times(n, (i) => {
      const turns = [1 / 2, 1 / 4, 1 / 6][i % 3]!
      const taut = 5 * Math.exp(mu * (1 + draw.normal(0, 0.05)) * 2 * Math.PI * (turns + more))
      return [5, draw.shown(taut * (1 + gain) + zero, 0.02, 0.05), Number(turns.toFixed(4))]
    })
    return { text: csv('slack tension [N],taut tension [N],wrap angle [turn]', rows), truth: { [COMPARED]: mu } }
  },
}

/** Kinds of reading that are fitted or compared, each with its law. */
export const PLAIN_LOGS: readonly PlainLog[] = [
  cordFriction,
  windup,
  pretension,
  pullOut,
  cordSlips,
  beltWindup,
  beltPitch,
  freePlay,
  efficiency,
  beltJumps,
  springTorque,
  weightTorque,
  torqueConstant,
  noLoad,
  footDeflection,
  couponHoles,
  couponBars,
  couponSplit,
  couponDrum,
]
