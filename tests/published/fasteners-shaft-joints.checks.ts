import {
  bearingCocking,
  bearingPairLoads,
  capCocking,
  ringEdgePressure,
  ringJoint,
  rodCocking,
  sleeveJointTilt,
} from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import pair from '../oracles/fasteners-pair.json' with { type: 'json' }
import oracle from '../oracles/structures-shafts.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const balance: Source = { level: 'computed', where: 'six equations of balance: tests/oracles/fasteners-pair.py' }
const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/structures-shafts.py` })
const springs = by('springs round a ring that only push')
const { ring, sleeve, cocking, edge } = oracle
const EDGE_RING = { clampLoad: '1200 N', outerDiameter: '20 mm', innerDiameter: '10 mm' } as const
const cells = by('cells on a grid that only push')

export const checks: Check[] = [
  ...published(ringJoint, {
    what: '1200 N on a ring of 20 by 10 mm',
    given: { clampLoad: '1200 N', outerDiameter: '20 mm', innerDiameter: '10 mm', friction: 0.15, moment: '7 N m' },
    gives: {
      gapMoment: printed(ring.gap, 'N m'),
      tippingMoment: printed(ring.tips, 'N m'),
      slipTorque: printed(ring.slip, 'N m'),
      state: 'gaping',
    },
    source: by('pressure over cells; contact forces by linear programme'),
  }),
  ...published(
    ringEdgePressure,
    {
      what: '1200 N on a ring of 20 by 10 mm, closed',
      given: { ...EDGE_RING, moment: '2 N m' },
      gives: { meanPressure: printed(edge['0'], 'MPa'), edgePressure: printed(edge['2'], 'MPa'), state: 'closed' },
      source: cells,
    },
    {
      what: 'gaping',
      given: { ...EDGE_RING, moment: '7 N m' },
      gives: { edgePressure: printed(edge['7'], 'MPa'), state: 'gaping' },
      source: cells,
    },
    { what: 'near tipping', given: { ...EDGE_RING, moment: '10 N m' }, gives: { edgePressure: printed(edge['10'], 'MPa') }, source: cells },
    {
      what: 'beyond its edge',
      given: { ...EDGE_RING, moment: '12 N m' },
      gives: { state: 'tips' },
      source: by('the clamp load on the very edge'),
    },
  ),
  ...published(
    sleeveJointTilt,
    {
      what: 'gaping sleeve',
      given: { clampLoad: '1200 N', radius: '8 mm', wall: '3 mm', length: '20 mm', modulus: '2.2 GPa', moment: '7 N m' },
      gives: {
        contactHalfAngle: printed(sleeve.half, 'rad'),
        tilt: printed(sleeve.tilt, 'mrad'),
        gap: printed(sleeve.gap, 'mm'),
        state: 'gaping',
      },
      source: springs,
    },
    {
      what: 'closed sleeve',
      given: { clampLoad: '1200 N', radius: '8 mm', wall: '3 mm', length: '20 mm', modulus: '2.2 GPa', moment: '3 N m' },
      gives: { tilt: printed(sleeve.closed, 'mrad'), state: 'closed' },
      source: springs,
    },
  ),
  ...published(rodCocking, {
    given: { rodForce: '-150 N', planeOffset: '6 mm', pinPlanesApart: '2 mm', pinDistance: '150 mm' },
    gives: { moment: '0.9 N m', axialPull: printed(cocking.pull, 'N') },
    source: by('direction of the rod in space'),
  }),
  ...published(bearingCocking, {
    given: { moment: '0.9 N m', balls: 8, pitchDiameter: '14 mm', contactAngle: '0.2 rad', pairSpacing: '14 mm' },
    gives: {
      axialLinear: printed(cocking.linear, 'N'),
      axial: printed(cocking.hertz, 'N'),
      normal: printed(cocking.normal, 'N'),
      pairForce: printed(cocking.pair, 'N'),
    },
    source: by('balls spread over a million positions'),
  }),
  ...published(capCocking, {
    given: { moment: '0.9 N m', shoulderRadius: '6 mm', capRadius: '6 mm', pivotRadius: '9 mm' },
    gives: {
      rigidForce: printed(cocking.rigid, 'N'),
      elasticForce: printed(cocking.elastic, 'N'),
      screwForce: printed(cocking.screw, 'N'),
    },
    source: by('linear programme over rim contacts; rims as springs'),
  }),
  ...published(
    bearingPairLoads,
    {
      what: 'force beside the pair',
      given: { uprightForce: '120 N', overhang: '30 mm', pairSpacing: '60 mm' },
      gives: { nearer: printed(pair.beside.nearer, 'N'), farther: printed(pair.beside.farther, 'N'), axial: '0 N' },
      source: balance,
    },
    {
      what: 'foot below and before its hip',
      given: {
        uprightForce: '120 N',
        sidewaysForce: '36 N',
        axialForce: '24 N',
        overhang: '70 mm',
        uprightArm: '-290 mm',
        sidewaysArm: '58 mm',
        pairSpacing: '42 mm',
      },
      gives: { nearer: printed(pair.foot.nearer, 'N'), farther: printed(pair.foot.farther, 'N'), axial: '24 N' },
      source: balance,
    },
    {
      what: 'force between the bearings',
      given: {
        uprightForce: '90 N',
        sidewaysForce: '8 N',
        axialForce: '-15 N',
        overhang: '-20 mm',
        uprightArm: '-250 mm',
        sidewaysArm: '40 mm',
        pairSpacing: '55 mm',
      },
      gives: { nearer: printed(pair.between.nearer, 'N'), farther: printed(pair.between.farther, 'N'), axial: '15 N' },
      source: balance,
    },
  ),
]
