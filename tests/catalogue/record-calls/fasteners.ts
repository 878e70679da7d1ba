import * as fasteners from '../../../src/fasteners/index.js'
import { one, type RecordCall } from './call.js'

const clampRemedies = {
  clampLoad: '1500 N',
  boltCompliance: '0.008 um/N',
  printCompliance: '0.06 um/N',
  creep: (time: { in(unit: 'h'): number }) => 1 + 0.12 * time.in('h') ** 0.25,
  spring: { compliance: '0.3 um/N', flatForce: '2000 N' },
  sleeve: { compliance: '0.006 um/N', shortfall: '0 um' },
  retightenAt: '3 day',
  times: ['0 day', '4 day'],
}
export const calls: readonly RecordCall[] = [
  one('compareClampRemedies', clampRemedies, (x) => fasteners.compareClampRemedies(x)),
  one('clampLoadChart', clampRemedies, (x) => fasteners.clampLoadChart(x, '500 N')),
  one(
    'interferenceChart',
    {
      pinDiameter: '8.02 mm',
      pinScatter: '8 um',
      holeDiameter: '8 mm',
      holeScatter: '10 um',
      neededInterference: '5 um',
      allowableInterference: '60 um',
    },
    (x) => fasteners.interferenceChart(x),
  ),
  one('proposeBolts', { tension: '120 N', shear: '60 N', washerSpace: '12 mm', allowablePressure: '10 MPa', threads: ['M4'] }, (x) =>
    fasteners.proposeBolts(x),
  ),
  one(
    'proposePin',
    {
      force: '250 N',
      widthSpace: '40 mm',
      eyeSpace: '20 mm',
      allowablePressure: '20 MPa',
      allowableTension: '12 MPa',
      allowableShear: '7 MPa',
    },
    (x) => fasteners.proposePin(x),
  ),
]
