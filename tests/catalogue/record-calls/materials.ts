import * as materials from '../../../src/materials/index.js'
import { one, type RecordCall, several } from './call.js'

const use = { temperature: '40 degC', duration: '30 day', direction: 'acrossLayers', moisture: 'dry', safetyFactor: 2 }
const readings = [1, 3, 10, 30, 100, 300, 1000].map((h) => ({ stress: '10 MPa', time: `${h} h`, strain: 0.005 + 0.001 * h ** 0.3 }))
const findley = { modulus: '2 GPa', creepCoefficient: 0.1, creepExponent: 0.25 }
const law = materials.findleyLaw(findley as never)
const relaxation = { longTermModulus: '0.5 GPa', terms: [{ modulus: '1 GPa', time: '100 s' }] }
const compliance = { instantCompliance: '0.5 1/GPa', terms: [{ compliance: '0.2 1/GPa', time: '100 s' }] }
const relaxed = [1, 10, 100, 1000, 10000].map((t) => ({ time: `${t} s`, modulus: `${2 - 0.2 * Math.log10(t)} GPa` }))

export const calls: readonly RecordCall[] = [
  several('fitRelaxation', { readings: relaxed, options: { termsPerDecade: 1 } }, (x) => materials.fitRelaxation(x.readings, x.options)),
  several(
    'fitNortonBailey',
    {
      readings: [...readings, ...readings.map((each) => ({ ...each, stress: '20 MPa', strain: 2.2 * each.strain }))],
      options: { confidence: 0.9 },
    },
    (x) => materials.fitNortonBailey(x.readings, x.options),
  ),
  one('allowableStress', use, (x) => materials.allowableStress(materials.petg, x)),
  one('designModulus', { temperature: '30 degC', duration: '30 day', direction: 'alongLayers', moisture: 'dry' }, (x) =>
    materials.designModulus(materials.petg, x),
  ),
  one('slidingFriction', { on: 'steel', surface: 'dry' }, (x) => materials.slidingFriction(materials.petg, x)),
  several('fitFindley', { readings, options: { confidence: 0.9 } }, (x) => materials.fitFindley(x.readings, x.options)),
  one('findleyLaw', findley, (x) => materials.findleyLaw(x)),
  one('complianceFromRelaxation', relaxation, (x) => materials.complianceFromRelaxation(x)),
  one('relaxationFromCompliance', compliance, (x) => materials.relaxationFromCompliance(x)),
  one('relaxationLaw', relaxation, (x) => materials.relaxationLaw(x)),
  one('complianceLaw', compliance, (x) => materials.complianceLaw(x)),
  several('boltzmannStrain', { history: [{ time: '0 s', stress: '5 MPa' }], options: {} }, (x) =>
    materials.boltzmannStrain(law, x.history, ['10 s'], x.options),
  ),
  one('readMaterial', JSON.parse(JSON.stringify(materials.writeMaterial(materials.petg))), (x) => materials.readMaterial(x)),
  one(
    'withProperties',
    { modulus: { typical: '2 GPa', low: '1.8 GPa', high: '2.2 GPa', source: { level: 'assumption', where: 'test' } } },
    (x) => materials.withProperties(materials.petg, x),
  ),
  one('wallMoistureUptake', { humidity: 0.5, time: '10 day', thickness: '4 mm' }, (x) => materials.wallMoistureUptake(materials.pa12, x)),
]
