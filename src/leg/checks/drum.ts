import { anchorPull, cordToCut, delamination, drumHoop, drumNeckStress, groovePressure, takeUp } from '../../capstan/index.js'
import { clearanceHole, lugTearOut, pinBearing, pottedFerrule } from '../../fasteners/index.js'
import type { Evaluator } from '../../formula/index.js'
import type { JointState, Scene } from '../state.js'
import { type Check, LOADED } from './check.js'
import { polymerRest } from './rests.js'

const SHEAR_SHARE = 0.577
/** Wrap that is left between tangent point and anchor at the end of travel. */
const LEAST_WRAP = Math.PI / 2
/** Shear rigidity of a steel or brass ferrule against the cord's own: as good as rigid. */
const FERRULE_MODULUS = 100e9

/** The hub of a drum: twice the bore, or the drum itself where that is less. */
const hubDiameter = (drumRadius: number, cordDiameter: number, bore: number) => Math.min(2 * drumRadius - cordDiameter, 2 * bore)

/** Tension that reaches the anchor: what friction on the drum leaves of the taut span, or the pretension stored there. */
function atAnchor(of: Evaluator, { leg, joint }: Scene, { drive }: JointState, tension: number): number {
  return of(anchorPull, {
    spanTension: tension,
    storedTension: drive.pretension,
    friction: leg.drives[joint].friction,
    wrapAngle: LEAST_WRAP,
  })
}

/** Drums, anchors, ends and tensioners. */
export const drumChecks: readonly Check[] = [
  {
    id: 'drum.hoop',
    part: 'printed drum',
    mode: 'creeps in under the wound cord',
    stake: 'fails to work',
    kind: 'stress',
    scope: 'joint',
    cases: ['shelf', 'season', 'hotAfternoon'],
    after: ['drive'],
    run: (of, { leg, joint, state }, { drive }) => {
      const { drumRadius, cord, drum } = leg.drives[joint]
      const body = leg.x.drives[joint].drum
      const { boreHoopStress } = of(drumHoop, {
        tension: drive.pretension,
        centreLineRadius: drumRadius,
        pitch: body.groovePitch,
        wallOuterRadius: drumRadius - cord.diameter / 2,
        boreRadius: body.bore / 2,
      })
      return { demand: Math.abs(boreHoopStress), capacity: drum.strength.alongLayers.at(of, state.air, state.duration) }
    },
    demandIs: 'the hoop stress at the bore of the drum',
    capacityIs: 'the long-term strength of its polymer',
    remedy: 'less pretension, a wider groove pitch, a smaller bore, or a metal bush in the bore',
    rests: ({ leg, joint }) => polymerRest(leg.drives[joint].drum, 'drum'),
  },
  {
    id: 'drum.groove',
    part: 'groove of the drum',
    mode: 'is cut by the cord',
    stake: 'fails to work',
    kind: 'stress',
    scope: 'joint',
    cases: LOADED,
    after: ['motion', 'drive'],
    run: (of, { leg, joint, state }, { drive }) => {
      const { drumRadius, cord, drum } = leg.drives[joint]
      const demand = of(groovePressure, { tension: drive.taut, centreLineRadius: drumRadius, cordDiameter: cord.diameter })
      return { demand, capacity: drum.strength.alongLayers.at(of, state.air, state.duration) }
    },
    demandIs: 'the pressure of the taut cord on the groove',
    capacityIs: 'the strength of the polymer for the time under load',
    remedy: 'a larger drum, a thicker cord, or a harder polymer',
    rests: ({ leg, joint }) => polymerRest(leg.drives[joint].drum, 'drum'),
  },
  {
    id: 'drum.layers',
    part: 'printed drum',
    mode: 'shears between its layers',
    stake: 'breaks',
    kind: 'stress',
    scope: 'joint',
    cases: ['walk', 'trot', 'hop', 'drop', 'slope', 'season'],
    after: ['motion', 'drive'],
    run: (of, { leg, joint, state }, { motion, drive }) => {
      const { drumRadius, cord, drum } = leg.drives[joint]
      const body = leg.x.drives[joint].drum
      const { torsionStress } = of(drumNeckStress, {
        torque: Math.abs(motion.torque),
        sidePull: drive.shaftForce,
        arm: body.length / 2,
        outerDiameter: hubDiameter(drumRadius, cord.diameter, body.bore),
        boreDiameter: body.bore,
      })
      const strength = state.case.id === 'season' ? drum.cyclic : drum.strength
      return { demand: torsionStress, capacity: strength.interlayerShear.at(of, state.air, 1, state.cycles) }
    },
    demandIs: 'the shear stress between layers from the joint torque, in a hub of twice the bore',
    capacityIs: 'the shear strength between layers (after the strides of a season)',
    remedy: 'a larger hub, bolts through the layers, or print the drum lying on its side',
    rests: ({ leg, joint }) => polymerRest(leg.drives[joint].drum, 'drum'),
  },
  {
    id: 'drum.split',
    part: 'printed drum',
    mode: 'comes apart between its layers',
    stake: 'breaks',
    kind: 'stress',
    scope: 'joint',
    cases: ['walk', 'trot', 'hop', 'drop', 'slope', 'season'],
    after: ['motion', 'drive'],
    run: (of, { leg, joint, state }, { drive }) => {
      const { drumRadius, cord, drum } = leg.drives[joint]
      const body = leg.x.drives[joint].drum
      const outerDiameter = hubDiameter(drumRadius, cord.diameter, body.bore)
      const hole = clearanceHole.si(body.throughBoltThread).medium
      const strength = (state.case.id === 'season' ? drum.cyclic : drum.strength).acrossLayers
      const allowableAcrossLayers = strength.at(of, state.air, 1, state.cycles)
      const { layerStress } = of(delamination, {
        bendingMoment: drive.shaftForce * (body.length / 2),
        axialForce: 0,
        clampLoad: body.throughBolts * body.throughBoltClampLoad,
        outerDiameter,
        boreDiameter: body.bore,
        allowableAcrossLayers,
        holeShare: Math.min(0.9, (body.throughBolts * hole ** 2) / (outerDiameter ** 2 - body.bore ** 2)),
      })
      return { demand: layerStress, capacity: allowableAcrossLayers }
    },
    demandIs:
      'the pull across the layers of a hub of twice the bore, from the sideways pull of the cord less the clamp load of through bolts',
    capacityIs: 'the strength across layers (after the strides of a season)',
    remedy: 'bolts through the layers, a larger hub, or print the drum lying on its side',
    rests: ({ leg, joint }) => polymerRest(leg.drives[joint].drum, 'drum'),
  },
  {
    id: 'anchor.bearing',
    part: 'cord anchor',
    mode: 'presses into the drum',
    stake: 'breaks',
    kind: 'stress',
    scope: 'joint',
    cases: [...LOADED, 'shelf'],
    after: ['motion', 'drive'],
    run: (of, scene, at) => {
      const { leg, joint, state } = scene
      const { anchor } = leg.x.drives[joint]
      const force = atAnchor(of, scene, at, state.motion === undefined ? at.drive.pretension : at.drive.taut)
      const { projectedPressure } = of(pinBearing, { force, diameter: anchor.postDiameter, thickness: anchor.postLength })
      return {
        demand: projectedPressure,
        capacity: leg.drives[joint].drum.strength.alongLayers.at(of, state.air, state.duration),
      }
    },
    demandIs: 'the pressure of the post on the drum',
    capacityIs: 'the strength of the polymer for the time under load',
    remedy: 'a thicker or longer post, or half a turn more cord on the drum before the anchor',
    rests: ({ leg, joint }) => polymerRest(leg.drives[joint].drum, 'drum'),
  },
  {
    id: 'anchor.tearOut',
    part: 'cord anchor',
    mode: 'tears out of the drum',
    stake: 'breaks',
    kind: 'stress',
    scope: 'joint',
    cases: [...LOADED, 'shelf'],
    after: ['motion', 'drive'],
    run: (of, scene, at) => {
      const { leg, joint, state } = scene
      const { anchor } = leg.x.drives[joint]
      const force = atAnchor(of, scene, at, state.motion === undefined ? at.drive.pretension : at.drive.taut)
      const { shearStress } = of(lugTearOut, {
        force,
        edgeDistance: anchor.edgeDistance,
        diameter: anchor.postDiameter,
        thickness: anchor.postLength,
        planes: 'front',
      })
      return {
        demand: shearStress,
        capacity: SHEAR_SHARE * leg.drives[joint].drum.strength.alongLayers.at(of, state.air, state.duration),
      }
    },
    demandIs: 'the shear stress from post to edge',
    capacityIs: 'the shear strength of the polymer for the time under load',
    remedy: 'more edge distance, a longer post, or half a turn more cord on the drum',
    rests: ({ leg, joint }) => polymerRest(leg.drives[joint].drum, 'drum'),
  },
  {
    id: 'ferrule.bond',
    part: 'bonded ferrule',
    mode: 'pulls off the cord',
    stake: 'breaks',
    kind: 'force',
    scope: 'joint',
    cases: [...LOADED, 'shelf'],
    after: ['motion', 'drive'],
    run: (of, scene, at) => {
      const { leg, joint, state } = scene
      const { bondedEnd } = leg.x
      if (leg.x.drives[joint].ends !== 'bondedFerrule' || bondedEnd === undefined) return undefined
      const { cord } = leg.drives[joint]
      const force = atAnchor(of, scene, at, state.motion === undefined ? at.drive.pretension : at.drive.taut)
      const wall = Math.PI * bondedEnd.socketDiameter * 0.5e-3
      const bond = of(pottedFerrule, {
        force,
        cordDiameter: cord.diameter,
        boreDiameter: bondedEnd.socketDiameter,
        length: bondedEnd.length,
        cordRigidity: cord.axialRigidity,
        socketRigidity: FERRULE_MODULUS * wall,
        shearModulus: bondedEnd.adhesiveShearModulus,
        shearStrength: bondedEnd.adhesiveShearStrength,
        held: 'mouth',
      })
      // A cone or a knot in the resin lets the bond yield and share; a bare bond peels from its loaded end.
      return { demand: force, capacity: bondedEnd.mechanicalLock ? bond.plasticLimit : bond.elasticLimit }
    },
    demandIs: 'the tension that reaches the ferrule',
    capacityIs: 'the load at which the bond begins to yield at its loaded end (evenly, where a cone or knot locks it)',
    remedy: 'a cone or a knot in the resin, a softer adhesive, or half a turn more cord on the drum before the anchor',
    rests: () => [
      {
        what: 'bond of resin to cord',
        source: { level: 'assumption', where: 'slippery fibres bond badly' },
        test: 'pull five potted ends to failure',
      },
    ],
  },
  {
    id: 'tensioner.travel',
    part: 'tensioner',
    mode: 'runs out of travel',
    stake: 'fails to work',
    kind: 'length',
    scope: 'joint',
    cases: ['season'],
    after: ['drive'],
    run: (of, { leg, joint }, { drive }) => {
      const { cord, drumRadius, pinionRadius, pretensionLeft } = leg.drives[joint]
      const { drum, tensioner, pretension } = leg.x.drives[joint]
      const { workingLength } = of(cordToCut, {
        span: drive.span,
        drumRadius,
        drumWrapTotal: drive.drumWrapAngle,
        pinionRadius,
        pinionWrap: drive.pinionWrap,
        groovePitch: drum.groovePitch,
        endLength: 0,
        tailLength: 0,
        strain: 0,
      })
      const taken = of(takeUp, {
        workingLength,
        pretension,
        axialRigidity: cord.axialRigidity,
        beddingStrain: BEDDING,
        creepStrain: (pretension * (1 - pretensionLeft)) / cord.axialRigidity,
        slack: tensioner.slackAtAssembly,
        temperatureRise: 0,
        frameExpansion: 0,
        cordExpansion: 0,
      })
      return { demand: taken.total, capacity: tensioner.travel }
    },
    demandIs: 'the cord to take up: slack of assembly, stretch, bedding and creep',
    capacityIs: 'the travel of the tensioner (pulling one end)',
    remedy: 'a longer tensioner, or stretch the cord before it is built in',
    rests: () => [
      {
        what: 'bedding stretch of the braid',
        source: { level: 'assumption', where: 'one per cent for a new braid' },
        test: 'load a metre of cord ten times to a third of its strength and measure what stays',
      },
    ],
  },
]

/** Stretch of a new braid that stays. */
const BEDDING = 0.01
