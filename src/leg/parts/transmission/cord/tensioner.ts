import { cordToCut, takeUp } from '../../../../capstan/index.js'
import type { Check } from '../../../cases/check.js'
import { temperatureRise } from '../../../lines.js'
import { constant, line, value } from '../../../run/index.js'
import { airTemperature, assemblyTemperature } from '../../load/fields.js'
import { thermalExpansion } from '../../materials/values.js'
import * as cord from './fields.js'
import { drumRadius, pinionRadius } from './radii.js'
import { geometry, pretensionAsSet } from './values.js'

const creepOf = line(
  'creep of the cord in a year',
  { pretension: 'force', left: 'ratio', rigidity: 'axialRigidity' },
  'strain',
  'pretension · (1 − left) / rigidity',
  (x) => (x.pretension * (1 - x.left)) / x.rigidity,
)
/** Stretch of a new braid that stays. */
export const beddingStrain = constant('cord.beddingStrain', {
  title: 'permanent stretch of a new cord',
  kind: 'strain',
  typical: 0.01,
  low: 0.005,
  high: 0.02,
  source: { level: 'assumption', where: 'one per cent for a new braid' },
  measuredBy: 'load a metre of cord ten times to a third of its strength and measure what stays',
})

/** In the air of a load case: the cord grows with heat as it does, the frame as it does, and what loosens the cord is taken up as well. */
const takenUp = value('tensioner.takenUp', ['joint', 'air'], (use) => {
  const { span, drumWrapAngle, pinionWrap } = use(geometry)
  const [set, axialRigidity] = [use(pretensionAsSet), use(cord.axialRigidity)]
  const { workingLength } = use.run(cordToCut, {
    span,
    drumRadius: use(drumRadius),
    drumWrapTotal: drumWrapAngle,
    pinionRadius: use(pinionRadius),
    pinionWrap,
    groovePitch: use(cord.drum.groovePitch),
    endLength: 0,
    tailLength: 0,
    strain: 0,
  })
  return use.run(takeUp, {
    workingLength,
    pretension: set,
    axialRigidity,
    beddingStrain: use(beddingStrain),
    creepStrain: use.run(creepOf, { pretension: set, left: use(cord.pretensionLeft), rigidity: axialRigidity }),
    slack: use(cord.tensioner.slackAtAssembly),
    temperatureRise: use.run(temperatureRise, { air: use(airTemperature), assembly: use(assemblyTemperature) }),
    frameExpansion: use.at(thermalExpansion, { material: use(cord.frameMaterial) }),
    cordExpansion: use(cord.thermalExpansion),
  }).total
})

/** Whether the tensioner takes up all the cord that there is to take up. */
export const tensionerCheck: Check = {
  id: 'tensioner.travel',
  part: 'tensioner',
  mode: 'runs out of travel',
  consequence: 'fails to work',
  kind: 'length',
  scope: 'joint',
  when: ['repeats', 'coldFit', 'warms'],
  demand: takenUp,
  capacity: cord.tensioner.travel,
  demandIs: 'the cord to take up: slack of assembly, stretch, bedding, creep, and what heat or cold loosens',
  capacityIs: 'the travel of the tensioner (pulling one end)',
  remedy: 'a longer tensioner, or stretch the cord before it is built in',
}
