/** Sizes of one leg that the search changes, SI numbers and places in lists. */
export interface LegSizes {
  /** Length of each of the two links, m. */
  readonly linkLength: number
  /** Standing height over the length of both links. */
  readonly stand: number
  /** Ratio of the hip's cord drive: drum over pinion at the cord's centre line. */
  readonly hipRatio: number
  /** Ratio of the knee's cord drive: drum over pinion at the cord's centre line. */
  readonly kneeRatio: number
  /** Pinion over cord diameter at the cord's centre line. */
  readonly bendRatio: number
  /** Pretension of the hip's cord, N. */
  readonly hipPretension: number
  /** Pretension of the knee's cord, N. */
  readonly kneePretension: number
  /** Travel of the tensioner's screw, m. */
  readonly tensionerTravel: number
  /** Diameter of the post that anchors the cord on the drum, m. */
  readonly anchorDiameter: number
  /** Length of that post, m. */
  readonly anchorLength: number
  /** Number of bolts through each drum; 0 is none. */
  readonly drumBolts: number
  /** Place of the hip's pin in the list of pins, the thinnest first. */
  readonly hipPin: number
  /** Place of the knee's pin in the list of pins, the thinnest first. */
  readonly kneePin: number
  /** Thickness of each cheek at the hip's pin, m. */
  readonly hipCheek: number
  /** Thickness of each cheek at the knee's pin, m. */
  readonly kneeCheek: number
  /** Thickness of the lug between the cheeks at the hip, m. */
  readonly hipLug: number
  /** Thickness of the lug between the cheeks at the knee, m. */
  readonly kneeLug: number
  /** Boss over pin diameter, interference over pin diameter, edge distance over pin diameter. */
  readonly hipBoss: number
  /** Outer diameter of the knee's bosses over the diameter of its pin. */
  readonly kneeBoss: number
  /** Interference of the hip's pin in its bosses over its diameter. */
  readonly hipFit: number
  /** Interference of the knee's pin in its bosses over its diameter. */
  readonly kneeFit: number
  /** Edge distance of each pin's hole over the diameter of the pin. */
  readonly bossEdge: number
  /** Depth of the upper link in the plane of bending, m. */
  readonly upperDepth: number
  /** Wall of the upper link, m. */
  readonly upperWall: number
  /** Depth of the lower link in the plane of bending, m. */
  readonly lowerDepth: number
  /** Wall of the lower link, m. */
  readonly lowerWall: number
  /** Place of the stack bolts' thread in the list M4, M5, M6, M8. */
  readonly stackThread: number
  /** Distance of the far rows of stack bolts from the edge that the stack tips over, m. */
  readonly stackArm: number
  /** Place of the motor bolts' thread in the list M3, M4, M5, M6. */
  readonly motorThread: number
  /** Share of the usual tightening torque. */
  readonly tightening: number
  /** Thickness of the motor's plate, m. */
  readonly plateThickness: number
  /** Side of the motor's plate less the diameter of the can, m. */
  readonly plateMargin: number
  /** Thickness of the aluminium sink between motor and plate, m; 0 is none. */
  readonly sinkThickness: number
  /** Place of the hip's bearings in the list of sizes, the lightest first. */
  readonly bearing: number
  /** Distance between the two hip bearings, m. */
  readonly bearingSpacing: number
  /** Interference of a bearing in its printed seat, m. */
  readonly seatFit: number
  /** Thickness of the hip shaft's end cap, m. */
  readonly capThickness: number
  /** Thickness of a toe, m. */
  readonly toeThickness: number
  /** Length of a toe, m. */
  readonly toeLength: number
  /** Width of a toe, m. */
  readonly toeWidth: number
  /** Torque that the sideways hip holds, N m. */
  readonly sidewaysHold: number
  /** Travel of the hip over which a landing is braked, m. */
  readonly landing: number
}

/** One size: lowest, highest, and the step of the search as a factor (`times`) or a difference (`by`). */
interface Lever {
  readonly low: number
  readonly high: number
  readonly times?: number
  readonly by?: number
  /** Whether it goes by whole steps only, as the place of a thread in a list does. */
  readonly whole?: true
}

/** Sizes that the search may change, with their ranges. */
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
  drumBolts: { low: 0, high: 6, by: 3, whole: true },
  hipPin: { low: 0, high: 5, by: 1, whole: true },
  kneePin: { low: 0, high: 5, by: 1, whole: true },
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
  stackThread: { low: 0, high: 3, by: 1, whole: true },
  stackArm: { low: 24e-3, high: 90e-3, by: 4e-3 },
  motorThread: { low: 0, high: 3, by: 1, whole: true },
  tightening: { low: 0.3, high: 1.2, by: 0.1 },
  plateThickness: { low: 4e-3, high: 12e-3, by: 1e-3 },
  plateMargin: { low: 8e-3, high: 60e-3, by: 4e-3 },
  sinkThickness: { low: 0, high: 8e-3, by: 1e-3 },
  bearing: { low: 0, high: 3, by: 1, whole: true },
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

/** Places in the list of sizes of those that go by whole steps. */
export const WHOLE: readonly number[] = SIZES.flatMap((name, j) => (LEVERS[name].whole ? [j] : []))

/** How many steps a size, by its place in the list of sizes, may go down (negative) and up. */
export function room(sizes: LegSizes, place: number): { readonly least: number; readonly most: number } {
  const name = SIZES[place] as keyof LegSizes
  const { low, high, times, by } = LEVERS[name]
  const steps = (to: number) => (times === undefined ? (to - sizes[name]) / (by as number) : Math.log(to / sizes[name]) / Math.log(times))
  return { least: steps(low), most: steps(high) }
}

/** Parts of a step that sizes are rounded to, so that they can be drawn and printed. */
const PARTS = 10
const DIGITS = 3

/** The sizes after any steps of each, by its place in the list of sizes, rounded to what one would draw. What does not move stays as it is. */
export function movedBy(sizes: LegSizes, steps: (place: number) => number): LegSizes {
  const moved: Record<string, number> = { ...sizes }
  SIZES.forEach((name, place) => {
    const t = steps(place)
    if (t === 0) return
    const { low, high, times, by = 1 } = LEVERS[name]
    const to = times === undefined ? sizes[name] + t * by : sizes[name] * times ** t
    const round = times === undefined ? (Math.round((PARTS * to) / by) * by) / PARTS : Number(to.toPrecision(DIGITS))
    moved[name] = Number(Math.min(high, Math.max(low, round)).toPrecision(6))
  })
  return moved as unknown as LegSizes
}
