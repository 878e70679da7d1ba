import * as c from '../../src/capstan/index.js'
import { published } from './harness.js'

const unverified = (where: string) => ({ level: 'unverified', where }) as const
const computed = (where: string) => ({ level: 'computed', where }) as const
const arithmetic = (where: string) => ({ level: 'arithmetic', where }) as const
const read = (where: string) => ({ level: 'published', where }) as const
const scipy = (where: string) => ({ level: 'referenceLibrary', where: `scipy: ${where}` }) as const

// The chain puts no slip law in: springs, and at each node a force on the pulley of at most friction times tension times angle.
const chain = scipy('discretised Coulomb chain of the whole loop, 800 and 1600 pieces per arc, extrapolated (tests/oracles/capstan.py)')

const beerJohnston = unverified('Beer & Johnston, Statics, sample problem 8.7 (bollard)')
const R1 = {
  axialRigidity: '20 kN',
  pretension: '60 N',
  pinionRadius: '8 mm',
  drumRadius: '48 mm',
  span: '20 mm',
  pinionWrap: '3 turn',
  drumWrapTaut: '0.5 turn',
  drumWrapSlack: '0.5 turn',
  friction: 0.15,
} as const

const limitChain = scipy(
  'cord node by node at the end of travel, 400 and 800 pieces per arc, extrapolated (tests/oracles/capstan-limits.py)',
)
const { axialRigidity, pretension, drumWrapTaut: drumWrap, drumWrapSlack, ...R1Shape } = R1
void drumWrapSlack
const shape = { ...R1Shape, drumWrap } as const
const R1Travel = { ...shape, axialRigidity, pretension } as const

const axes = { pinionRadius: '7.5 mm', drumRadius: '46.5 mm', centreDistance: '62 mm' } as const
const byGeometry = computed(
  'length of the cord path about axes shifted by a micrometre either way, by coordinates (tests/oracles/capstan-frame.py)',
)

const friction = [
  ...published(
    c.slackTension,
    {
      what: 'bollard, three turns',
      given: { load: '53033 N', friction: 0.311305, wrapAngle: '3 turn' },
      gives: '150 N',
      within: '0.01 %',
      source: beerJohnston,
    },
    {
      what: 'first of two fixed drums, 135° each',
      given: { load: '500 N', friction: 0.25, wrapAngle: '135 deg' },
      gives: '277.43 N',
      source: unverified('Hibbeler, Statics, ch. 8 (rope over two fixed drums)'),
    },
    {
      what: 'second of two fixed drums',
      given: { load: '277.43 N', friction: 0.25, wrapAngle: '135 deg' },
      gives: '153.93 N',
      source: unverified('Hibbeler, Statics, ch. 8 (rope over two fixed drums)'),
    },
    {
      what: 'mass let down over a fixed drum, quarter turn',
      given: { load: '981 N', friction: 0.3, wrapAngle: '90 deg' },
      gives: '612.4 N',
      source: unverified('Meriam & Kraige, Statics, sample problem 6/9 (100 kg, g = 9.81)'),
    },
  ),
  ...published(
    c.tautTension,
    {
      what: 'bollard, three turns',
      given: { slackTension: '150 N', friction: 0.311305, wrapAngle: '3 turn' },
      gives: '53033 N',
      within: '0.01 %',
      source: beerJohnston,
    },
    {
      what: 'flat belt',
      given: { slackTension: '600 lbf', friction: 0.25, wrapAngle: '120 deg' },
      gives: '1012.855 lbf',
      source: arithmetic('600 e^(0.25·2π/3) lbf'),
    },
    {
      what: 'mass over a fixed drum, quarter turn',
      given: { slackTension: '981 N', friction: 0.3, wrapAngle: '90 deg' },
      gives: '1571.5 N',
      within: '0.05 N',
      source: unverified('Meriam & Kraige, Statics, sample problem 6/9 (100 kg, g = 9.81)'),
    },
  ),
  ...published(
    c.tensionRatio,
    {
      what: 'two turns at 0.3',
      given: { friction: 0.3, wrapAngle: '2 turn' },
      gives: '43.376 1',
      source: arithmetic('e^(0.3·4π) by hand'),
    },
    { what: 'one turn at 0.05', given: { friction: 0.05, wrapAngle: '1 turn' }, gives: '1.3691 1', source: arithmetic('e^(0.1π)') },
    { what: 'five turns at 0.2', given: { friction: 0.2, wrapAngle: '5 turn' }, gives: '535.49 1', source: arithmetic('e^(2π)') },
  ),
  ...published(c.frictionFromTensions, {
    what: 'hawser, 80 lbf holds 5000 lbf with two turns',
    given: { tautTension: '5000 lbf', slackTension: '80 lbf', wrapAngle: '2 turn' },
    gives: '0.329 1',
    source: read('Beer & Johnston, Statics 10th ed., problem 8.104, as solved on two tutoring pages (the book itself was not opened)'),
  }),
  ...published(
    c.slipArc,
    {
      what: '90 over 60 N',
      given: { tautTension: '90 N', slackTension: '60 N', friction: 0.15 },
      gives: '2.703100721 rad',
      source: arithmetic('ln 1.5 / 0.15'),
    },
    {
      what: '500 N hold 100 kg: 38.7° beyond a quarter turn',
      given: { tautTension: '981 N', slackTension: '500 N', friction: 0.3 },
      gives: '128.7 deg',
      source: unverified('Meriam & Kraige, Statics, sample problem 6/9 (g = 9.81)'),
    },
  ),
  ...published(
    c.wrapsNeeded,
    {
      what: 'hawser for 20 000 lbf',
      given: { tensionRatio: 250, friction: 0.32907 },
      gives: '2.67 1',
      source: read('Beer & Johnston, Statics 10th ed., problem 8.104'),
    },
    { what: 'ratio 5 at 0.12', given: { tensionRatio: 5, friction: 0.12 }, gives: '2.1346 1', source: arithmetic('ln 5 / (0.24 π)') },
  ),
  ...published(c.runningTautTension, {
    what: 'polyamide flat belt',
    given: { slackTension: '172.4 lbf', friction: 0.3277, wrapAngle: '3.0165 rad', massPerLength: '0.39312 lb/ft', speed: '2748.9 ft/min' },
    gives: { tautTension: '420 lbf', centrifugalTension: '25.65 lbf' },
    within: '0.02 %',
    source: unverified("Shigley's Mechanical Engineering Design, example 17-1"),
  }),
  ...published(c.vGrooveFriction, {
    given: { friction: 0.2, grooveAngle: '36 deg' },
    gives: { effectiveFriction: '0.64721 1', seatingFriction: '0.40062 1' },
    source: arithmetic('0.2/sin 18° and 0.2/(sin 18° + 0.2 cos 18°)'),
  }),
  ...published(
    c.roundGrooveFriction,
    { what: 'plain seat', given: { friction: 1 }, gives: '1.27324 1', source: arithmetic('4/π, limit of EN 81-50 cl. 5.11') },
    {
      what: 'undercut 90°, seat 30°',
      given: { friction: 1, undercutAngle: '90 deg', seatAngle: '30 deg' },
      gives: '1.89196 1',
      source: arithmetic('EN 81-50 cl. 5.11 by hand'),
    },
    { what: 'seat 60°', given: { friction: 1, seatAngle: '60 deg' }, gives: '1.17014 1', source: arithmetic('EN 81-50 cl. 5.11 by hand') },
  ),
  ...published(c.helixWrap, {
    given: { centreLineRadius: '8 mm', groovePitch: '1.4 mm' },
    gives: { frictionFactor: '0.999612 1', curvatureRadius: '8.00621 mm', lengthPerTurn: '50.2850 mm', leadAngle: '1.5954 deg' },
    source: arithmetic('helix geometry by hand'),
  }),
  ...published(c.thickCordFriction, {
    what: 'drum ten cords thick',
    given: { friction: 0.15, grooveRadius: '5 mm', cordDiameter: '1 mm' },
    gives: '0.136364 1',
    source: arithmetic('0.15/1.1'),
  }),
  ...published(
    c.stiffCordTautTension,
    {
      what: 'slack 1 N',
      given: { slackTension: '1 N', friction: 0.15, wrapAngle: '1 turn', bendingRigidity: '2e-5 N m^2', centreLineRadius: '8.5 mm' },
      gives: { tautTension: '2.36829 N', tautTensionSecondOrder: '2.36504 N', slackLiftOff: '30.504 deg' },
      source: computed('elastica with lift-off reactions, fixed-point iteration by hand'),
    },
    {
      what: 'slack 5 N',
      given: { slackTension: '5 N', friction: 0.15, wrapAngle: '1 turn', bendingRigidity: '2e-5 N m^2', centreLineRadius: '8.5 mm' },
      gives: { tautTension: '12.62055 N', tautTensionSecondOrder: '12.6143 N' },
      within: '0.00005 N',
      source: computed('elastica with lift-off reactions: ratios 2.52411 and 2.52286'),
    },
    {
      what: 'slack 20 N',
      given: { slackTension: '20 N', friction: 0.15, wrapAngle: '1 turn', bendingRigidity: '2e-5 N m^2', centreLineRadius: '8.5 mm' },
      gives: { tautTension: '51.1102 N' },
      within: '0.0002 N',
      source: computed('elastica with lift-off reactions: ratio 2.55551'),
    },
  ),
  ...published(
    c.fibreTautTension,
    {
      what: 'exponent 0.9',
      given: { slackTension: '60 N', frictionFactor: 0.25, exponent: 0.9, centreLineRadius: '8 mm', wrapAngle: '2 turn' },
      gives: { tautTension: '201.37746 N' },
      source: scipy('integration of dT/dθ = a R^(1−n) T^n'),
    },
    {
      what: 'exponent 0.9, light',
      given: { slackTension: '1 N', frictionFactor: 0.25, exponent: 0.9, centreLineRadius: '8 mm', wrapAngle: '2 turn' },
      gives: { tautTension: '5.88148 N', equivalentFriction: '0.14100 1' },
      source: scipy('integration of dT/dθ = a R^(1−n) T^n'),
    },
    {
      what: 'exponent 0.9, mean exponent',
      given: { slackTension: '5 N', frictionFactor: 0.25, exponent: 0.9, centreLineRadius: '8 mm', wrapAngle: '2 turn' },
      gives: { tautTension: '23.03242 N', equivalentFriction: '0.121552 1' },
      source: scipy('integration of dT/dθ = a R^(1−n) T^n; 1.52747/4π'),
    },
    {
      what: 'exponent 0.67',
      given: { slackTension: '5 N', frictionFactor: 0.25, exponent: 0.67, centreLineRadius: '8 mm', wrapAngle: '2 turn' },
      gives: { tautTension: '7.12318 N' },
      source: scipy('integration of dT/dθ = a R^(1−n) T^n'),
    },
  ),
]

const drive = [
  ...published(c.slackTorqueEstimate, {
    given: { pretension: '60 N', drumRadius: '48 mm' },
    gives: { equalArcs: '5.76 N m', anyArcs: '2.88 N m' },
    source: arithmetic('60 N × 48 mm, and twice that'),
  }),
  ...published(c.slipTorqueEstimate, {
    given: { pretension: '60 N', drumRadius: '48 mm', friction: 0.15, pinionWrap: '3 turn' },
    gives: { equalArcs: '5.116497 N m', anyArcs: '2.709606 N m' },
    source: arithmetic('5.76 tanh(0.45 π), 2.88 (1 − e^(−0.9 π)) by hand'),
  }),
  ...published(
    c.travelLimits,
    {
      what: 'mid travel',
      given: { ...R1Travel, travel: '0 deg' },
      gives: { slipTorque: '6.5721558 N m' },
      source: limitChain,
    },
    {
      what: 'end of a travel of 330 degrees',
      given: { ...R1Travel, travel: '330 deg' },
      gives: { slipTorque: '4.94816 N m', limit: 'slips' },
      source: limitChain,
    },
    {
      what: 'drum with twice the friction',
      given: { ...R1Travel, travel: '300 deg', drumFriction: 0.3 },
      gives: { slipTorque: '5.783124 N m' },
      within: '0.0001 %',
      source: limitChain,
    },
    {
      what: 'clamped, arcs of 6 and 0.28 rad',
      given: { ...R1Travel, drumWrap: '3.14 rad', travel: '5.72 rad', hold: 'clampedMidPinion' },
      gives: { slackTorque: '5.33184 N m', limit: 'slackSpan' },
      source: limitChain,
    },
  ),
  ...published(
    c.pretensionForTorque,
    {
      what: 'end of a travel of 330 degrees',
      given: { ...shape, travel: '330 deg', torque: '4.94816 N m', requiredReserve: 1 },
      gives: { pretension: '60 N' },
      source: limitChain,
    },
    {
      what: 'clamped, a reserve of a half',
      given: { ...shape, drumWrap: '3.14 rad', travel: '5.72 rad', hold: 'clampedMidPinion', torque: '5.33184 N m', requiredReserve: 1.5 },
      gives: { pretension: '90 N', againstSlack: '90 N' },
      source: limitChain,
    },
  ),
  ...published(c.travelPeakTension, {
    given: { pretension: '60 N', torque: '1.44 N m', drumRadius: '48 mm' },
    gives: '90 N',
    source: arithmetic('60 N + 1.44/0.048'),
  }),
  ...published(c.strokeTension, {
    given: { pretension: '60 N', torque: '1.44 N m', drumRadius: '48 mm', span: '20 mm', stroke: '1 rad' },
    gives: { slackTension: '55.48209 N', tautTension: '85.48209 N' },
    source: arithmetic('60 − 15 e^(−1.2)'),
  }),
  ...published(
    c.cycleTension,
    {
      what: 'stroke of 0.3 rad',
      given: { pretension: '60 N', torque: '1.44 N m', drumRadius: '48 mm', span: '20 mm', stroke: '0.3 rad' },
      gives: { peak: '79.70 N', restingAtStart: '59.28 N' },
      within: '0.02 N',
      source: computed('stacks of unstretched cord on both tracks, step by step, 25 cycles'),
    },
    {
      what: 'stroke of 1 rad',
      given: { pretension: '60 N', torque: '1.44 N m', drumRadius: '48 mm', span: '20 mm', stroke: '1 rad' },
      gives: { peak: '88.12 N', restingAtStart: '55.08 N' },
      within: '0.04 N',
      source: computed('stacks of unstretched cord on both tracks, step by step, 25 cycles'),
    },
    {
      what: 'stroke of 2 rad: more than the pretension and the whole pull',
      given: { pretension: '60 N', torque: '1.44 N m', drumRadius: '48 mm', span: '20 mm', stroke: '2 rad' },
      gives: { peak: '98.29 N', least: '32.29 N', restingAtEnd: '83.29 N' },
      source: arithmetic('60 + 15 (1 + 2.4 × 4.4/6.8); 60 − 15 (1 + 2.4²/6.8) by hand'),
    },
  ),
  ...published(
    c.arcWindup,
    {
      what: 'taut, slip within the wrap',
      given: {
        tension: '90 N',
        storedTension: '60 N',
        friction: 0.15,
        centreLineRadius: '8 mm',
        wrapAngle: '3 turn',
        axialRigidity: '20 kN',
      },
      gives: { feed: '15.1255827 um', slipArc: '2.7031007 rad' },
      source: scipy('quadrature of the strain along the arc'),
    },
    {
      what: 'slack, slip within the wrap',
      given: {
        tension: '30 N',
        storedTension: '60 N',
        friction: 0.15,
        centreLineRadius: '8 mm',
        wrapAngle: '3 turn',
        axialRigidity: '20 kN',
      },
      gives: { feed: '-30.9035489 um' },
      source: scipy('quadrature of the strain along the arc'),
    },
    {
      what: 'taut, slip at the anchor',
      given: {
        tension: '90 N',
        storedTension: '60 N',
        friction: 0.15,
        centreLineRadius: '8 mm',
        wrapAngle: '1 rad',
        axialRigidity: '20 kN',
      },
      gives: { feed: '9.4300857 um', state: 'atAnchor' },
      source: scipy('quadrature of the strain along the arc'),
    },
    {
      what: 'slack, slip at the anchor',
      given: {
        tension: '30 N',
        storedTension: '60 N',
        friction: 0.15,
        centreLineRadius: '8 mm',
        wrapAngle: '1 rad',
        axialRigidity: '20 kN',
      },
      gives: { feed: '-11.0532606 um' },
      source: scipy('quadrature of the strain along the arc'),
    },
  ),
  ...published(c.arcRecovery, {
    given: {
      peakTension: '90 N',
      tension: '70 N',
      storedTension: '60 N',
      friction: 0.15,
      centreLineRadius: '8 mm',
      axialRigidity: '20 kN',
    },
    gives: { remaining: '11.7791258 um', recovered: '3.3464569 um', lostMotion: '7.0439415 um', reversedArc: '47.99752 deg' },
    source: scipy('quadrature of the strain along the unloaded arc'),
  }),
  ...published(c.arcCycleLoss, {
    given: { amplitude: '6 N', pretension: '60 N', friction: 0.15, centreLineRadius: '8 mm', axialRigidity: '20 kN' },
    gives: '6.4 uJ',
    source: arithmetic('2 R F³/(3 μ EA T0) by hand'),
  }),
  ...published(c.microSlipLength, {
    given: { axialRigidity: '20 kN', contactStiffness: '5e6 N/m^2' },
    gives: '63.25 mm',
    source: arithmetic('√(20e3/5e6)'),
  }),
  ...published(c.spanStiffness, {
    given: { axialRigidity: '20 kN', drumRadius: '48 mm', span: '20 mm' },
    gives: '4608 N m/rad',
    source: arithmetic('2 EA r²/L'),
  }),
  ...published(c.frictionlessWrapStiffness, {
    given: {
      axialRigidity: '20 kN',
      pinionRadius: '8 mm',
      drumRadius: '48 mm',
      span: '20 mm',
      pinionWrap: '3 turn',
      drumWrapTaut: '0.5 turn',
      drumWrapSlack: '0.5 turn',
    },
    gives: '374.33792 N m/rad',
    source: arithmetic('2 EA r²/(L + 3π r1 + π r2)'),
  }),
  ...published(c.slipTorque, {
    given: R1,
    gives: { torque: '6.57215575 N m', tautTension: '145.5301305 N', slackTension: '8.610219052 N' },
    source: scipy('quadrature of the strain along all arcs and brentq on equal branch lengths'),
  }),
  ...published(c.stickSlip, {
    what: 'either coefficient',
    given: {
      axialRigidity: '20 kN',
      pretension: '60 N',
      pinionRadius: '8 mm',
      drumRadius: '48 mm',
      span: '20 mm',
      pinionWrap: '3 turn',
      drumWrapTaut: '0.5 turn',
      drumWrapSlack: '0.5 turn',
      staticFriction: 0.15,
      kineticFriction: 0.12,
    },
    gives: { slidingTorque: '5.60847397 N m', breakawayTorque: '6.4196202 N m' },
    source: scipy('quadrature of the strain along all arcs and brentq on equal branch lengths, the pinion at either coefficient'),
  }),
  ...published(c.historyWindup, {
    what: 'fifth turning point of a load cycle',
    given: {
      ...R1,
      torques: ['1.60094152 N m', '-1.60377140 N m', '1.60377140 N m', '-1.60377140 N m', '1.60377140 N m'],
      reading: 5,
    },
    gives: '1.2500 mrad',
    source: scipy('discretised Coulomb chain of the whole loop, driven by the rim to 1.25 mrad either way (tests/oracles/capstan.py)'),
  }),
  ...published(c.frictionToHold, {
    what: 'end of a travel of 330 degrees',
    given: {
      torque: '4.94816 N m',
      axialRigidity,
      pretension,
      pinionRadius: '8 mm',
      drumRadius: '48 mm',
      span: '20 mm',
      pinionWrap: '3 turn',
      drumWrap,
      travel: '330 deg',
    },
    gives: '0.15000 1',
    source: limitChain,
  }),
  ...published(
    c.holdingChance,
    {
      what: 'a little below the median',
      given: { frictionNeeded: 0.1, frictionLow: 0.08, frictionHigh: 0.2 },
      gives: { holds: '0.8005853 1', slips: '0.1994147 1' },
      source: scipy('stats.lognorm with nine tenths between the ends'),
    },
    {
      what: 'in the tail',
      given: { frictionNeeded: 0.06, frictionLow: 0.08, frictionHigh: 0.2 },
      gives: { slips: '0.003706452 1' },
      source: scipy('stats.lognorm with nine tenths between the ends'),
    },
  ),
  ...published(
    c.frameCompliance,
    {
      what: 'crossed',
      given: { arrangement: 'crossed', ...axes, stiffnessAlong: '2 kN/mm', stiffnessAcross: '1 kN/mm' },
      gives: { sum: '0.120708 um/N', difference: '0.758585 um/N' },
      source: byGeometry,
    },
    {
      what: 'open',
      given: { arrangement: 'open', ...axes, stiffnessAlong: '2 kN/mm', stiffnessAcross: '1 kN/mm' },
      gives: { sum: '0.302159 um/N', difference: '0.395682 um/N' },
      source: byGeometry,
    },
  ),
  ...published(c.tensionerCompliance, {
    given: { stiffness: '0.4 kN/mm', gain: 2 },
    gives: '0.010 mm/N',
    source: arithmetic('2²/400'),
  }),
  ...published(c.driveWindup, {
    what: 'on a soft bracket',
    given: {
      ...R1,
      torque: '1.61078 N m',
      compliance: { sum: '0.32222 um/N', difference: '2.9037 um/N', tautSpan: '0 m/N', slackSpan: '0 m/N' },
    },
    gives: { windup: '3.29606 mrad', tautTension: '77.9713 N' },
    within: '0.002 %',
    source: scipy(
      'cord node by node on springs for a frame of 400 N/mm along and 300 N/mm across the centres, 60 mm apart (tests/oracles/capstan-frame.py)',
    ),
  }),
  ...published(c.slackTorque, {
    given: { ...R1, slackShare: 0 },
    gives: { torque: '7.786457806 N m' },
    source: scipy('quadrature of the strain along the taut arcs and brentq on what the slack branch takes in'),
  }),
  ...published(
    c.driveWindup,
    {
      what: '0.5 N m',
      given: { ...R1, torque: '0.5 N m' },
      gives: { windup: '0.1965033 mrad', secantStiffness: '2544.486 N m/rad', tautTension: '65.301594 N' },
      within: '0.0005 %',
      source: chain,
    },
    {
      what: '0.5 N m, slope by differences',
      given: { ...R1, torque: '0.5 N m' },
      gives: { tangentStiffness: '1756.95 N m/rad' },
      within: '0.005 %',
      source: chain,
    },
    {
      what: '1 N m',
      given: { ...R1, torque: '1 N m' },
      gives: { windup: '0.5692427 mrad', secantStiffness: '1756.720 N m/rad', slackTension: '50.044424 N' },
      within: '0.0005 %',
      source: chain,
    },
    {
      what: '1 N m, slope by differences',
      given: { ...R1, torque: '1 N m' },
      gives: { tangentStiffness: '1084.95 N m/rad' },
      within: '0.005 %',
      source: chain,
    },
    {
      what: '60 µm of rim displacement',
      given: { ...R1, torque: '1.600939 N m' },
      gives: { windup: '1.25 mrad' },
      within: '0.0005 %',
      source: chain,
    },
    {
      what: '120 µm of rim displacement',
      given: { ...R1, torque: '2.376206 N m' },
      gives: { windup: '2.5 mrad' },
      within: '0.0005 %',
      source: chain,
    },
    {
      what: 'clamped cord, one span loose',
      given: { ...R1, hold: 'clampedMidPinion', torque: '20 N m' },
      gives: { windup: '63.00153298 mrad', state: 'slackSpan' },
      source: scipy('quadrature of the strain along the taut arcs'),
    },
  ),
]

const geometry = [
  ...published(c.centreLineRadius, {
    what: 'groove 15 mm, cord 1 mm',
    given: { grooveDiameter: '15 mm', cordDiameter: '1 mm' },
    gives: '8 mm',
    source: arithmetic('16/2'),
  }),
  ...published(c.reductionRatio, {
    what: 'grooves 15 and 95 mm, cord 1 mm: not 6.333',
    given: { drumRadius: '48 mm', pinionRadius: '8 mm' },
    gives: '6.000 1',
    source: arithmetic('96/16'),
  }),
  ...published(
    c.pulleyGeometry,
    {
      what: 'crossed, tight',
      given: { arrangement: 'crossed', pinionRadius: '8 mm', drumRadius: '48 mm', centreDistance: '58 mm' },
      gives: { pinionWrap: '329.820 deg', drumWrapAngle: '329.820 deg', span: '15.0997 mm', loopPerCentreDistance: '0.52068 1' },
      source: arithmetic('tangent geometry by hand; 2 × 15.0997/58'),
    },
    {
      what: 'open, a turn more',
      given: { arrangement: 'open', pinionRadius: '8 mm', drumRadius: '48 mm', centreDistance: '80 mm', pinionTurns: 1 },
      gives: { pinionWrap: '480 deg', drumWrapAngle: '240 deg', span: '69.2820 mm', loopPerCentreDistance: '1.73205 1' },
      source: arithmetic('asin(40/80) is 30 degrees'),
    },
    {
      what: 'crossed, wide',
      given: { arrangement: 'crossed', pinionRadius: '8 mm', drumRadius: '48 mm', centreDistance: '80 mm' },
      gives: { pinionWrap: '268.854 deg', span: '57.1314 mm' },
      source: arithmetic('tangent geometry by hand'),
    },
  ),
  ...published(c.singleTrackTravel, {
    given: { drumWrapAngle: '329.82 deg', anchorGap: '30 deg', residualWrap: '10 deg' },
    gives: '279.82 deg',
    source: arithmetic('329.82 − 30 − 20'),
  }),
  ...published(c.residualWrap, { given: { drumWrap: '180 deg', travel: '120 deg' }, gives: '120 deg', source: arithmetic('180 − 60') }),
  ...published(c.groove, {
    given: { cordDiameter: '1.6 mm' },
    gives: { pitch: '1.92 mm', seatRadius: '0.864 mm', depth: '0.528 mm', land: '0.32802 mm' },
    source: arithmetic('chord of the seat circle by hand'),
  }),
  ...published(c.pinionLength, {
    given: { groovePitch: '1.2 mm', wraps: 3, ratio: 6, travel: '120 deg' },
    gives: { length: '7.2 mm', walk: '2.4 mm' },
    source: arithmetic('1.2 (3 + 2 + 1)'),
  }),
  ...published(c.drumLength, {
    given: { drumLead: '7.2 mm', largestWrap: '200 deg', groovePitch: '1.2 mm' },
    gives: '10.4 mm',
    source: arithmetic('2 (7.2 × 200/360 + 1.2)'),
  }),
  ...published(c.matchedDrumLead, { given: { pinionPitch: '1.2 mm', ratio: 6 }, gives: '7.2 mm', source: arithmetic('1.2 × 6') }),
  ...published(c.fleetAngle, { given: { axialOffset: '1.2 mm', span: '20 mm' }, gives: '3.434 deg', source: arithmetic('atan 0.06') }),
  ...published(c.leadMismatch, {
    given: { pinionPitch: '1.2 mm', drumLead: '2 mm', ratio: 6, travel: '120 deg' },
    gives: '0.866667 mm',
    source: arithmetic('(7.2 − 2)/6'),
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
    gives: { workingLength: '482.63231 mm', cutLength: '625.18874 mm' },
    source: arithmetic('sum of spans, arcs and helix by hand'),
  }),
  ...published(c.takeUp, {
    given: {
      workingLength: '0.45 m',
      pretension: '60 N',
      axialRigidity: '20 kN',
      beddingStrain: '1 %',
      creepStrain: '0.2 %',
      slack: '2 mm',
      temperatureRise: '30 K',
      frameExpansion: '70 ppm/K',
      cordExpansion: '-12 ppm/K',
    },
    gives: { elastic: '1.35 mm', bedding: '4.5 mm', creep: '0.9 mm', heat: '1.107 mm', total: '8.75 mm' },
    source: arithmetic('elongations by hand'),
  }),
  ...published(c.thermalTension, {
    given: { axialRigidity: '20 kN', temperatureRise: '30 K', frameExpansion: '70 ppm/K', cordExpansion: '-12 ppm/K' },
    gives: '49.2 N',
    source: arithmetic('20 kN × 30 K × 82 ppm/K'),
  }),
  ...published(
    c.tensionerTakeUp,
    {
      what: 'idler pressed 3 mm into a span of 60 mm',
      given: { method: 'spanIdler', travel: '3 mm', span: '60 mm', centreDistance: '80 mm' },
      gives: { takeUp: '0.29925 mm', gain: '0.19901 1' },
      source: arithmetic('two hypotenuses less the span'),
    },
    {
      what: 'centre distance, crossed 8/48 at 58 mm',
      given: { method: 'centreDistance', travel: '1 mm', span: '15.0997 mm', centreDistance: '58 mm' },
      gives: { takeUp: '0.52068 mm' },
      source: arithmetic('2 L/C'),
    },
  ),
  ...published(c.tensionPerScrewTurn, {
    given: { lead: '0.7 mm', gain: 1, workingLength: '0.45 m', axialRigidity: '20 kN' },
    gives: '31.1111 N',
    source: arithmetic('20 kN × 0.7/450'),
  }),
]

const parts = [
  ...published(c.shaftForce, {
    given: {
      arrangement: 'crossed',
      tautTension: '75 N',
      slackTension: '45 N',
      pinionRadius: '8 mm',
      drumRadius: '48 mm',
      centreDistance: '58 mm',
    },
    gives: { alongCentres: '31.24069 N', across: '28.96552 N', force: '42.60261 N' },
    source: arithmetic('vector sum by hand'),
  }),
  ...published(c.drumHoop, {
    given: { tension: '60 N', centreLineRadius: '8 mm', pitch: '1.2 mm', wallOuterRadius: '7.5 mm', boreRadius: '4 mm' },
    gives: { pressure: '6.25 MPa', boreHoopStress: '-17.47 MPa' },
    source: arithmetic("Lamé's thick cylinder by hand"),
  }),
  ...published(c.groovePressure, {
    given: { tension: '60 N', centreLineRadius: '8 mm', cordDiameter: '1 mm' },
    gives: '7.5 MPa',
    source: arithmetic('2 × 60/(16 × 1)'),
  }),
  ...published(c.bendRatio, { given: { centreLineRadius: '8 mm', cordDiameter: '1 mm' }, gives: '16.0 1', source: arithmetic('16/1') }),
  ...published(c.idlerForce, {
    given: { tension: '755 lbf', turnedAngle: '85 deg' },
    gives: '1020 lbf',
    source: read('AA-SM-017, control-cable pulley example'),
  }),
  ...published(c.drumNeckStress, {
    given: { torque: '3 N m', sidePull: '120 N', arm: '20 mm', outerDiameter: '30 mm', boreDiameter: '8 mm' },
    gives: { torsionStress: '0.568760 MPa', bendingStress: '0.910017 MPa', equivalentStress: '1.341117 MPa' },
    source: arithmetic('section moduli of a hollow shaft by hand'),
  }),
  ...published(c.grooveWedging, {
    given: { tension: '60 N', wrapAngle: '1 turn', grooveAngle: '60 deg' },
    gives: '326.48389 N',
    source: arithmetic('60 × 2π/(2 tan 30°)'),
  }),
  ...published(
    c.delamination,
    {
      what: 'no bolts',
      given: {
        bendingMoment: '2.4 N m',
        axialForce: '50 N',
        clampLoad: '0 N',
        outerDiameter: '30 mm',
        boreDiameter: '8 mm',
        allowableAcrossLayers: '10 MPa',
      },
      gives: { layerStress: '0.986167 MPa', clampToStayClosed: '647.5104 N', reserve: '10.14027 1', state: 'heldByBond' },
      source: arithmetic('M/W + N/A by hand'),
    },
    {
      what: 'clamped with 600 N',
      given: {
        bendingMoment: '2.4 N m',
        axialForce: '50 N',
        clampLoad: '600 N',
        outerDiameter: '30 mm',
        boreDiameter: '8 mm',
        allowableAcrossLayers: '10 MPa',
      },
      gives: { layerStress: '0.0723590 MPa' },
      source: arithmetic('M/W + (N − F)/A by hand'),
    },
  ),
  ...published(
    c.anchorPull,
    {
      what: 'wrap of 2 rad',
      given: { spanTension: '90 N', storedTension: '60 N', friction: 0.15, wrapAngle: '2 rad' },
      gives: '66.67364 N',
      source: arithmetic('90 e^(−0.3)'),
    },
    {
      what: 'half a turn',
      given: { spanTension: '90 N', storedTension: '60 N', friction: 0.15, wrapAngle: '0.5 turn' },
      gives: '60 N',
      source: arithmetic('90 e^(−0.15π) is below the stored tension'),
    },
  ),
  ...published(c.reflectedInertia, {
    given: { rotorInertia: '2.5e-5 kg m^2', ratio: 6 },
    gives: '9.0e-4 kg m^2',
    source: arithmetic('2.5e-5 × 36'),
  }),
  ...published(c.driveResonance, {
    given: { stiffness: '4608 N m/rad', loadInertia: '0.012 kg m^2', reflectedInertia: '9e-4 kg m^2' },
    gives: { motorLocked: '98.62 Hz', motorFree: '373.39 Hz', usableBandwidth: '32.87 Hz' },
    source: arithmetic('two-inertia frequencies by hand'),
  }),
  ...published(c.stiffnessAtMotor, { given: { stiffness: '4608 N m/rad', ratio: 6 }, gives: '128 N m/rad', source: arithmetic('4608/36') }),
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
    gives: { beltCreep: '0.0015 1', bearings: '0.0050 1', bending: '0.04 1' },
    source: arithmetic('30/20000; 0.002·150·4/(30·8); two pulleys, each 0.01 of a mean pull of 60 N: 2 × 0.01 × 60/30'),
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
    gives: { beltCreep: '2.16 mJ', bearings: '7.2 mJ', bending: '57.6 mJ' },
    source: arithmetic('30²/20000 × 48 mm; 0.002 × 150 N × 4 mm × 6; two pulleys, each 0.01 × 60 N × 48 mm'),
  }),
  ...published(c.creepDrift, {
    given: { ratio: 6, stroke: '1 rad', tensionDifference: '30 N', axialRigidity: '20 kN' },
    gives: '4.500 mrad',
    source: arithmetic('6 × 30/(2 × 20000)'),
  }),
]

const cords = [
  ...published(c.braidAxialRigidity, {
    given: { filamentModulus: '100 GPa', filamentDensity: '975 kg/m^3', massPerLength: '0.5 g/m', braidAngle: '20 deg' },
    gives: '37.34 kN',
    source: arithmetic('affine helix by hand: 51.28 kN × 0.72808'),
  }),
  ...published(
    c.wireRopeBreakingLoad,
    {
      given: { diameter: '2 mm', grade: '1770 MPa', construction: '7x7' },
      gives: '2.5417 kN',
      source: arithmetic('EN 12385-4, K = 0.359'),
    },
    {
      given: { diameter: '1 mm', grade: '1770 MPa', construction: '7x7' },
      gives: '0.63543 kN',
      source: arithmetic('EN 12385-4, K = 0.359'),
    },
    {
      given: { diameter: '4 mm', grade: '1770 MPa', construction: '7x19' },
      gives: '9.4022 kN',
      source: arithmetic('EN 12385-4, K = 0.332'),
    },
    {
      given: { diameter: '3 mm', grade: '1770 MPa', construction: '7x19' },
      gives: '5.2888 kN',
      source: arithmetic('EN 12385-4, K = 0.332'),
    },
  ),
  ...published(c.wireRopeRigidity, {
    what: '7x19 stainless, 1/16 in',
    given: { diameter: '0.0625 in', stretchConstant: 1.62e-5 },
    gives: { axialRigidity: '107.3 kN', circleModulus: '54.19 GPa' },
    source: read("a wire-rope seller's page, elongation formula: 20 in of 1/8 in under 500 lbf becomes 20.10368 in"),
  }),
  ...published(c.braidBreakingStrength, {
    given: { filamentStrength: '3.24 GPa', filamentDensity: '1.41 g/cm^3', massPerLength: '1.1 g/m', realisation: 0.65 },
    gives: '1.643 kN',
    source: arithmetic('0.65 × 3.24 GPa × 0.78014 mm²'),
  }),
  ...published(
    c.bendEfficiency,
    { what: 'six tenths of the least', given: { bendRatio: 6, leastBendRatio: 10 }, gives: '0.60 1', source: arithmetic('6/10') },
    {
      what: 'steeper, and above the least',
      given: { bendRatio: 12, leastBendRatio: 10, exponent: 2 },
      gives: '1.00 1',
      source: arithmetic('nothing is gained above it'),
    },
  ),
  ...published(
    c.wireRopeBendEfficiency,
    ...(
      [
        [1, '0.50 1'],
        [25, '0.90 1'],
      ] as const
    ).map(([bendRatio, gives]) => ({
      what: `over ${bendRatio} diameters`,
      given: { bendRatio },
      gives,
      source: unverified('rigging handbooks, chart of sling efficiency over pins'),
    })),
  ),
  ...published(
    c.controlCableBendRatio,
    ...(
      [
        [0.01, '10.0 1'],
        [0.1, '20.0 1'],
        [0.2, '28.0 1'],
      ] as const
    ).map(([loadShare, gives]) => ({
      what: `at ${100 * loadShare} % of the strength`,
      given: { loadShare },
      gives,
      source: read('MIL-F-18372, pulley ratio against cable load'),
    })),
  ),
  ...published(c.wireBendingStress, {
    given: { modulus: '200 GPa', wireDiameter: '0.1 mm', pulleyDiameter: '16 mm' },
    gives: '1250 MPa',
    source: arithmetic('E d/D'),
  }),
  ...published(c.workingTension, {
    given: { breakingStrength: '5000 N', endEfficiency: 0.6, bendEfficiency: 0.9, designFactor: 8 },
    gives: '337.5 N',
    source: arithmetic('5000 × 0.54/8'),
  }),
  ...published(
    c.activatedCreepFactor,
    {
      what: '20 to 40 °C at 0.5 GPa',
      given: { fromTemperature: '20 degC', toTemperature: '40 degC', fromStress: '0.5 GPa', toStress: '0.5 GPa' },
      gives: '31.10 1',
      source: arithmetic('Eyring rate with U = 1.5 eV, V = 45 Å³ (numpy)'),
    },
    {
      what: '0.5 to 0.6 GPa at 20 °C',
      given: { fromTemperature: '20 degC', toTemperature: '20 degC', fromStress: '0.5 GPa', toStress: '0.6 GPa' },
      gives: '3.040 1',
      source: arithmetic('Eyring rate with U = 1.5 eV, V = 45 Å³ (numpy)'),
    },
  ),
  ...published(c.logarithmicCreep, {
    what: 'one second to one year',
    given: { perDecade: '0.02 %', from: '1 s', to: '1 year' },
    gives: '0.150 %',
    source: arithmetic('0.02 × lg 3.156e7'),
  }),
  ...published(c.pretensionLeft, {
    given: { pretension: '60 N', axialRigidity: '20 kN', creepStrain: '0.1 %' },
    gives: { tension: '40 N', state: 'taut' },
    source: arithmetic('60 − 20'),
  }),
  ...published(c.activatedPretensionLeft, {
    what: '30 days at 40 °C',
    given: {
      pretension: '100 N',
      fibreArea: '0.5128205128205128 mm^2',
      axialRigidity: '37340 N',
      referenceRate: '1e-9 1/s',
      referenceStress: '0.5 GPa',
      referenceTemperature: '20 degC',
      temperature: '40 degC',
      time: '30 day',
    },
    gives: { tension: '40.851612 N' },
    source: scipy('solve_ivp of dT/dt = −EA ε̇(T)'),
  }),
  ...published(c.logarithmicPretensionLeft, {
    what: 'one second to one year',
    given: { pretension: '60 N', axialRigidity: '20 kN', perDecade: '0.02 %', from: '1 s', to: '1 year' },
    gives: { tension: '40.0016 N', share: '0.666693 1' },
    source: arithmetic('60/(1 + 333.3 × 0.0002 × 7.4991)'),
  }),
  ...published(c.bendingCycles, {
    what: 'made-up coefficients',
    given: { bendRatio: 25, tension: '300 N', ropeDiameter: '3 mm', grade: '1960 MPa', b0: 1.5, b1: -1.4, b2: 3.1, b3: 0.2 },
    gives: '14034.870 1',
    source: arithmetic('the regression evaluated by hand'),
  }),
]

const compared = [
  ...published(
    c.lewisRootStress,
    {
      what: 'module 1, 16 teeth',
      given: { tangentialForce: '100 N', module: '1 mm', faceWidth: '10 mm', formFactor: 0.296 },
      gives: { rootStress: '33.78 MPa' },
      source: arithmetic('100/(10 × 0.296)'),
    },
    {
      what: '16 teeth of 8 per inch at 1200 rpm (the book rounds the factor for feet per minute)',
      given: { tangentialForce: '364.3 lbf', module: '3.175 mm', faceWidth: '1.5 in', formFactor: 0.296, pitchSpeed: '628.3 ft/min' },
      gives: { rootStress: '10000 psi', dynamicFactor: '1.523 1' },
      within: '0.05 %',
      source: unverified("Shigley's Mechanical Engineering Design, example 14-1"),
    },
    {
      what: '45 teeth of module 2.5 under 600 N m (form factor 2.4 as the inverse)',
      given: { tangentialForce: '10666.6667 N', module: '2.5 mm', faceWidth: '56.25 mm', formFactor: 1 / 2.4 },
      gives: { rootStress: '182.04 MPa' },
      source: { level: 'published', where: 'T. Eritenel, notebook series on gears (2019), strength, chapter 2, example' },
    },
  ),
  ...published(
    c.lewisFormFactor,
    ...(
      [
        [12, '0.245 1'],
        [16, '0.295 1'],
        [19, '0.314 1'],
        [30, '0.358 1'],
        [50, '0.408 1'],
        [75, '0.433 1'],
        [100, '0.446 1'],
        [400, '0.478 1'],
      ] as const
    ).map(([teeth, gives]) => ({
      what: `${teeth} teeth`,
      given: { teeth },
      gives,
      source: { level: 'published', where: 'A. Blengino, lewis_factor_table.csv of an open gear library, read' } as const,
    })),
  ),
  ...published(c.spurContactRatio, {
    what: '47 and 50 teeth of module 2.5 at 122 mm, shifted',
    given: {
      pinionTeeth: 47,
      wheelTeeth: 50,
      module: '2.5 mm',
      pinionTipRadius: '61.09 mm',
      wheelTipRadius: '64.7825 mm',
      centreDistance: '122 mm',
    },
    gives: { contactRatio: '1.338 1', workingAngle: '20.946 deg' },
    within: '0.2 %',
    source: {
      level: 'published',
      where: 'T. Eritenel, notebook series on gears (2019), geometry, chapter 2, example; tip radii from profile shifts of three digits',
    },
  }),
  ...published(c.spurMeshForce, {
    what: '100 N m on a pitch circle of 40 mm, spur forces at 21.515 deg',
    given: { torque: '100 N m', pitchRadius: '20 mm', pressureAngle: '21.515 deg' },
    gives: { tangential: '5000.0 N', radial: '1971.1 N' },
    source: { level: 'published', where: 'T. Eritenel, notebook series on gears (2019), strength, chapter 1, example' },
  }),
  ...published(c.spurContactPressure, {
    what: '45 and 137 teeth of module 2 under 600 N m, steel',
    given: {
      tangentialForce: '13333.3333 N',
      faceWidth: '45 mm',
      pinionRadius: '45 mm',
      wheelRadius: '137 mm',
      pinionModulus: '206 GPa',
      wheelModulus: '206 GPa',
    },
    gives: '990.11 MPa',
    within: '0.2 %',
    source: {
      level: 'published',
      where:
        'T. Eritenel, notebook series on gears (2019), strength, chapter 3, example; its material factor 269 and shape factor 1.76 are rounded',
    },
  }),
  ...published(
    c.beltTeethInMesh,
    {
      what: '20/60 XL at 120 mm',
      given: { smallTeeth: 20, largeTeeth: 60, pitch: '5.08 mm', centreDistance: '120 mm' },
      gives: { exact: '8.2843 1', teethInMesh: '8 1', toothFactor: '1.0 1' },
      source: arithmetic('ISO 5295 form by hand'),
    },
    {
      what: '12/72 of 3 mm at 60 mm: few',
      given: { smallTeeth: 12, largeTeeth: 72, pitch: '3 mm', centreDistance: '60 mm' },
      gives: { exact: '4.18 1', teethInMesh: '4 1', toothFactor: '0.6 1' },
      source: arithmetic('ISO 5295 form by hand'),
    },
  ),
  ...published(c.beltRating, {
    what: 'XL, 20 teeth at 1000 rpm',
    given: {
      allowableTension: '50.17 N',
      massPerLength: '0.022 kg/m',
      referenceWidth: '9.5 mm',
      width: '9.5 mm',
      speed: '1.69333 m/s',
      toothFactor: 1,
      pitchRadius: '16.1701 mm',
    },
    gives: { power: '84.85 W', torque: '0.8102 N m' },
    source: arithmetic('ISO 5295 form by hand'),
  }),
  ...published(c.beltToothShear, {
    given: { tangentialForce: '87.27 N', teethInMesh: 4, width: '6 mm', rootWidth: '1.5 mm' },
    gives: '2.4242 MPa',
    source: arithmetic('87.27/36'),
  }),
  ...published(
    c.gearBacklash,
    {
      what: 'module 1.5 at 50 mm',
      given: { module: '1.5 mm', centreDistance: '50 mm' },
      gives: { normal: '0.09 mm' },
      source: unverified('ISO/TR 10064-2, table of least backlash'),
    },
    {
      what: 'module 1 at 54 mm',
      given: { module: '1 mm', centreDistance: '54 mm' },
      gives: { normal: '0.078 mm', alongPitchCircle: '0.0830059 mm' },
      source: arithmetic('(2/3)(0.06 + 0.027 + 0.03) mm, over cos 20°'),
    },
  ),
  ...published(c.backlashAngle, {
    given: { backlash: '0.1 mm', pitchRadius: '34.38 mm' },
    gives: '9.99926 arcmin',
    source: arithmetic('0.1/34.38 rad'),
  }),
]

export const checks = [...friction, ...drive, ...geometry, ...parts, ...cords, ...compared]
