import { formula } from '../formula/index.js'

const TEMPERATURE = {
  /** Temperature. */
  temperature: { kind: 'temperature', above: 0 },
} as const

const REFERENCE = {
  /** Temperature the master curve is for. */
  reference: { kind: 'temperature', above: 0 },
} as const

/** Thermal activation. */
const ARRHENIUS = {
  /** Apparent activation energy. */
  activationEnergy: { kind: 'activationEnergy', min: 0 },
  /** Glass transition; given, the range of the law is watched. */
  glassTransition: { kind: 'glassTransitionTemperature', above: 0, optional: true },
} as const

const GAS = 8.31446261815324

/**
 * Shift factor of time with temperature below the glass transition: ln a = (Eₐ/R)(1/T − 1/T₀).
 * A time t at the temperature does what t/a does at the reference; a is below one when it is hotter. The activation energy is a fitted
 * number, 100 to 250 kJ/mol for glasses, and the result is very sensitive to it: print a range.
 */
export const arrheniusShift = /* @__PURE__ */ formula('materials.arrheniusShift', {
  title: 'Arrhenius shift factor of time with temperature',
  inputs: {
    ...TEMPERATURE,
    ...REFERENCE,
    ...ARRHENIUS,
  },
  /** Shift factor. */
  output: 'ratio',
  equation: ['result = exp(activationEnergy / (8.31446261815324 J / (mol K)) * (1 / temperature - 1 / reference))'],
  assumes: ['thermorheologically simple', 'one process with one activation energy'],
  source: [
    {
      level: 'published',
      where: 'University of Florida thesis, p. 47 (Arrhenius below the reference temperature, Williams-Landel-Ferry above)',
    },
  ],
  valid: {
    'both temperatures at or below the glass transition': ({ temperature, reference, glassTransition }) =>
      glassTransition === undefined || Math.max(temperature, reference) <= glassTransition,
  },
  si: ({ temperature, reference, activationEnergy }) => Math.exp((activationEnergy / GAS) * (1 / temperature - 1 / reference)),
})

/**
 * Shift factor of time with temperature above the glass transition (Williams-Landel-Ferry): log a = −C₁(T − T₀)/(C₂ + T − T₀).
 * Below the reference temperature it must not be used: a checked call then carries a note, a strict call throws, and at C₂ below it there
 * is no answer at all.
 */
export const wlfShift = /* @__PURE__ */ formula('materials.wlfShift', {
  inputs: {
    ...TEMPERATURE,
    /** Reference temperature; the glass transition for the universal constants. */
    reference: { kind: 'temperature', above: 0 },
    /** C₁. */
    c1: { kind: 'ratio', above: 0, default: 17.44 },
    /** C₂. */
    c2: { kind: 'temperatureDifference', above: 0, default: '51.6 K' },
  },
  /** Shift factor. */
  output: 'ratio',
  equation: ['result = 10^(-c1 * (temperature - reference) / (c2 + temperature - reference))'],
  assumes: ['thermorheologically simple', 'free volume governs'],
  source: [
    { level: 'unverified', where: 'Williams, Landel & Ferry 1955 (universal constants)' },
    { level: 'published', where: 'IUPAC Gold Book 12821 (form; valid from the glass transition to about 50 K above)' },
  ],
  requires: {
    temperature: {
      accepts: 'must be less than c2 below the reference, where the law ends; use arrheniusShift there',
      holds: ({ temperature, reference, c2 }) => temperature > reference - c2,
    },
  },
  valid: {
    'temperature at or above the reference; below it the law is wrong, use arrheniusShift': ({ temperature, reference }) =>
      temperature >= reference,
    'at most 100 K above the reference': ({ temperature, reference }) => temperature <= reference + 100,
  },
  si: ({ temperature, reference, c1, c2 }) => {
    const above = temperature - reference
    return c2 + above > 0 ? 10 ** ((-c1 * above) / (c2 + above)) : Number.POSITIVE_INFINITY
  },
})

/**
 * Shift factor between two temperatures on either side of the glass transition: Arrhenius below it, Williams-Landel-Ferry above.
 * The two laws meet at the glass transition with a break in slope of several times; a result that crosses it carries a note.
 */
export const timeTemperatureShift = /* @__PURE__ */ formula('materials.timeTemperatureShift', {
  inputs: {
    ...TEMPERATURE,
    ...REFERENCE,
    /** Glass transition. */
    glassTransition: { kind: 'glassTransitionTemperature', above: 0 },
    /** Apparent activation energy below the glass transition. */
    activationEnergy: { kind: 'activationEnergy', min: 0 },
    /** C₁ above the glass transition. */
    c1: { kind: 'ratio', above: 0, default: 17.44 },
    /** C₂ above the glass transition. */
    c2: { kind: 'temperatureDifference', above: 0, default: '51.6 K' },
  },
  output: {
    /** Shift factor. */
    shift: 'ratio',
    /** Law that holds at the temperature. */
    law: { oneOf: ['arrhenius', 'wlf'] },
  },
  assumes: ['thermorheologically simple on each side of the glass transition'],
  source: [
    {
      level: 'published',
      where: 'University of Florida thesis, p. 47 (Arrhenius below the reference temperature, Williams-Landel-Ferry above)',
    },
  ],
  valid: {
    'temperature and reference on one side of the glass transition; across it the two laws join with a break in slope of several times': ({
      temperature,
      reference,
      glassTransition,
    }) => temperature > glassTransition === reference > glassTransition,
    'at most 100 K above the glass transition': ({ temperature, glassTransition }) => temperature <= glassTransition + 100,
  },
  si: ({ temperature, reference, glassTransition, activationEnergy, c1, c2 }) => {
    const fromTransition = (t: number) =>
      t > glassTransition
        ? wlfShift.si({ temperature: t, reference: glassTransition, c1, c2 })
        : arrheniusShift.si({ temperature: t, reference: glassTransition, activationEnergy, glassTransition })
    return { shift: fromTransition(temperature) / fromTransition(reference), law: temperature > glassTransition ? 'wlf' : 'arrhenius' }
  },
})

/** Time at the reference temperature that does what a time at another temperature does. */
export const equivalentTime = /* @__PURE__ */ formula('materials.equivalentTime', {
  inputs: {
    /** Time at the temperature. */
    time: { kind: 'time', min: 0 },
    /** Shift factor from that temperature to the reference. */
    shift: { kind: 'ratio', above: 0 },
  },
  /** Equivalent time at the reference temperature. */
  output: 'time',
  equation: ['result = time / shift'],
  assumes: ['time-temperature superposition: E(t, T) = E(t/a, T₀)'],
  source: [{ level: 'unverified', where: 'Ferry, Viscoelastic Properties of Polymers, 3rd ed.' }],
  si: ({ time, shift }) => time / shift,
})

/** Time at the reference temperature that does what a day or a season of changing temperature does, below the glass transition. */
export const equivalentTimeOfHistory = /* @__PURE__ */ formula('materials.equivalentTimeOfHistory', {
  inputs: {
    /** How long each spell lasts. */
    durations: { list: { kind: 'time', min: 0 } },
    /** Temperature of each spell. */
    temperatures: { list: { kind: 'temperature', above: 0 } },
    /** Reference temperature. */
    reference: { kind: 'temperature', above: 0 },
    ...ARRHENIUS,
  },
  output: {
    /** Equivalent time at the reference temperature. */
    time: 'time',
    /** Share of it that came from the hottest spell. */
    hottestShare: 'ratio',
  },
  assumes: ['thermorheologically simple', 'reduced time adds up'],
  source: [{ level: 'unverified', where: 'Morland & Lee 1960 (reduced time)' }],
  requires: {
    temperatures: {
      accepts: 'must be as many as durations',
      holds: ({ durations, temperatures }) => durations.length === temperatures.length,
    },
  },
  valid: {
    'every temperature at or below the glass transition': ({ temperatures, glassTransition }) =>
      glassTransition === undefined || temperatures.every((t) => t <= glassTransition),
  },
  si: ({ durations, temperatures, reference, activationEnergy }) => {
    let time = 0
    let hottest = 0
    let atHottest = 0
    for (let i = 0; i < durations.length; i++) {
      const temperature = temperatures[i] as number
      const part = (durations[i] as number) / arrheniusShift.si({ temperature, reference, activationEnergy, glassTransition: undefined })
      time += part
      if (temperature > hottest) {
        hottest = temperature
        atHottest = part
      } else if (temperature === hottest) atHottest += part
    }
    return { time, hottestShare: time > 0 ? atHottest / time : 0 }
  },
})
