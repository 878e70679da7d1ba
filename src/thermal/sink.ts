import { formula } from '../formula/index.js'
import { rayleighNumber } from './air.js'
import { AIR_PRESSURE, AIR_TEMPERATURE } from './film-inputs.js'
import { BASE_TEMPERATURE, FINS, SINK_WIDTH } from './sink-inputs.js'
import { CONDUCTIVITY } from './solid-inputs.js'

/** Fin spacing that sheds most heat from a plate-fin sink standing upright in still air. */
export const bestFinSpacing = /* @__PURE__ */ formula('thermal.bestFinSpacing', {
  inputs: {
    /** Height of the channels. */
    height: { kind: 'length', above: 0 },
    /** Temperature of the fins. */
    surfaceTemperature: { kind: 'temperature', min: '-60 degC', max: '400 degC' },
    ...AIR_TEMPERATURE,
    ...AIR_PRESSURE,
  },
  output: {
    /** Clear spacing. */
    spacing: 'length',
    /** Coefficient at that spacing. */
    coefficient: 'heatTransferCoefficient',
    /** Rayleigh number on the height. */
    rayleigh: 'ratio',
  },
  equation: ['spacing == 2.714 * height / rayleigh^(1 / 4)'],
  assumes: ['isothermal fins much thinner than their spacing', 'channels upright and open at both ends'],
  requires: {
    surfaceTemperature: {
      accepts: 'must differ from the temperature of the air',
      holds: ({ surfaceTemperature, airTemperature }) => surfaceTemperature !== airTemperature,
    },
  },
  source: [{ level: 'published', where: 'Bar-Cohen & Rohsenow 1984 (Çengel, section 9-3): 2.714 L/Ra^0.25, 1.307 k/S' }],
  si: ({ height, surfaceTemperature, airTemperature, pressure }) => {
    const { rayleigh, conductivity } = rayleighNumber.si({ surface: surfaceTemperature, air: airTemperature, length: height, pressure })
    const spacing = (2.714 * height) / rayleigh ** 0.25
    return { spacing, coefficient: (1.307 * conductivity) / spacing, rayleigh }
  },
})

/** Conductance of an upright plate-fin sink in still air, fins and the base between them. Radiation comes from its envelope and is not in it. */
export const plateFinSink = /* @__PURE__ */ formula('thermal.plateFinSink', {
  inputs: {
    ...SINK_WIDTH,
    /** Height of the channels, upright. */
    height: { kind: 'length', above: 0 },
    ...FINS,
    ...CONDUCTIVITY,
    ...BASE_TEMPERATURE,
    ...AIR_TEMPERATURE,
    ...AIR_PRESSURE,
  },
  output: {
    /** Clear spacing. */
    spacing: 'length',
    /** Coefficient in the channels. */
    coefficient: 'heatTransferCoefficient',
    /** Fin efficiency. */
    efficiency: 'ratio',
    /** Area of all fins, both faces and tips. */
    finArea: 'area',
    /** Base to air. */
    conductance: 'thermalConductance',
    /** Heat shed by convection. */
    heat: 'power',
  },
  assumes: ['channels upright and open at both ends; sideways channels earn nothing', 'symmetric isothermal channels'],
  requires: { fins: { accepts: 'must leave room between them', holds: (x) => x.fins * x.finThickness < x.width } },
  source: [
    { level: 'unverified', where: 'Bar-Cohen & Rohsenow 1984, isothermal symmetric channels; fin efficiency: Incropera, section 3.6' },
  ],
  si: ({ width, height, finLength, finThickness, fins, conductivity, surfaceTemperature, airTemperature, pressure }) => {
    const spacing = (width - fins * finThickness) / (fins - 1)
    const air = airTemperature
    // At no difference there is no draught; 1 mK keeps the limit finite.
    const surface = Math.abs(surfaceTemperature - air) < 1e-3 ? air + 1e-3 : surfaceTemperature
    const { rayleigh, conductivity: k } = rayleighNumber.si({ surface, air, length: spacing, pressure })
    const elenbaas = (rayleigh * spacing) / height
    const nusselt = 1 / Math.sqrt(576 / (elenbaas * elenbaas) + 2.873 / Math.sqrt(elenbaas))
    const coefficient = (nusselt * k) / spacing
    const corrected = finLength + finThickness / 2
    const x = corrected * Math.sqrt((2 * coefficient) / (conductivity * finThickness))
    const efficiency = Math.tanh(x) / x
    const finArea = 2 * fins * height * corrected
    const conductance = coefficient * (efficiency * finArea + (fins - 1) * spacing * height)
    return { spacing, coefficient, efficiency, finArea, conductance, heat: conductance * (surfaceTemperature - airTemperature) }
  },
})

/** How many fins of a thickness at a clear spacing stand on a width, a fin at both edges. */
export const finCount = /* @__PURE__ */ formula('thermal.finCount', {
  inputs: {
    /** Width across the fins. */
    width: { kind: 'length', above: 0 },
    /** Clear spacing. */
    spacing: { kind: 'length', above: 0 },
    /** Thickness of a fin. */
    thickness: { kind: 'length', above: 0 },
  },
  /** Number of fins. */
  output: 'count',
  equation: ['result = floor((width + spacing) / (spacing + thickness))'],
  assumes: ['the last spacing is left over'],
  source: [{ level: 'computed', where: 'a fin at each end: ⌊(width + spacing)/(spacing + thickness)⌋' }],
  si: ({ width, spacing, thickness }) => Math.floor((width + spacing) / (spacing + thickness)),
})
