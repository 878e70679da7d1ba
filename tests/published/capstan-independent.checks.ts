import * as c from '../../src/capstan/index.js'
import type { Source } from '../../src/formula/index.js'
import oracle from '../oracles/capstan-independent.json' with { type: 'json' }
import winding from '../oracles/capstan-winding.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/capstan-independent.py` })
const polygon = by('cord as a polygon, forces of every corner balanced as vectors, extrapolated')
const points = by('points in space, tangents found numerically')
const cells = by('pressure or stress summed over cells')
const energies = by('energy, differenced')
const law = by('published rate law evaluated to 40 digits with mpmath')

const friction: Check[] = [
  ...published(c.tensionRatio, { given: { friction: 0.3, wrapAngle: '2 turn' }, gives: printed(oracle.ratio, '1'), source: polygon }),
  ...published(c.tautTension, {
    what: 'flat belt',
    given: { slackTension: '600 lbf', friction: 0.25, wrapAngle: '120 deg' },
    gives: printed(oracle.taut, 'lbf'),
    source: polygon,
  }),
  ...published(c.slackTension, {
    what: 'fixed drum',
    given: { load: '500 N', friction: 0.25, wrapAngle: '135 deg' },
    gives: printed(oracle.slack, 'N'),
    source: polygon,
  }),
  ...published(c.slipArc, {
    given: { tautTension: '90 N', slackTension: '60 N', friction: 0.15 },
    gives: printed(oracle.slipArc, 'rad'),
    source: polygon,
  }),
  ...published(c.runningTautTension, {
    what: 'cord of 0.4 kg/m at 5 m/s',
    given: { slackTension: '50 N', friction: 0.3, wrapAngle: '3 rad', massPerLength: '0.4 kg/m', speed: '5 m/s' },
    gives: { tautTension: printed(oracle.running, 'N') },
    source: polygon,
  }),
  ...published(
    c.anchorPull,
    ...(['2 rad', '0.5 turn'] as const).map((wrapAngle, i) => ({
      what: `wrap of ${wrapAngle}`,
      given: { spanTension: '90 N' as const, storedTension: '60 N' as const, friction: 0.15, wrapAngle },
      gives: printed(oracle.anchor[i], 'N'),
      source: by('cord as nodes, friction used up from the span inward'),
    })),
  ),
  ...published(c.thickCordFriction, {
    given: { friction: 0.15, grooveRadius: '5 mm', cordDiameter: '1 mm' },
    gives: printed(oracle.thick, '1'),
    source: by('moments of every piece about the axle, extrapolated'),
  }),
  ...published(c.helixWrap, {
    given: { centreLineRadius: '8 mm', groovePitch: '1.4 mm' },
    gives: {
      frictionFactor: printed(oracle.helix.friction, '1'),
      curvatureRadius: printed(oracle.helix.curvature, 'mm'),
      lengthPerTurn: printed(oracle.helix.length, 'mm'),
      leadAngle: printed(oracle.helix.lead, 'deg'),
    },
    source: by('points of a helix, forces of every corner balanced as vectors'),
  }),
  ...published(c.vGrooveFriction, {
    given: { friction: 0.2, grooveAngle: '36 deg' },
    gives: { effectiveFriction: printed(oracle.vGroove[0], '1'), seatingFriction: printed(oracle.vGroove[1], '1') },
    source: by('forces of both flanks as vectors'),
  }),
  ...published(
    c.roundGrooveFriction,
    { what: 'plain seat', given: { friction: 1 }, gives: printed(oracle.seat[0], '1'), source: cells },
    {
      what: 'undercut 90°, seat 30°',
      given: { friction: 1, undercutAngle: '90 deg', seatAngle: '30 deg' },
      gives: printed(oracle.seat[1], '1'),
      source: cells,
    },
    { what: 'seat 60°', given: { friction: 1, seatAngle: '60 deg' }, gives: printed(oracle.seat[2], '1'), source: cells },
  ),
  ...published(c.grooveWedging, {
    given: { tension: '60 N', wrapAngle: '1 turn', grooveAngle: '60 deg' },
    gives: printed(oracle.wedging, 'N'),
    source: by('forces of both flanks as vectors'),
  }),
]

const pulleys = { pinionRadius: '8 mm', drumRadius: '48 mm' } as const
const geometry: Check[] = [
  ...published(
    c.pulleyGeometry,
    ...(
      [
        ['crossed', '58 mm'],
        ['open', '80 mm'],
      ] as const
    ).map(([arrangement, centreDistance]) => {
      const [pinionWrap, drumWrapAngle, span, loopPerCentreDistance] = oracle.pulleys[arrangement]
      return {
        what: arrangement,
        given: { arrangement, ...pulleys, centreDistance },
        gives: {
          pinionWrap: printed(pinionWrap, 'deg'),
          drumWrapAngle: printed(drumWrapAngle, 'deg'),
          span: printed(span, 'mm'),
          loopPerCentreDistance: printed(loopPerCentreDistance, '1'),
        },
        source: points,
      }
    }),
  ),
  ...published(c.shaftForce, {
    given: { arrangement: 'crossed', tautTension: '75 N', slackTension: '45 N', ...pulleys, centreDistance: '58 mm' },
    gives: { alongCentres: printed(oracle.shaft[0], 'N'), across: printed(oracle.shaft[1], 'N'), force: printed(oracle.shaft[2], 'N') },
    source: points,
  }),
  ...published(c.groove, {
    given: { cordDiameter: '1.6 mm' },
    gives: { land: printed(oracle.groove, 'mm') },
    source: by('circle of the seat cut by the drum'),
  }),
  ...published(c.fleetAngle, {
    given: { axialOffset: '1.2 mm', span: '20 mm' },
    gives: printed(oracle.fleet, 'deg'),
    source: by('angle of two vectors'),
  }),
  ...published(c.cordToCut, {
    given: {
      span: '15.1 mm',
      drumRadius: '48 mm',
      drumWrapTotal: '1 turn',
      pinionRadius: '8 mm',
      pinionWrap: '3 turn',
      groovePitch: '1.2 mm',
      endLength: '12 mm',
      tailLength: '60 mm',
      strain: 0.003,
    },
    gives: { workingLength: printed(oracle.cut[0], 'mm'), cutLength: printed(oracle.cut[1], 'mm') },
    source: by('lengths of polygons through points of arcs and helix, extrapolated'),
  }),
  ...published(c.tensionerTakeUp, {
    what: 'idler pressed 3 mm into a span of 60 mm',
    given: { method: 'spanIdler', travel: '3 mm', span: '60 mm', centreDistance: '80 mm' },
    gives: { takeUp: printed(oracle.idlerTakeUp[0], 'mm'), gain: printed(oracle.idlerTakeUp[1], '1') },
    source: by('path through three points, differenced'),
  }),
  ...published(c.tensionerCompliance, {
    given: { stiffness: '0.4 kN/mm', gain: Number(oracle.gain) },
    gives: printed(oracle.tensioner, 'mm/N'),
    source: by('least energy of spring and tension'),
  }),
  ...published(c.backlashAngle, {
    given: { backlash: '0.08 mm', pitchRadius: '24 mm' },
    gives: printed(oracle.backlash, 'rad'),
    source: by('points of the pitch circle'),
  }),
]

const grooves: Source = { level: 'computed', where: 'points of grooves that turn with their pulleys: tests/oracles/capstan-winding.py' }
const winds: Check[] = [
  ...published(c.pinionLength, {
    given: { groovePitch: '1.2 mm', wraps: 3, ratio: 6, travel: '120 deg' },
    gives: { length: printed(winding.pinion, 'mm'), walk: printed(winding.walk, 'mm') },
    source: grooves,
  }),
  ...published(c.drumLength, {
    given: { drumLead: '7.2 mm', largestWrap: '200 deg', groovePitch: '1.2 mm' },
    gives: printed(winding.drum, 'mm'),
    source: grooves,
  }),
  ...published(c.matchedDrumLead, { given: { pinionPitch: '1.2 mm', ratio: 6 }, gives: printed(winding.matched, 'mm'), source: grooves }),
  ...published(c.leadMismatch, {
    given: { pinionPitch: '1.2 mm', drumLead: '2 mm', ratio: 6, travel: '120 deg' },
    gives: printed(winding.mismatch, 'mm'),
    source: grooves,
  }),
  ...published(c.reductionRatio, {
    given: { drumRadius: '48 mm', pinionRadius: '8 mm' },
    gives: printed(winding.ratio, '1'),
    source: { level: 'computed', where: 'rims as polygons, equally long: tests/oracles/capstan-winding.py' },
  }),
  ...published(c.tensionPerScrewTurn, {
    given: { lead: '0.7 mm', gain: 1, workingLength: '0.45 m', axialRigidity: '20 kN' },
    gives: printed(winding.screw, 'N'),
    source: { level: 'computed', where: 'pieces of cord in series, in the limit of small changes: tests/oracles/capstan-winding.py' },
  }),
]

const loop: Check[] = [
  ...published(c.thermalTension, {
    given: { axialRigidity: '20 kN', temperatureRise: '30 K', frameExpansion: '70 ppm/K', cordExpansion: '-12 ppm/K' },
    gives: printed(oracle.heat, 'N'),
    source: by('lengths of frame and cord that agree, in the limit of small changes'),
  }),
  ...published(c.pretensionLeft, {
    given: { pretension: '60 N', axialRigidity: '20 kN', creepStrain: '0.1 %' },
    gives: { tension: printed(oracle.left, 'N') },
    source: by('lengths of frame and cord that agree, in the limit of small changes'),
  }),
  ...published(c.logarithmicCreep, {
    what: 'one second to one year',
    given: { perDecade: '0.02 %', from: '1 s', to: '1 year' },
    gives: printed(oracle.decades, '%'),
    source: by('rate that falls with time, integrated'),
  }),
  ...published(c.spanStiffness, {
    given: { axialRigidity: '20 kN', drumRadius: '48 mm', span: '20 mm' },
    gives: printed(oracle.spanStiffness, 'N m/rad'),
    source: energies,
  }),
  ...published(c.frictionlessWrapStiffness, {
    given: { axialRigidity: '20 kN', ...pulleys, span: '20 mm', pinionWrap: '3 turn', drumWrapTaut: '0.5 turn', drumWrapSlack: '0.5 turn' },
    gives: printed(oracle.frictionless, 'N m/rad'),
    source: energies,
  }),
  ...published(c.slipTorqueEstimate, {
    given: { pretension: '60 N', drumRadius: '48 mm', friction: 0.15, pinionWrap: '3 turn' },
    gives: { anyArcs: printed(oracle.slipEstimate[0], 'N m'), equalArcs: printed(oracle.slipEstimate[1], 'N m') },
    source: by('ratio of the polygon, tensions by root finding'),
  }),
  ...published(c.slackTorqueEstimate, {
    given: { pretension: '60 N', drumRadius: '48 mm' },
    gives: { anyArcs: printed(oracle.slackEstimate[0], 'N m'), equalArcs: printed(oracle.slackEstimate[1], 'N m') },
    source: by('slack span at no tension, by root finding'),
  }),
  ...published(c.strokeTension, {
    given: { pretension: '60 N', torque: '1.44 N m', drumRadius: '48 mm', span: '20 mm', stroke: '1 rad' },
    gives: { slackTension: printed(oracle.stroke[0], 'N'), tautTension: printed(oracle.stroke[1], 'N') },
    source: by('unstretched cord kept in small steps'),
  }),
  ...published(c.travelPeakTension, {
    given: { pretension: '60 N', torque: '1.44 N m', drumRadius: '48 mm' },
    gives: printed(oracle.strokePeak, 'N'),
    source: by('unstretched cord kept in small steps over a stroke of 12 rad'),
  }),
  ...published(c.arcCycleLoss, {
    given: { amplitude: '6 N', pretension: '60 N', friction: 0.15, centreLineRadius: '8 mm', axialRigidity: '20 kN' },
    gives: printed(oracle.cycleLoss, 'uJ'),
    source: by('nodes on an arc, each held by friction; area of the loop'),
  }),
  ...published(c.microSlipLength, {
    given: { axialRigidity: '20 kN', contactStiffness: '5e6 N/m^2' },
    gives: printed(oracle.microSlip, 'mm'),
    source: by('boundary-value problem of a bedded cord (scipy)'),
  }),
  ...published(c.strokeLosses, {
    given: {
      tautTension: '75 N',
      slackTension: '45 N',
      axialRigidity: '20 kN',
      pinionRadius: '8 mm',
      pinionTravel: '6 rad',
      shaftForce: '150 N',
      bearingFriction: 0.002,
      bearingRadius: '4 mm',
      bendingLoss: 0.01,
    },
    gives: { beltCreep: printed(oracle.losses[0], 'mJ'), bearings: printed(oracle.losses[1], 'mJ') },
    source: by('rubbing of an element of the belt on its way round, and of a point of the journal, integrated'),
  }),
  ...published(c.driveLosses, {
    given: {
      tautTension: '75 N',
      slackTension: '45 N',
      axialRigidity: '20 kN',
      pinionRadius: '8 mm',
      shaftForce: '150 N',
      bearingFriction: 0.002,
      bearingRadius: '4 mm',
      bendingLoss: 0.01,
    },
    gives: { beltCreep: printed(oracle.shares[0], '1'), bearings: printed(oracle.shares[1], '1') },
    source: by('rubbing of an element of the belt on its way round, and of a point of the journal, integrated'),
  }),
  ...published(c.driveResonance, {
    given: { stiffness: '4608 N m/rad', loadInertia: '0.012 kg m^2', reflectedInertia: '9e-4 kg m^2' },
    gives: { motorLocked: printed(oracle.resonance[0], 'Hz'), motorFree: printed(oracle.resonance[1], 'Hz') },
    source: { level: 'referenceLibrary', where: 'numpy: eigenvalues of two inertias on a spring (tests/oracles/capstan-independent.py)' },
  }),
  ...published(c.reflectedInertia, {
    given: { rotorInertia: '2.5e-5 kg m^2', ratio: 6 },
    gives: printed(oracle.reflected, 'kg m^2'),
    source: energies,
  }),
  ...published(c.stiffnessAtMotor, {
    given: { stiffness: '4608 N m/rad', ratio: 6 },
    gives: printed(oracle.atMotor, 'N m/rad'),
    source: energies,
  }),
]

const section = {
  bendingMoment: '2.4 N m',
  axialForce: '50 N',
  outerDiameter: '30 mm',
  boreDiameter: '8 mm',
  allowableAcrossLayers: '10 MPa',
} as const
const parts: Check[] = [
  ...published(c.drumHoop, {
    given: { tension: '60 N', centreLineRadius: '8 mm', pitch: '1.2 mm', wallOuterRadius: '7.5 mm', boreRadius: '4 mm' },
    gives: { pressure: printed(oracle.hoop[0], 'MPa'), boreHoopStress: printed(oracle.hoop[1], 'MPa') },
    source: by('boundary-value problem of a cylinder (scipy)'),
  }),
  ...published(c.groovePressure, {
    given: { tension: '60 N', centreLineRadius: '8 mm', cordDiameter: '1 mm' },
    gives: printed(oracle.groovePressure, 'MPa'),
    source: cells,
  }),
  ...published(c.drumNeckStress, {
    given: { torque: '3 N m', sidePull: '120 N', arm: '20 mm', outerDiameter: '30 mm', boreDiameter: '8 mm' },
    gives: {
      torsionStress: printed(oracle.neck[0], 'MPa'),
      bendingStress: printed(oracle.neck[1], 'MPa'),
      equivalentStress: printed(oracle.neck[2], 'MPa'),
    },
    source: by('section summed over cells, principal stresses with numpy'),
  }),
  ...published(
    c.delamination,
    {
      what: 'no bolts',
      given: { ...section, clampLoad: '0 N' },
      gives: {
        layerStress: printed(oracle.layers[0], 'MPa'),
        clampToStayClosed: printed(oracle.layers[1], 'N'),
        reserve: printed(oracle.layers[2], '1'),
      },
      source: cells,
    },
    {
      what: 'clamped with 600 N',
      given: { ...section, clampLoad: '600 N' },
      gives: { layerStress: printed(oracle.layers[3], 'MPa') },
      source: cells,
    },
  ),
  ...published(c.wireBendingStress, {
    given: { modulus: '200 GPa', wireDiameter: '0.1 mm', pulleyDiameter: '16 mm' },
    gives: printed(oracle.wire, 'MPa'),
    source: by('lengths of outer fibre and centre as polygons'),
  }),
  ...published(c.braidAxialRigidity, {
    given: { filamentModulus: '100 GPa', filamentDensity: '975 kg/m^3', massPerLength: '0.5 g/m', braidAngle: '20 deg' },
    gives: printed(oracle.braid, 'kN'),
    source: by('ends of a strand moved, force along the axis'),
  }),
  ...published(
    c.activatedCreepFactor,
    {
      what: '20 to 40 °C at 0.5 GPa',
      given: { fromTemperature: '20 degC', toTemperature: '40 degC', fromStress: '0.5 GPa', toStress: '0.5 GPa' },
      gives: printed(oracle.creep[0], '1'),
      source: law,
    },
    {
      what: '0.5 to 0.6 GPa at 20 °C',
      given: { fromTemperature: '20 degC', toTemperature: '20 degC', fromStress: '0.5 GPa', toStress: '0.6 GPa' },
      gives: printed(oracle.creep[1], '1'),
      source: law,
    },
  ),
]

export const checks: Check[] = [...friction, ...geometry, ...winds, ...loop, ...parts]
