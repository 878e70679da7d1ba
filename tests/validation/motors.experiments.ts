import { backEmfConstant, torqueConstants } from '../../src/thermal/index.js'
import { experiment } from './experiment.js'

const URS = 'K. Urs, open data set actuator-dynamometer; motor of Urs, Adu, Rouse, Moore, arXiv 2202.12395'

export const experiments = [
  experiment({
    subject: 'motor',
    what: 'torque per ampere of q-axis current at stall',
    kind: 'torqueConstantPeakPhase',
    conditions:
      'motor of 14 poles in a printed PLA housing, torque sensor; back-EMF by the calibration of its controller 0.44112 V peak of a phase per rev/s (phase inferred)',
    measured: {
      value: '0.1012 N m/A',
      low: '0.0984 N m/A',
      high: '0.1039 N m/A',
      scatter: 'slopes of four currents in either direction, standard deviation of a torque 0.01 N m',
    },
    source: URS,
    judges: 'model',
    outside: 'the calibration of a controller is not a spun motor: the library has no basis for it yet, and takes the EMF as exact',
    predict: () => {
      const lineToLine = (Math.sqrt(3) * 0.44112) / (2 * Math.PI)
      const { low, typical, high } = backEmfConstant.si({ speedConstant: 1 / lineToLine, basis: 'spunPeakLineToLine' })
      const of = (constant: number) => torqueConstants.si({ backEmfConstant: constant }).peakPhase
      return { low: of(low), typical: of(typical), high: of(high) }
    },
  }),
]
