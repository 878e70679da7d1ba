/** A cord drive, plain: crossed cord on two rigid pulleys, radii to the middle of the cord. */
interface Drive {
  readonly rigidity: number
  readonly mu: number
  readonly tension: number
  readonly small: number
  readonly large: number
  readonly axes: number
  /** Turns on the pinion. */
  readonly turns: number
}

/** Cells of an arc. */
const CELLS = 120

/** An arc with a tension in every cell, from its tangent point inward. Coulomb: neighbours differ by no more than friction holds. */
class Arc {
  readonly #radius: number
  readonly #mu: number
  readonly #step: number
  #held: Float64Array

  constructor(radius: number, mu: number, angle: number, tension: number) {
    this.#radius = radius
    this.#mu = mu
    this.#step = angle / CELLS
    this.#held = new Float64Array(CELLS).fill(tension)
  }

  /** Tensions after the span pulls with a tension, and the integral of the tension along the arc. */
  with(tension: number): { readonly held: Float64Array; readonly along: number } {
    const held = new Float64Array(CELLS)
    let along = 0
    for (let i = 0; i < CELLS; i++) {
      const far = this.#mu * this.#step * (i + 0.5)
      held[i] = Math.min(Math.max(this.#held[i] as number, tension * Math.exp(-far)), tension * Math.exp(far))
      along += (held[i] as number) * this.#step * this.#radius
    }
    return { held, along }
  }

  set(tension: number): void {
    this.#held = this.with(tension).held
  }
}

/** Angles of the joint over a history of torques, pinion held and the cord clamped in the middle of its wraps. */
export function cordWindup({ rigidity, mu, tension, small, large, axes, turns }: Drive, torques: readonly number[]): number[] {
  const lean = Math.asin((small + large) / axes)
  const span = axes * Math.cos(lean)
  // Crossed: both pulleys are wrapped by half a turn and twice the lean; whole turns besides on the pinion. Half to either side.
  const [onSmall, onLarge] = [wrapOf(turns, lean) / 2, (Math.PI + 2 * lean) / 2]
  const branch = () => [new Arc(small, mu, onSmall, tension), new Arc(large, mu, onLarge, tension)] as const
  const [taut, slack] = [branch(), branch()]
  const long = (arcs: readonly Arc[], pull: number) => arcs.reduce((sum, arc) => sum + arc.with(pull).along, pull * span)
  const rest = long(taut, tension)
  return torques.map((torque) => {
    const pull = torque / large
    // What one branch gains the other one loses.
    let [low, high] = [Math.max(pull, 0), 5 * tension + pull]
    for (let round = 0; round < 60; round++) {
      const at = (low + high) / 2
      if (long(taut, at) + long(slack, at - pull) < 2 * rest) low = at
      else high = at
    }
    const at = (low + high) / 2
    const angle = (long(taut, at) - rest) / rigidity / large
    for (const arc of taut) arc.set(at)
    for (const arc of slack) arc.set(at - pull)
    return angle
  })
}

const wrapOf = (turns: number, lean: number) => 2 * Math.PI * turns + Math.PI + 2 * lean

/** Torque at which the cord slips round all of its pinion: Euler's ratio over the whole wrap, and no length of cord is lost. */
export function cordSlip({ mu, tension, small, large, axes, turns }: Drive): number {
  const lean = Math.asin((small + large) / axes)
  const span = axes * Math.cos(lean)
  const wrap = wrapOf(turns, lean)
  const drum = () => new Arc(large, mu, (Math.PI + 2 * lean) / 2, tension)
  const rest = 2 * tension * span + 2 * drum().with(tension).along + tension * small * wrap
  const ratio = Math.exp(mu * wrap)
  const long = (taut: number) =>
    (taut + taut / ratio) * span + drum().with(taut).along + drum().with(taut / ratio).along + (small / mu) * (taut - taut / ratio)
  let [low, high] = [tension, 10 * tension]
  for (let round = 0; round < 80; round++) {
    const at = (low + high) / 2
    if (long(at) < rest) low = at
    else high = at
  }
  return large * low * (1 - 1 / ratio)
}
