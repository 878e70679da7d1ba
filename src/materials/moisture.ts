import { formula } from '../formula/index.js'
import { bracketRoot } from '../numeric/index.js'

/** A wall that takes up water. */
const DAMP_WALL = {
  /** Thickness of the wall; twice it when one face is sealed. */
  thickness: { kind: 'length', above: 0 },
  /** Diffusivity of water in the polymer at the temperature. */
  diffusivity: { kind: 'massDiffusivity', above: 0 },
} as const

/**
 * Share of the final uptake of a sheet wetted on both faces, by D·t/h² (h the full thickness).
 * The square-root form early and the cosine series late agree to 1e-13 where they meet.
 */
function uptakeShare(fourier: number): number {
  if (fourier <= 0) return 0
  if (fourier < 0.008) return 4 * Math.sqrt(fourier / Math.PI)
  let rest = 0
  for (let odd = 1; odd < 60; odd += 2) rest += Math.exp(-((odd * Math.PI) ** 2) * fourier) / odd ** 2
  return 1 - (8 / Math.PI ** 2) * rest
}

/** Water a wall has taken up (or given off) after a time, as a share of what it will take up in the end: Fick's law, wetted on both faces. */
export const waterUptake = /* @__PURE__ */ formula('materials.waterUptake', {
  inputs: {
    /** Time in the new climate. */
    time: { kind: 'time', min: 0 },
    ...DAMP_WALL,
  },
  /** Share of the change from the first to the final water content. */
  output: 'ratio',
  assumes: ['Fick’s law with constant diffusivity', 'faces at once in equilibrium with the air or water', 'solid wall without voids'],
  source: [{ level: 'unverified', where: 'Crank, The Mathematics of Diffusion, 2nd ed. 1975, p. 48 (plane sheet)' }],
  si: ({ time, thickness, diffusivity }) => uptakeShare((diffusivity * time) / thickness ** 2),
})

/** Time a wall takes to get a share of the way to its final water content. */
export const uptakeTime = /* @__PURE__ */ formula('materials.uptakeTime', {
  inputs: {
    /** Share of the change to reach. */
    share: { kind: 'ratio', above: 0, max: 0.9999 },
    ...DAMP_WALL,
  },
  /** Time. */
  output: 'time',
  assumes: ['Fick’s law with constant diffusivity', 'faces at once in equilibrium with the air or water', 'solid wall without voids'],
  source: [{ level: 'unverified', where: 'Crank, The Mathematics of Diffusion, 2nd ed. 1975, p. 48 (plane sheet)' }],
  si: ({ share, thickness, diffusivity }) => {
    const early = (Math.PI * share ** 2) / 16
    const fourier = early < 0.008 ? early : bracketRoot((x) => uptakeShare(x) - share, 0.0079, 2)
    return (fourier * thickness ** 2) / diffusivity
  },
})

/** Water content in equilibrium with air of a humidity: straight lines from dry to the content at 50 % and on to saturation. */
export const equilibriumMoisture = /* @__PURE__ */ formula('materials.equilibriumMoisture', {
  inputs: {
    /** Relative humidity. */
    humidity: { kind: 'ratio', min: 0, max: 1 },
    /** Water content in equilibrium with 50 % humidity. */
    conditioned: { kind: 'ratio', min: 0 },
    /** Water content when soaked. */
    saturated: { kind: 'ratio', min: 0 },
  },
  /** Water content by mass. */
  output: 'ratio',
  equation: ['result = humidity <= 1 / 2 ? conditioned * 2 * humidity : conditioned + (saturated - conditioned) * (2 * humidity - 1)'],
  assumes: ['straight between dry, 50 % humidity and soaked'],
  source: [{ level: 'commonPractice', where: 'interpolation between data-sheet values; polyamides bend upward towards saturation' }],
  requires: {
    saturated: { accepts: 'must be at least the conditioned content', holds: ({ conditioned, saturated }) => saturated >= conditioned },
  },
  si: ({ humidity, conditioned, saturated }) =>
    humidity <= 0.5 ? conditioned * (humidity / 0.5) : conditioned + (saturated - conditioned) * ((humidity - 0.5) / 0.5),
})

/** Growth of a dimension when the water content changes; negative when the part dries. */
export const moistureGrowth = /* @__PURE__ */ formula('materials.moistureGrowth', {
  inputs: {
    /** Dimension before. */
    length: { kind: 'length', min: 0 },
    /** Water content before, by mass. */
    before: { kind: 'ratio', min: 0 },
    /** Water content after, by mass. */
    after: { kind: 'ratio', min: 0 },
    /** Linear strain per share of water by mass. */
    swelling: { kind: 'ratio', min: 0 },
  },
  /** Change of the dimension. */
  output: 'length',
  equation: ['result = length * swelling * (after - before)'],
  assumes: ['swelling proportional to water', 'free to grow'],
  source: [
    {
      level: 'published',
      where:
        'Aniskevich, Bulderberga & Stankevics 2023, Polymers 15:2600, abstract (swelling of printed filaments linear in water content)',
    },
  ],
  si: ({ length, before, after, swelling }) => length * swelling * (after - before),
})

/** Growth for each share of water by mass if the water took the room that it has as a liquid: the most that a solid print can swell. */
export const additiveSwelling = /* @__PURE__ */ formula('materials.additiveSwelling', {
  inputs: {
    /** Density of the dry print, solid. */
    density: { kind: 'density', above: 0 },
  },
  /** Linear strain per share of water by mass. */
  output: 'ratio',
  equation: ['result = density / (3 * 1000 kg/m^3)'],
  assumes: ['volumes add', 'growth alike in all directions', 'water of 1000 kg/m³'],
  source: [
    {
      level: 'commonPractice',
      where:
        'volumes add; an upper bound, because water first fills free volume: cast PA6 grows 0.333 and moulded PA6 0.22 where this gives 0.38',
    },
  ],
  si: ({ density }) => density / 3000,
})

/**
 * Share of its dry strength or stiffness that a polymer keeps with a given water content.
 * Straight lines from dry to the content at 50 % humidity and on to saturation.
 */
export const moistureFactor = /* @__PURE__ */ formula('materials.moistureFactor', {
  inputs: {
    /** Water content by mass. */
    moisture: { kind: 'ratio', min: 0 },
    /** Water content in equilibrium with 50 % humidity. */
    conditioned: { kind: 'ratio', above: 0 },
    /** Water content when soaked. */
    saturated: { kind: 'ratio', above: 0 },
    /** Share kept at 50 % humidity. */
    conditionedShare: { kind: 'ratio', min: 0, max: 1 },
    /** Share kept when soaked. */
    saturatedShare: { kind: 'ratio', min: 0, max: 1 },
  },
  /** Share of the dry value. */
  output: 'ratio',
  equation: [
    'result = moisture <= conditioned ? 1 - (1 - conditionedShare) * moisture / conditioned : moisture < saturated ? conditionedShare - (conditionedShare - saturatedShare) * (moisture - conditioned) / (saturated - conditioned) : saturatedShare',
  ],
  assumes: ['uniform water content through the wall', 'the effect is that of the content alone'],
  source: [{ level: 'commonPractice', where: 'interpolation between dry, conditioned and saturated data-sheet values' }],
  valid: { 'a content at most that of saturation': ({ moisture, saturated }) => moisture <= saturated * (1 + 1e-12) },
  requires: {
    saturated: { accepts: 'must be above the conditioned content', holds: ({ conditioned, saturated }) => saturated > conditioned },
    saturatedShare: {
      accepts: 'must be at most the share at 50 % humidity',
      holds: ({ conditionedShare, saturatedShare }) => saturatedShare <= conditionedShare,
    },
  },
  si: ({ moisture, conditioned, saturated, conditionedShare, saturatedShare }) =>
    moisture <= conditioned
      ? 1 - (1 - conditionedShare) * (moisture / conditioned)
      : moisture < saturated
        ? conditionedShare - ((conditionedShare - saturatedShare) * (moisture - conditioned)) / (saturated - conditioned)
        : saturatedShare,
})
