import { type Crossings, findRoots } from '../numeric/index.js'
import { type SearchRange, SMALLEST } from './solve-range.js'

/** Combined results of the scans of a range. */
export interface ScanResult extends Crossings {
  /** Equal steps; 0 where the range was not scanned that way. */
  readonly steps: number
  /** Steps of equal ratio. */
  readonly ratios: number
}

/** Scans by equal parts between two ends, by equal ratios over magnitudes. */
export function scan(miss: (x: number) => number, range: SearchRange, samples: number, noise: number): ScanResult {
  const { lowest, highest, bounded } = range
  const all: Crossings[] = []
  let steps = 0
  let ratios = 0
  const byRatio = (lo: number, hi: number, mirror: 1 | -1) => {
    // A range without this sign is empty here, and a narrow one is scanned in equal steps.
    if (!(hi / lo > 1e3)) return
    const parts = Math.ceil((samples * Math.log10(hi / lo)) / DECADES)
    ratios += parts
    all.push(
      mirrored(
        findRoots((x) => miss(mirror * x), lo, hi, { samples: parts, spacing: 'log', noise }),
        mirror,
      ),
    )
  }
  byRatio(Math.max(lowest, SMALLEST), highest, 1)
  byRatio(Math.max(-highest, SMALLEST), -lowest, -1)
  if (bounded || all.length === 0) {
    steps = samples
    all.push(findRoots(miss, lowest, highest, { samples, noise }))
  }
  const zero = lowest <= 0 && highest >= 0 && Math.abs(miss(0)) <= noise
  const ranges = united(
    all.flatMap((each) => each.intervals),
    zero,
  )
  const rounding = (each: readonly [number, number]) => isRounding(miss, each, range, noise)
  const intervals = ranges.filter((each) => !rounding(each))
  const points = ranges.filter(rounding).map(([a, b]) => (a <= 0 && b >= 0 ? 0 : 0.5 * (a + b)))
  const outside = (x: number) => !ranges.some(([a, b]) => x >= a && x <= b)
  const roots = distinct([...[...all.flatMap((each) => each.roots), ...(zero ? [0] : [])].filter(outside), ...points], miss, noise)
  const poles = all.flatMap((each) => each.poles).sort((a, b) => a - b)
  return { roots, intervals, poles, steps, ratios }
}

/** Decades of magnitude over which the parts are spread. */
const DECADES = 24

const mirrored = ({ roots, intervals, poles }: Crossings, sign: 1 | -1): Crossings =>
  sign === 1
    ? { roots, intervals, poles }
    : { roots: roots.map((x) => -x), intervals: intervals.map(([a, b]) => [-b, -a] as const), poles: poles.map((x) => -x) }

/** Intervals of several scans put together where they overlap; those that begin at the smallest magnitude reach to zero where zero is one of them. */
function united(all: readonly (readonly [number, number])[], zero: boolean): (readonly [number, number])[] {
  const toZero = (x: number) => (zero && Math.abs(x) <= SMALLEST ? 0 : x)
  const sorted = all.map(([a, b]) => [toZero(a), toZero(b)] as const).sort((p, q) => p[0] - q[0])
  const merged: (readonly [number, number])[] = []
  for (const [a, b] of sorted) {
    const last = merged.at(-1)
    if (last !== undefined && a <= last[1]) merged[merged.length - 1] = [last[0], Math.max(last[1], b)]
    else merged.push([a, b])
  }
  return merged
}

/** From just outside a range of zeros to as far again beyond it the results grow by much more where it ends in a kink. */
const GROWTH = 1e5

/**
 * Whether a range of zeros is but the flat foot of a root that touches, zero only by rounding: at its end the results leave zero by a step of
 * rounding, and as far again beyond it they are hardly further off.
 */
function isRounding(
  miss: (x: number) => number,
  [a, b]: readonly [number, number],
  { lowest, highest }: SearchRange,
  noise: number,
): boolean {
  const reach = (end: number, side: number) => Math.min(b - a, side < 0 ? end - lowest : highest - end)
  const sides = (
    [
      [a, -1],
      [b, 1],
    ] as const
  ).filter(([end, side]) => (side < 0 ? end > lowest : end < highest))
  return (
    sides.length > 0 &&
    sides.every(([end, side]) => {
      const at = (part: number) => Math.abs(miss(end + side * part * reach(end, side)))
      const near = Math.max(at(1e-9), at(1e-8), at(1e-7), noise)
      return at(1) <= GROWTH * near
    })
  )
}

/** Roots without those that two scans found both. A touching root is known to half the digits only, so its two copies may differ by more. */
function distinct(found: readonly number[], miss: (x: number) => number, noise: number): number[] {
  const kept: number[] = []
  for (const root of [...found].sort((a, b) => a - b)) {
    const before = kept.at(-1)
    const apart =
      before === undefined ? Number.POSITIVE_INFINITY : Math.abs(root - before) / Math.max(Math.abs(root), Math.abs(before), SMALLEST)
    if (before === undefined || apart > 1e-6) kept.push(root)
    else if (apart > 1e-9) {
      const between = Math.abs(miss(0.5 * (before + root)))
      if (between > 2 * Math.max(Math.abs(miss(before)), Math.abs(miss(root)), noise)) kept.push(root)
    }
  }
  return kept
}
