import { readFileSync } from 'node:fs'
import { describeLeg, type Leg, withFields } from '../../src/leg/index.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))

const beside = (leg: Leg) =>
  withFields(leg, {
    'joints.knee.through.planeOffset': '-17 mm',
    'joints.knee.through.pinPlanesApart': '1.5 mm',
    'joints.knee.through.step': '0.6 mm',
    'joints.knee.through.pivots': {
      crank: {
        offset: '2.5 mm',
        material: 'aluminium 6061-T6',
        bearing: {
          size: '4x13x5',
          housingDiameter: '21 mm',
          seatInterference: '0.008 mm',
          retainedBy: 'cap',
          cap: {
            thread: 'M3',
            propertyClass: 8.8,
            tighteningTorque: '1.1 N m',
            shoulderDiameter: '7 mm',
            rimDiameter: '6.5 mm',
            edgeDiameter: '8 mm',
          },
        },
      },
      rocker: {
        offset: '11 mm',
        material: 'PC',
        cheeks: 1,
        bearingIn: 'rod',
        bearing: { size: '4x13x5', housingDiameter: '19 mm', seatInterference: '0.01 mm', retainedBy: 'bond' },
      },
      drum: {
        offset: '14 mm',
        material: 'PC',
        bearing: { size: '12x28x8', pairSpacing: '15 mm', housingDiameter: '41 mm', seatInterference: '0.04 mm' },
      },
    },
    'pins.jointPin.bearing': { size: '5x16x5', pairSpacing: '13 mm', housingDiameter: '25 mm', seatInterference: '0.03 mm' },
    'shafts.hipShaft.stack': {
      outerDiameter: '26 mm',
      innerDiameter: '12.5 mm',
      material: 'PC',
      tighteningTorque: '9 N m',
      clampLeft: [0.4, 0.55, 0.75],
    },
  })
const single = (leg: Leg) =>
  withFields(leg, {
    'joints.knee.through.pivots.rocker': { offset: '2 mm', material: 'PC' },
    'joints.knee.through.pivots.drum.bearing.pairSpacing': undefined,
    'joints.knee.through.pivots.crank.bearing.retainedBy': 'press',
    'joints.knee.through.pivots.crank.bearing.cap': undefined,
    'pins.jointPin.bearing': undefined,
    'shafts.hipShaft.stack.key': { size: '4x4', length: '14 mm', hubDiameter: '30 mm', hubMaterial: 'PC' },
  })

/** The heath carrier with its rod beside the links: on a cocked bearing under a cap, on a bearing in its own eye, and with its drum on a pair. */
export const besideLinks = beside(read('heath-leg-revised'))
/** The same with single bearings and plain pins where it had pairs, and a key. */
export const singleBearings = single(besideLinks)
/** Both from a four-bar whose links are all of different lengths, whose rod is pushed and pulled. */
export const oddFourBar = withFields(read('heath-leg-first'), {
  'joints.knee.through.rocker': '30 mm',
  'joints.knee.through.rod': '157 mm',
  'links.upper.centreOfMass': '80 mm',
  'joints.knee.drive.drum.grooveDiameter': '96 mm',
  'links.lower.mass': '0.153 kg',
  'bosses.kneeBoss.engagement': '15 mm',
})
export const oddBeside = beside(oddFourBar)
export const oddSingle = single(oddBeside)
/** The bearings of the rod and its drum by their own sheets. */
export const ownBearings = withFields(oddBeside, {
  'joints.knee.through.pivots.crank.bearing': {
    own: { bore: '4 mm', outerDiameter: '13 mm', width: '5 mm', staticRating: '410 N', dynamicRating: '1.15 kN' },
    housingDiameter: '21 mm',
    seatInterference: '0.008 mm',
    retainedBy: 'press',
  },
})
/** The first of them with a flat on its hip shaft, in a hub of aluminium. */
export const flattened = withFields(besideLinks, {
  'shafts.hipShaft.stack.flat': { depth: '2 mm', length: '14 mm', hubMaterial: 'aluminium 6061-T6' },
})
