/** Sizes of one leg that the search changes, SI numbers and places in lists. */
export interface LegSizes {
  readonly linkLength: number
  /** Standing height over the length of both links. */
  readonly stand: number
  readonly hipRatio: number
  readonly kneeRatio: number
  /** Pinion over cord diameter at the cord's centre line. */
  readonly bendRatio: number
  readonly hipPretension: number
  readonly kneePretension: number
  readonly tensionerTravel: number
  readonly anchorDiameter: number
  readonly anchorLength: number
  readonly drumBolts: number
  readonly hipPin: number
  readonly kneePin: number
  readonly hipCheek: number
  readonly kneeCheek: number
  readonly hipLug: number
  readonly kneeLug: number
  /** Boss over pin diameter, interference over pin diameter, edge distance over pin diameter. */
  readonly hipBoss: number
  readonly kneeBoss: number
  readonly hipFit: number
  readonly kneeFit: number
  readonly bossEdge: number
  readonly upperDepth: number
  readonly upperWall: number
  readonly lowerDepth: number
  readonly lowerWall: number
  readonly stackThread: number
  readonly stackArm: number
  readonly motorThread: number
  /** Share of the usual tightening torque. */
  readonly tightening: number
  readonly plateThickness: number
  readonly plateMargin: number
  readonly sinkThickness: number
  readonly bearing: number
  readonly bearingSpacing: number
  readonly seatFit: number
  readonly capThickness: number
  readonly toeThickness: number
  readonly toeLength: number
  readonly toeWidth: number
  readonly sidewaysHold: number
  readonly landing: number
}

/** One size: lowest, highest, and the step of the search as a factor (`times`) or a difference (`by`). */
interface Lever {
  readonly low: number
  readonly high: number
  readonly times?: number
  readonly by?: number
}

/** What the search may change, and how far. */
export const LEVERS: { readonly [N in keyof LegSizes]: Lever } = {
  linkLength: { low: 0.06, high: 0.4, times: 1.06 },
  stand: { low: 0.6, high: 0.95, by: 0.02 },
  hipRatio: { low: 3, high: 14, times: 1.1 },
  kneeRatio: { low: 3, high: 14, times: 1.1 },
  bendRatio: { low: 8, high: 20, times: 1.08 },
  hipPretension: { low: 30, high: 600, times: 1.1 },
  kneePretension: { low: 30, high: 600, times: 1.1 },
  tensionerTravel: { low: 6e-3, high: 40e-3, by: 2e-3 },
  anchorDiameter: { low: 3e-3, high: 6e-3, by: 1e-3 },
  anchorLength: { low: 6e-3, high: 20e-3, by: 2e-3 },
  drumBolts: { low: 0, high: 6, by: 3 },
  hipPin: { low: 0, high: 5, by: 1 },
  kneePin: { low: 0, high: 5, by: 1 },
  hipCheek: { low: 4e-3, high: 24e-3, by: 1e-3 },
  kneeCheek: { low: 4e-3, high: 24e-3, by: 1e-3 },
  hipLug: { low: 6e-3, high: 40e-3, by: 2e-3 },
  kneeLug: { low: 6e-3, high: 40e-3, by: 2e-3 },
  hipBoss: { low: 2.5, high: 6, by: 0.25 },
  kneeBoss: { low: 2.5, high: 6, by: 0.25 },
  hipFit: { low: 0.001, high: 0.015, times: 1.08 },
  kneeFit: { low: 0.001, high: 0.015, times: 1.08 },
  bossEdge: { low: 1.5, high: 4, by: 0.25 },
  upperDepth: { low: 20e-3, high: 60e-3, by: 2e-3 },
  upperWall: { low: 1.2e-3, high: 6e-3, by: 0.4e-3 },
  lowerDepth: { low: 14e-3, high: 50e-3, by: 2e-3 },
  lowerWall: { low: 1.2e-3, high: 6e-3, by: 0.4e-3 },
  stackThread: { low: 0, high: 3, by: 1 },
  stackArm: { low: 24e-3, high: 90e-3, by: 4e-3 },
  motorThread: { low: 0, high: 3, by: 1 },
  tightening: { low: 0.3, high: 1.2, by: 0.1 },
  plateThickness: { low: 4e-3, high: 12e-3, by: 1e-3 },
  plateMargin: { low: 8e-3, high: 60e-3, by: 4e-3 },
  sinkThickness: { low: 0, high: 8e-3, by: 1e-3 },
  bearing: { low: 0, high: 3, by: 1 },
  bearingSpacing: { low: 16e-3, high: 60e-3, by: 4e-3 },
  seatFit: { low: 0.01e-3, high: 0.12e-3, by: 0.01e-3 },
  capThickness: { low: 2e-3, high: 6e-3, by: 1e-3 },
  toeThickness: { low: 5e-3, high: 20e-3, times: 1.06 },
  toeLength: { low: 15e-3, high: 60e-3, times: 1.08 },
  toeWidth: { low: 10e-3, high: 40e-3, by: 2e-3 },
  sidewaysHold: { low: 2, high: 80, times: 1.2 },
  landing: { low: 15e-3, high: 160e-3, by: 5e-3 },
}

/** Names of all sizes. */
export const SIZES = Object.keys(LEVERS) as readonly (keyof LegSizes)[]

/** The sizes with one of them a step up or down; nothing where that is beyond its range. */
export function stepped(sizes: LegSizes, name: keyof LegSizes, steps: number): LegSizes | undefined {
  const { low, high, times, by } = LEVERS[name]
  const from = sizes[name]
  const to = times === undefined ? from + steps * (by as number) : from * times ** steps
  const within = Math.min(high, Math.max(low, to))
  return Math.abs(within - from) < 1e-9 * Math.max(1e-3, Math.abs(from)) ? undefined : { ...sizes, [name]: Number(within.toPrecision(6)) }
}
