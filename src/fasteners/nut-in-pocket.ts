import { formula } from '../formula/index.js'
import { bracketRoot, minimiseScalar } from '../numeric/index.js'
import { FLATS_IN_PAIRS, HELD_NUT } from './nut-inputs.js'

/** Angle between the middle of a flat and a corner: turned so far, the nut passes. */
const HALF_FLAT = Math.PI / 6

/**
 * Resistance of one wall against a turned nut, per height, in halves of the nut's width across flats; `play` is the clearance over the width across flats.
 *
 * The nut's corner is `depth` deep in the wall; the overlap is a triangle. By virtual work the moment of a pressure is its work per angle:
 * `even` of a uniform unit pressure over the overlap, `rising` of one that is 1 at the corner and falls with the depth; `width` is the width of contact of the flat.
 */
function wall(turn: number, play: number): { depth: number; width: number; even: number; rising: number } {
  const across = 2 / Math.sqrt(3)
  if (turn === 0) return { depth: 0, width: across / 2, even: across ** 2 / 8, rising: across ** 2 / 12 }
  const depth = 2 * across * Math.sin(HALF_FLAT - turn / 2) * Math.sin(turn / 2) - play
  const deeper = across * Math.sin(HALF_FLAT - turn)
  const far = 2 * HALF_FLAT - turn
  const base = 1 / Math.tan(turn) + 1 / Math.tan(far)
  const wider = 1 / Math.sin(far) ** 2 - 1 / Math.sin(turn) ** 2
  return {
    depth,
    width: depth / Math.sin(turn),
    even: depth * deeper * base + (depth * depth * wider) / 2,
    rising: (depth * deeper * base) / 2 + (depth * depth * wider) / 6,
  }
}
/** Angle the nut turns before its corners touch; half a flat when it spins free. */
const firstTouch = (play: number) => {
  const reach = (Math.sqrt(3) / 2) * (1 + play)
  return reach >= 1 ? HALF_FLAT : Math.max(0, HALF_FLAT - Math.acos(reach))
}
const per = (torque: number, moment: number) => (torque === 0 ? 0 : torque / moment)

/**
 * A nut held from turning by a printed pocket (six flats) or an open slot (two): pressure on the flats, the torque they hold, and the angle that the nut turns before it is held.
 *
 * A loose nut turns until its corners touch and digs them in; the walls then hold it on less of each flat, so the pressure rises and the rounding
 * torque falls fast with clearance. The pressure at the first touch of a loose nut, before anything has bedded in, is `looseNutPressure`'s.
 *
 * The torque is the thread's share of tightening and any prevailing torque (`tighteningTorque` → nutTorque), not the torque at the head.
 */
export const nutInPocket = /* @__PURE__ */ formula('fasteners.nutInPocket', {
  title: 'torque that a nut pocket holds',
  inputs: {
    ...HELD_NUT,
  },
  output: {
    /** Peak pressure at the corners with pressure rising linearly over the contact at best hold; infinite when nothing holds the nut. */
    cornerPressure: { kind: 'stress', infinite: true },
    /** Pressure when it is uniform over the contact at best hold; infinite when nothing holds the nut. */
    plasticPressure: { kind: 'stress', infinite: true },
    /** Torque at which corners that have bedded in begin to dig on. */
    yieldTorque: 'torque',
    /** Torque at which the flats round out: the largest that a uniform pressure at the strength holds at any turn. */
    roundingTorque: 'torque',
    /** Force on each flat with that rising pressure; infinite when nothing holds the nut. */
    flatForce: { kind: 'force', infinite: true },
    /** Width of contact of each flat at best hold: half a flat when the pocket fits, nothing when the nut spins. */
    contactWidth: 'length',
    /** Angle the nut turns before it touches; half a flat (30 degrees) when it spins free. */
    freeAngle: 'angle',
    /** Angle from square at which the walls hold best: the corners have dug in so far. */
    holdAngle: 'angle',
    /** How the nut is held. */
    state: { oneOf: ['held', 'cornersYield', 'roundsOut', 'spinsFree'] },
  },
  assumes: [
    'no friction',
    'rigid nut with sharp corners, centred by flats in opposite pairs',
    'the wall yields at its strength where the nut overlaps it; displaced material adds nothing',
  ],
  source: [
    { level: 'computed', where: 'moment balance of a hexagon turned in a hexagon, triangular or uniform pressure on the overlap' },
    { level: 'assumption', where: 'a wall that yields uniformly where the nut overlaps it' },
  ],
  requires: {
    flats: FLATS_IN_PAIRS,
  },
  si: ({ torque, acrossFlats, height, flats, clearance, compressiveStrength }) => {
    const play = clearance / acrossFlats
    const freeAngle = firstTouch(play)
    const spins = freeAngle >= HALF_FLAT
    const holdAngle = spins ? HALF_FLAT : minimiseScalar((turn) => -wall(turn, play).even, freeAngle, HALF_FLAT).x
    const hold = spins ? { width: 0, even: 0, rising: 0 } : wall(holdAngle, play)
    const half = acrossFlats / 2
    const scale = flats * height * half * half
    const even = scale * hold.even
    const rising = scale * hold.rising
    const yieldTorque = compressiveStrength * rising
    const roundingTorque = compressiveStrength * even
    return {
      cornerPressure: per(torque, rising),
      plasticPressure: per(torque, even),
      yieldTorque,
      roundingTorque,
      flatForce: per(torque, spins ? 0 : (2 * rising) / (height * half * hold.width)),
      contactWidth: half * hold.width,
      freeAngle,
      holdAngle,
      state: spins
        ? ('spinsFree' as const)
        : torque > roundingTorque
          ? ('roundsOut' as const)
          : torque > yieldTorque
            ? ('cornersYield' as const)
            : ('held' as const),
    }
  },
})

/**
 * The pressure of a loose nut's corners on walls that are still elastic: a narrow contact that widens as the nut is turned harder.
 *
 * It shows whether the corners dig in at all. The final strength of the pocket is the rounding torque of `nutInPocket`.
 */
export const looseNutPressure = /* @__PURE__ */ formula('fasteners.looseNutPressure', {
  inputs: {
    ...HELD_NUT,
    /** Modulus of the wall at that temperature. */
    wallModulus: { kind: 'modulus', above: 0 },
    /** Depth of wall that deflects: at most the wall between pocket and outside. */
    wallDepth: { kind: 'length', above: 0 },
  },
  output: {
    /** Pressure at the corners; infinite when elastic walls cannot hold the torque. */
    cornerPressure: { kind: 'stress', infinite: true },
    /** Width of each flat in touch. */
    contactWidth: 'length',
    /** Angle of the nut from square. */
    turn: 'angle',
    /** State of the corners. */
    state: { oneOf: ['elastic', 'digsIn', 'turnsThrough'] },
  },
  assumes: [
    'no friction',
    'rigid nut with sharp corners',
    'the wall deflects like a bed of springs, each as stiff as its modulus over its depth',
  ],
  source: [
    { level: 'computed', where: 'moment balance of a hexagon turned in a hexagon on a bed of springs' },
    { level: 'assumption', where: 'bed of springs (Winkler) for the wall' },
  ],
  requires: {
    flats: FLATS_IN_PAIRS,
  },
  si: ({ torque, acrossFlats, height, flats, clearance, wallModulus, wallDepth, compressiveStrength }) => {
    const play = clearance / acrossFlats
    const half = acrossFlats / 2
    const start = firstTouch(play)
    const stiffness = (wallModulus / wallDepth) * half
    const held = (turn: number) => {
      const { depth, rising } = wall(turn, play)
      return flats * height * half * half * stiffness * depth * rising
    }
    const max = start >= HALF_FLAT ? HALF_FLAT : minimiseScalar((turn) => -held(turn), start, HALF_FLAT).x
    const through = torque > 0 && (start >= HALF_FLAT || held(max) < torque)
    const turn = through ? max : torque === 0 ? start : bracketRoot((at) => held(at) - torque, start, max)
    const { depth, width } = wall(turn, play)
    const cornerPressure = through ? Number.POSITIVE_INFINITY : torque === 0 ? 0 : stiffness * depth
    return {
      cornerPressure,
      contactWidth: half * Math.max(0, width),
      turn,
      state: through ? ('turnsThrough' as const) : cornerPressure > compressiveStrength ? ('digsIn' as const) : ('elastic' as const),
    }
  },
})
