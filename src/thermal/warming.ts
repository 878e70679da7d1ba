/** Heat capacities: the motor, and a store in the plate behind a conductance. */
interface MotorBody {
  /** Heat capacity of the motor, J/K. */
  readonly capacity: number
  readonly storeCapacity: number
  readonly storeConductance: number
}

/** A step is repeated with half its length while its embedded error is above this, K. */
const STEP_ERROR = 0.02
/** A motor whose steps become this short is running away, s. */
const SHORTEST = 1e-3
const SAFETY = 0.9

/** Where a warming motor got to. */
interface Warmed {
  readonly mount: number
  readonly store: number
  /** Whether it stayed below the end of the laws and its winding did not run away. */
  readonly finished: boolean
  /** States worked out on the way. */
  readonly states: number
}

/** Rates of change of mounting face and store, K/s. */
type Rates = (mount: number, store: number) => readonly [mount: number, store: number]

/** The rates of a body, and how many states were worked out for them. */
function ratesOf(surplusAt: (mount: number) => number, { capacity, storeCapacity, storeConductance }: MotorBody) {
  const perStore = storeCapacity > 0 ? storeConductance / storeCapacity : 0
  const through = storeConductance / capacity
  const count = { states: 0 }
  const rates: Rates = (T, S) => {
    count.states++
    return [surplusAt(T) / capacity - through * (T - S), perStore * (T - S)]
  }
  return { rates, through, perStore, count }
}

/** Coefficients of the modified Rosenbrock pair. */
const D = 1 / (2 + Math.SQRT2)
const E = 6 + Math.SQRT2
/** Step of the difference quotient of the surplus, K. */
const NUDGE = 1e-3

/**
 * One L-stable step of second order with its embedded error (the modified Rosenbrock pair of Shampine & Reichelt 1997). `slope`: of the surplus over the capacity, by the
 * temperature of the mounting face.
 */
function rosenbrock(
  { rates, through, perStore }: ReturnType<typeof ratesOf>,
  T: number,
  S: number,
  [r, s]: readonly [number, number],
  slope: number,
  step: number,
) {
  // The matrix 1 − step D J of two states, and its inverse.
  const q = step * D
  const a = 1 - q * (slope - through)
  const b = -q * through
  const c = -q * perStore
  const d = 1 + q * perStore
  const inverse = 1 / (a * d - b * c)
  const k1 = (d * r - b * s) * inverse
  const l1 = (a * s - c * r) * inverse
  const [r1, s1] = rates(T + 0.5 * step * k1, S + 0.5 * step * l1)
  const k2 = (d * (r1 - k1) - b * (s1 - l1)) * inverse + k1
  const l2 = (a * (s1 - l1) - c * (r1 - k1)) * inverse + l1
  const mount = T + step * k2
  const store = S + step * l2
  const next = rates(mount, store)
  const u = next[0] - E * (k2 - r1) - 2 * (k1 - r)
  const v = next[1] - E * (l2 - s1) - 2 * (l1 - s)
  const error = (step / 6) * Math.max(Math.abs(k1 - 2 * k2 + (d * u - b * v) * inverse), Math.abs(l1 - 2 * l2 + (a * v - c * u) * inverse))
  return { mount, store, next, error }
}

/** Follows mounting face and store for a time, in steps that the embedded error chooses: a long stall settles in few. */
export function warm(surplusAt: (mount: number) => number, body: MotorBody, start: number, time: number, highest: number): Warmed {
  const of = ratesOf(surplusAt, body)
  let mount = start
  let store = start
  let t = 0
  let step = time / 4
  let now = of.rates(mount, store)
  let slope = Number.NaN
  while (t < time) {
    if (!Number.isFinite(now[0]) || mount > highest) return { mount, store, finished: false, states: of.count.states }
    // The last two steps share what is left, so that none is tiny.
    if (step > 0.999 * (time - t)) step = time - t
    else if (2 * step > time - t) step = (time - t) / 2
    if (Number.isNaN(slope)) slope = (of.rates(mount + NUDGE, store + NUDGE)[0] - now[0]) / NUDGE
    const end = rosenbrock(of, mount, store, now, slope, step)
    if (end.error <= STEP_ERROR) {
      t += step
      mount = end.mount
      store = end.store
      now = end.next
      slope = Number.NaN
    } else if (step < SHORTEST) return { mount, store, finished: false, states: of.count.states }
    // Not a number where a trial ran away: then the step is cut to a fifth.
    const factor = SAFETY * Math.cbrt(STEP_ERROR / end.error)
    step *= factor > 0.2 ? Math.min(5, factor) : 0.2
  }
  return { mount, store, finished: mount <= highest, states: of.count.states }
}

/** Steps of a stretch with constant loss are this long or shorter, s. */
const STRETCH = 60

/** The same with constant loss in equal steps: its end then depends smoothly on every input, as a fit needs. */
export function warmEvenly(surplusAt: (mount: number) => number, body: MotorBody, start: readonly [number, number], time: number) {
  const of = ratesOf(surplusAt, body)
  const steps = Math.max(2, Math.ceil(time / STRETCH))
  let [mount, store] = start
  for (let k = 0; k < steps; k++) {
    const now = of.rates(mount, store)
    const slope = (of.rates(mount + NUDGE, store + NUDGE)[0] - now[0]) / NUDGE
    const end = rosenbrock(of, mount, store, now, slope, time / steps)
    mount = end.mount
    store = end.store
  }
  return { mount, store }
}
