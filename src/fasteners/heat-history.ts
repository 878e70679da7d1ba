import { gradedTimes } from '../numeric/index.js'

/** A spell at one temperature as the solver sees it. */
export interface HeatSpell {
  /** How long on the creep clock. */
  readonly clock: number
  /** Compliance at loading over that at tightening. */
  readonly softening: number
  /** Growth of the layers minus growth of the bolt, since tightening. */
  readonly growth: number
}

/** A joint that goes through spells. */
export interface HeatedJoint {
  readonly clampLoad: number
  readonly elasticCompliance: number
  readonly creepingCompliance: number
  readonly creep: (time: number) => number
  readonly spells: readonly HeatSpell[]
}

/** Intervals of the coarse grid in each spell; the fine one has twice as many. */
const COARSE_INTERVALS = 12
/** First interval of a spell, in parts of it. */
const FIRST_INTERVAL = 1e-6
// Gauss-Legendre on 0 to 1.
const NODES = [0.046910077030668, 0.2307653449471585, 0.5, 0.7692346550528415, 0.953089922969332]
const WEIGHTS = [0.1184634425280945, 0.2393143352496832, 0.2844444444444444, 0.2393143352496832, 0.1184634425280945]

/** Mean of the creep curve between two ages; near age 0, where it is steep, points crowd there, and long after the interval two do. */
function meanCreep(creep: (time: number) => number, young: number, old: number): number {
  const span = old - young
  if (young > 4 * span) {
    const middle = young + span / 2
    const away = span / (2 * Math.sqrt(3))
    return (creep(middle - away) + creep(middle + away)) / 2
  }
  const power = young < span ? 4 : 1
  let sum = 0
  for (let k = 0; k < NODES.length; k++) {
    const v = NODES[k]!
    sum += WEIGHTS[k]! * power * v ** (power - 1) * creep(young + span * v ** power)
  }
  return sum
}

/**
 * Loads right after each change of temperature and at the end of each spell; negative where the joint would have to pull.
 *
 * With m the softening and G = m F, the load F solves e F + c ∫φ(ξ − ξ′) dG = (e + c) F₀ + growth on the creep clock ξ: G jumps with every
 * change of temperature and is assumed linear between the points of a grid that crowds behind each jump. Two grids, the error extrapolated away.
 */
export function loadsThroughSpells(joint: HeatedJoint): { readonly starts: number[]; readonly ends: number[] } {
  const coarse = solve(joint, COARSE_INTERVALS)
  const fine = solve(joint, 2 * COARSE_INTERVALS)
  const better = (name: 'starts' | 'ends') => fine[name].map((load, i) => load + (load - coarse[name][i]!) / 3)
  return { starts: better('starts'), ends: better('ends') }
}

function solve({ clampLoad, elasticCompliance, creepingCompliance, creep, spells }: HeatedJoint, count: number) {
  const held = (elasticCompliance + creepingCompliance) * clampLoad
  // Jumps at times, then straight rises between two times; all of G = softening × load.
  const jumpAt = [0]
  const jump = [clampLoad]
  const from: number[] = []
  const to: number[] = []
  const rise: number[] = []
  const starts: number[] = []
  const ends: number[] = []
  let g = clampLoad
  let begin = 0
  /** Deflection of the creeping layers at this time by all steps before it. */
  const given = (now: number) => {
    let sum = 0
    for (let i = 0; i < jump.length; i++) sum += jump[i]! * creep(now - jumpAt[i]!)
    for (let i = 0; i < rise.length; i++) if (rise[i] !== 0) sum += rise[i]! * meanCreep(creep, now - to[i]!, now - from[i]!)
    return sum
  }
  for (const { clock, softening, growth } of spells) {
    const elastic = elasticCompliance / softening
    // A change of G by x at once adds (elastic + creeping) x to the deflection of the joint.
    const missing = (now: number) => held + growth - creepingCompliance * given(now) - elastic * g
    const step = missing(begin) / (elastic + creepingCompliance)
    jumpAt.push(begin)
    jump.push(step)
    g += step
    starts.push(g / softening)
    const times = gradedTimes(clock, count, { first: clock * FIRST_INTERVAL })
    for (let i = 1; i < times.length; i++) {
      const a = begin + times[i - 1]!
      const b = begin + times[i]!
      const change = missing(b) / (elastic + creepingCompliance * meanCreep(creep, 0, b - a))
      from.push(a)
      to.push(b)
      rise.push(change)
      g += change
    }
    ends.push(g / softening)
    begin += clock
  }
  return { starts, ends }
}
