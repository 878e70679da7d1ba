import type { LogRemark } from './logs.js'

/** Treatment of readings far outside the scatter of the rest. */
export interface SpikeOptions {
  /** Readings far outside the scatter of the rest: left out of the fit (default) or kept in it. They are reported either way. */
  readonly spikes?: 'leaveOut' | 'keep'
}

/** Readings farther than this many robust deviations from many others are spikes; of few, whose median deviation is chance, this much more each. */
const SPIKE_DEVIATIONS = 6
const OF_FEW = 5
/** The median of absolute deviations of a normal scatter, over its standard deviation. */
const MAD = 0.6744897501960817
/** Fewest readings of which one can be called a spike. */
const MIN_READINGS = 5

/**
 * Readings far outside the scatter of the rest, by index. `closest` is the least scatter that is believed. `freedom` is how many readings the fit left
 * free: few readings lie closer to their own fit than to the truth.
 */
function spikesOf(deviations: readonly number[], closest: number, freedom: number): number[] {
  const median = (list: readonly number[]) => {
    const sorted = [...list].sort((a, b) => a - b)
    const half = sorted.length >> 1
    return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2
  }
  const middle = median(deviations)
  const nearer = Math.sqrt(deviations.length / freedom)
  const deviation = Math.max((nearer * median(deviations.map((r) => Math.abs(r - middle)))) / MAD, closest)
  const most = SPIKE_DEVIATIONS * (1 + OF_FEW / deviations.length) * deviation
  return deviations.flatMap((r, i) => (Math.abs(r - middle) > most ? [i] : []))
}

/** Which readings stay: all that were kept before, without the spikes. Every spike is reported. */
export function withoutSpikes(
  log: string,
  lines: readonly number[],
  kept: readonly boolean[],
  channels: readonly { readonly deviations: readonly number[]; readonly closest: number; readonly freedom?: number }[],
  remarks: LogRemark[],
  options: SpikeOptions,
): readonly boolean[] {
  const at = kept.flatMap((keep, i) => (keep ? [i] : []))
  if (at.length < MIN_READINGS) return kept
  const spikes = new Set(
    channels.flatMap(({ deviations, closest, freedom = at.length }) =>
      spikesOf(
        at.map((i) => deviations[i]!),
        closest,
        freedom,
      ).map((k) => at[k]!),
    ),
  )
  const keep = options.spikes === 'keep'
  for (const i of [...spikes].sort((a, b) => a - b))
    remarks.push({
      log,
      line: lines[i],
      what: 'spike',
      message: `far outside the scatter of the other readings; ${keep ? 'kept' : 'left out'}`,
    })
  return keep ? kept : kept.map((isKept, i) => isKept && !spikes.has(i))
}
