import { type Chart, lineChart } from '../chart/index.js'
import type { Given } from '../formula/index.js'
import { normalPdf } from '../numeric/index.js'
import { type In, kindWords, quantity } from '../units/index.js'
import { fitProbability } from './print-fit.js'
import { type ClampRemedySpecification, compareClampRemedies } from './remedies.js'

/** Clamp load over time of a joint and its remedies, with the clamp load that is needed. */
export function clampLoadChart(specification: ClampRemedySpecification, needed: In<'force'>): Chart {
  const days = specification.times.map((time) => quantity('time', time).in('day'))
  const series = compareClampRemedies(specification).map(({ remedy, clampLoads, state }) => ({
    name: state === 'works' ? kindWords(remedy) : `${kindWords(remedy)} (${kindWords(state)})`,
    points: clampLoads.map((load, i) => [days[i]!, load.in('N')] as const),
  }))
  return lineChart({
    title: 'Clamp load over time',
    description: 'Clamp load of a printed joint against time as it is and with each remedy, against the load that is needed.',
    x: { title: 'time', unit: 'day' },
    y: { title: 'clamp load', unit: 'N', zero: true },
    series,
    rules: [{ name: 'needed', at: quantity('force', needed).in('N') }],
  })
}

const POINTS = 120

/** How the interference of a pin in printed holes spreads, between loose and split. */
export function interferenceChart(fit: Given<(typeof fitProbability)['def']['inputs']>): Chart {
  const { mean, scatter, looseProbability, splitProbability } = fitProbability(fit)
  const [middle, sd] = [mean.in('um'), scatter.in('um')]
  const percent = (share: number) => `${(100 * share).toPrecision(2)} %`
  const points = Array.from({ length: POINTS + 1 }, (_, i) => {
    const z = -4 + (8 * i) / POINTS
    return [middle + z * sd, normalPdf(z) / sd] as const
  })
  return lineChart({
    title: 'Interference of pin and printed hole',
    description: `Distribution of the diametral interference: ${percent(looseProbability.si)} loose, ${percent(splitProbability.si)} split.`,
    x: { title: 'diametral interference', unit: 'µm' },
    y: { title: 'share per µm', unit: '1', zero: true },
    series: [{ name: 'interference', points }],
    rules: [
      { name: `loose ${percent(looseProbability.si)}`, at: quantity('length', fit.neededInterference ?? '0 mm').in('um'), axis: 'x' },
      { name: `split ${percent(splitProbability.si)}`, at: quantity('length', fit.allowableInterference).in('um'), axis: 'x' },
    ],
  })
}
