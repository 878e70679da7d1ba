import { GCProfiler } from 'node:v8'
import type { Line } from './harness.js'

/** One call that should leave next to nothing on the heap. */
export interface AllocationRow {
  readonly work: string
  readonly atMostBytes: number
  readonly call: (i: number) => void
}

const TIMES = 100_000
/** On a busy machine the engine compiles late, and until then puts more numbers on the heap. */
const MOST_ROUNDS = 20

/** Bytes that a call leaves on the heap, on average over many calls. */
function bytesPerCall(call: (i: number) => void): number {
  for (let i = 0; i < TIMES; i++) call(i)
  const profiler = new GCProfiler()
  let last = process.memoryUsage().heapUsed
  profiler.start()
  for (let i = 0; i < TIMES; i++) call(i)
  let bytes = 0
  for (const { beforeGC, afterGC } of profiler.stop().statistics) {
    bytes += beforeGC.heapStatistics.usedHeapSize - last
    last = afterGC.heapStatistics.usedHeapSize
  }
  return (bytes + process.memoryUsage().heapUsed - last) / TIMES
}

/** Checks the gauge itself: a call that makes an object each time must show. */
function checkGauge(): void {
  const kept: unknown[] = []
  const bytes = bytesPerCall((i) => {
    kept[i & 7] = { x: i, y: [i, i + 1], z: new Float64Array(3) }
  })
  if (!(bytes > 136)) throw new Error(`allocation: the heap gauge shows ${bytes} bytes for a call that makes three objects`)
}
checkGauge()

/** Measures a row: the least of several rounds, because a call that makes objects makes them in every round. */
export function measureAllocation({ work, atMostBytes, call }: AllocationRow): Line[] {
  let least = Number.POSITIVE_INFINITY
  for (let round = 0; round < MOST_ROUNDS && least > atMostBytes; round++) least = Math.min(least, bytesPerCall(call))
  return [
    {
      work,
      ours: `${Math.max(0, least).toFixed(1)} bytes`,
      reference: '',
      ratio: '',
      target: `≤ ${atMostBytes} bytes`,
      verdict: least <= atMostBytes ? 'met' : 'MISSED',
    },
  ]
}
