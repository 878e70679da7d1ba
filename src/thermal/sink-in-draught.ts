import { formula } from '../formula/index.js'
import { airProperties } from './air.js'
import { AIR_PRESSURE, AIR_TEMPERATURE } from './film-inputs.js'
import { BASE_TEMPERATURE, FINS, SINK_WIDTH } from './sink-inputs.js'

/** Loss of pressure at the entrance of a gap while its flow develops, in dynamic pressures of the gap. */
const ENTRANCE = 0.674

/**
 * Conductance of a plate-fin sink in a stream of air along its fins, limited by the air that enters the gaps.
 *
 * The dynamic pressure of the stream drives the air through each gap. Friction slows it there, and the air leaves no warmer than the fins: a narrow gap
 * sheds little heat, however much area it has.
 */
export const plateFinSinkInDraught = /* @__PURE__ */ formula('thermal.plateFinSinkInDraught', {
  inputs: {
    ...SINK_WIDTH,
    /** Length of the gaps along the stream. */
    height: { kind: 'length', above: 0 },
    ...FINS,
    /** Conductivity of the sink. */
    conductivity: { kind: 'thermalConductivity', above: 0 },
    /** Speed of the air in front of the sink. */
    speed: { kind: 'velocity', above: 0 },
    ...BASE_TEMPERATURE,
    ...AIR_TEMPERATURE,
    ...AIR_PRESSURE,
  },
  output: {
    /** Clear gap between two fins. */
    spacing: 'length',
    /** Mean speed of the air in a gap. */
    gapSpeed: 'velocity',
    /** Mean coefficient in a gap. */
    coefficient: 'heatTransferCoefficient',
    /** Fin efficiency. */
    efficiency: 'ratio',
    /** How far the air in a gap warms towards the fins: near 1 the gap lacks air. */
    airWarmed: 'ratio',
    /** Base to air. */
    conductance: 'thermalConductance',
  },
  assumes: [
    'stream along the fins; air neither enters nor leaves a gap over the tips',
    'laminar flow that develops from the entrance; outer faces of the two outer fins in the free stream, laminar',
    'fins much thinner than long',
  ],
  requires: { fins: { accepts: 'must leave room between them', holds: (x) => x.fins * x.finThickness < x.width } },
  valid: {
    'gap wide enough for its air: the air warms by at most four fifths of the difference to the fins': (_, { airWarmed }) =>
      airWarmed <= 0.8,
    'Reynolds number of a gap up to 2300 (laminar)': ({ surfaceTemperature, airTemperature, pressure }, { spacing, gapSpeed }) =>
      (2 * spacing * gapSpeed) / airProperties.si({ temperature: 0.5 * (surfaceTemperature + airTemperature), pressure }).viscosity <= 2300,
  },
  source: [
    {
      level: 'computed',
      where:
        'balance of dynamic pressure, entrance loss and laminar friction of a gap (96/Re); heat taken up by the air as in a heat exchanger with one fluid of constant temperature',
    },
    {
      level: 'unverified',
      where:
        'Shah & London 1978, Laminar Flow Forced Convection in Ducts: parallel plates, entrance loss 0.674, mean Nusselt number of Stephan 1959 (a marched boundary layer confirms both: it is up to 7 % higher)',
    },
  ],
  si: ({ width, height, finLength, finThickness, fins, conductivity, speed, surfaceTemperature, airTemperature, pressure }) => {
    const spacing = (width - fins * finThickness) / (fins - 1)
    const air = airProperties.si({ temperature: 0.5 * (surfaceTemperature + airTemperature), pressure })
    // (1 + entrance) u²/2 + 12 ν H/s² u = U²/2
    const friction = (12 * air.viscosity * height) / (spacing * spacing)
    const gapSpeed = (speed * speed) / (friction + Math.sqrt(friction * friction + (1 + ENTRANCE) * speed * speed))
    const diameter = 2 * spacing
    const star = height / (diameter * ((gapSpeed * diameter) / air.viscosity) * air.prandtl)
    const nusselt = 7.55 + (0.024 * star ** -1.14) / (1 + 0.0358 * air.prandtl ** 0.17 * star ** -0.64)
    const coefficient = (nusselt * air.conductivity) / diameter
    const corrected = finLength + finThickness / 2
    const x = corrected * Math.sqrt((2 * coefficient) / (conductivity * finThickness))
    const efficiency = Math.tanh(x) / x
    // k/(ρ c) = ν/Pr: heat capacity flow of the air of one gap.
    const flow = ((air.conductivity * air.prandtl) / air.viscosity) * gapSpeed * spacing * finLength
    const airWarmed = -Math.expm1((-coefficient * height * (2 * efficiency * corrected + spacing)) / flow)
    const outer = (0.664 * Math.sqrt((speed * height) / air.viscosity) * Math.cbrt(air.prandtl) * air.conductivity) / height
    const y = corrected * Math.sqrt(outer / (conductivity * finThickness))
    const conductance = (fins - 1) * flow * airWarmed + (outer * 2 * height * corrected * Math.tanh(y)) / y
    return { spacing, gapSpeed, coefficient, efficiency, airWarmed, conductance }
  },
})
