import type { Source } from '../../src/formula/index.js'
import { springAcrossJoint, springOverTravel } from '../../src/kinematics/index.js'
import { springWire } from '../../src/materials/index.js'
import {
  extensionSpringForce,
  extensionSpringHook,
  helicalSpringRate,
  helicalSpringShear,
  springMass,
  springSurge,
  torsionSpringRate,
  torsionSpringStress,
  torsionSpringTorque,
  woundTorsionSpring,
} from '../../src/structures/index.js'
import springs from '../oracles/structures-springs.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const bhandari = (where: string): Source => ({
  level: 'published',
  where: `Bhandari, Design of Machine Elements, ${where}, as worked in the textbook companion 764 of FOSSEE`,
})
const sheet: Source = { level: 'unverified', where: 'printed design sheet of an extension spring of 1.6 mm wire to EN 13906-2' }
const shigley = (where: string): Source => ({
  level: 'unverified',
  where: `Shigley's Mechanical Engineering Design, ${where}, from memory`,
})
const model: Source = {
  level: 'computed',
  where: 'wire of a helix by energy integrals and curved bars (tests/oracles/structures-springs.py)',
}
const worked = (where: string): Source => ({ level: 'computed', where })

const SHEET = { wireDiameter: '1.6 mm', coilDiameter: '11.1 mm' } as const
const metres = (x: number): [number, 'm'] => [x, 'm']

export const checks: Check[] = [
  ...published(
    helicalSpringRate,
    {
      what: 'wire of 11 mm, 5 coils of 55 mm',
      given: { wireDiameter: '11 mm', coilDiameter: '55 mm', activeCoils: 5, shearModulus: '81370 MPa' },
      gives: '179.014 N/mm',
      source: bhandari('example 10.2'),
    },
    {
      what: 'spring of a balance, wire of 7 mm, 22 coils of 42 mm',
      given: { wireDiameter: '7 mm', coilDiameter: '42 mm', activeCoils: 22, shearModulus: '81370 MPa' },
      gives: '14.982902 N/mm',
      source: bhandari('example 10.5'),
    },
    {
      what: 'extension spring, stainless wire',
      given: { ...SHEET, activeCoils: 21, shearModulus: '70 GPa' },
      gives: '1.997 N/mm',
      source: sheet,
    },
    {
      what: 'unit load along the helix',
      given: { ...SHEET, activeCoils: 21, shearModulus: '70 GPa' },
      gives: printed(springs.rate, 'N/mm'),
      source: model,
    },
  ),
  ...published(
    helicalSpringShear,
    ...(
      [
        [5, '1.311'],
        [7, '1.213'],
        [7.1, '1.210'],
        [7.5, '1.197'],
      ] as const
    ).map(([index, factor]) => ({
      what: `Wahl factor at an index of ${index}`,
      given: { force: '100 N', wireDiameter: '1 mm', coilDiameter: [index, 'mm'] } as const,
      gives: { factor: Number(factor) },
      within: '0.000501',
      source: bhandari('example 10.3'),
    })),
    {
      what: 'pull that a shear stress of 175 MPa without the factor stands for',
      given: { force: '25.4 N', ...SHEET },
      gives: { index: 6.94 },
      within: '0.005',
      source: sheet,
    },
    {
      what: 'wire of 2 mm, coil of 12 mm, 100 N: factor 1.2525 on 382 MPa',
      given: { force: '100 N', wireDiameter: '2 mm', coilDiameter: '12 mm' },
      gives: { shearStress: '478.42 MPa' },
      source: worked('(23/20 + .615/6) · 8 · 100 · 12/(8 π)'),
    },
  ),
  ...published(extensionSpringHook, {
    what: 'hard-drawn wire of 0.035 in, outer diameter 0.248 in, 5.25 lbf',
    given: {
      force: '5.25 lbf',
      wireDiameter: '0.035 in',
      coilDiameter: '0.213 in',
      hookRadius: '0.106 in',
      bendRadius: '0.089 in',
    },
    gives: { bendingFactor: 1.14, bendingStress: '156.9 ksi', shearFactor: 1.18, shearStress: '78.4 ksi' },
    within: '0.5 %',
    source: shigley('example of an extension spring, 0.035 in wire'),
  }),
  ...published(
    extensionSpringHook,
    ...Object.entries(springs.curvedBar).map(([index, factor]) => ({
      what: `hook as a curved bar at an index of ${index}`,
      given: {
        force: '10 N',
        wireDiameter: '1 mm',
        coilDiameter: [Number(index), 'mm'],
        hookRadius: [Number(index) / 2, 'mm'],
        bendRadius: '2 mm',
      } as const,
      gives: { bendingFactor: Number(factor), shearFactor: 1.25 },
      within: '0.3 %',
      source: model,
    })),
  ),
  ...published(springMass, {
    what: 'wire of 1.6 mm, 21 coils of 11.1 mm: 732.3 mm of wire',
    given: { ...SHEET, coils: 21, density: '7900 kg/m^3' },
    gives: '11.632 g',
    source: worked('7900 · π/4 · 1.6² · π · 11.1 · 21 cubic millimetres'),
  }),
  ...published(springSurge, {
    what: 'chain of 1200 masses between held ends',
    given: { ...SHEET, activeCoils: 21, shearModulus: '70 GPa', density: '7900 kg/m^3' },
    gives: printed(springs.surge, 'Hz'),
    within: '0.001 %',
    source: { level: 'referenceLibrary', where: 'numpy eigenvalues of a chain of masses (tests/oracles/structures-springs.py)' },
  }),
  ...published(
    extensionSpringForce,
    {
      what: '40 mm beyond its free length',
      given: { length: '140 mm', freeLength: '100 mm', initialTension: '5 N', rate: '0.5 N/mm' },
      gives: { force: '25 N', energy: '0.6 J', state: 'stretched' },
      source: worked('5 + 0.5 · 40; mean pull 15 N over 40 mm'),
    },
    {
      what: 'shorter than free',
      given: { length: '90 mm', freeLength: '100 mm', initialTension: '5 N', rate: '0.5 N/mm' },
      gives: { force: '0 N', energy: '0 J', state: 'loose' },
      source: worked('a spring only pulls'),
    },
  ),
  ...published(
    torsionSpringRate,
    {
      what: 'wire of 1.6 mm, 393 coils of 18 mm for 3 N mm/rad',
      given: { wireDiameter: '1.6 mm', coilDiameter: '18 mm', bodyCoils: 393, modulus: '207000 MPa' },
      gives: { rate: '3 N mm/rad' },
      within: '0.005 N mm/rad',
      source: bhandari('example 10.21'),
    },
    ...[
      { bodyCoils: 4.25, legs: '50 mm' as const },
      { bodyCoils: 6, legs: '30 mm' as const },
    ].map((given, i) => ({
      what: `body of ${given.bodyCoils} coils and both legs by energy`,
      given: { wireDiameter: '1.5 mm', coilDiameter: '12 mm', modulus: '206 GPa', ...given } as const,
      gives: { rate: printed(springs.torsionRate[i], 'N m/rad') },
      source: model,
    })),
    {
      what: 'wire of 0.072 in, 4 1/4 coils of 0.5218 in, legs of 1 in',
      given: { wireDiameter: '0.072 in', coilDiameter: '0.5218 in', bodyCoils: 4.25, legs: '2 in', modulus: '28.5 Mpsi' },
      gives: { activeCoils: 4.66 },
      within: '0.005',
      source: shigley('example of a torsion spring, 0.072 in wire'),
    },
  ),
  ...published(
    torsionSpringStress,
    ...Object.entries(springs.curvedBar).map(([index, factor]) => ({
      what: `curved bar at an index of ${index}`,
      given: { torque: '1 N m', wireDiameter: '1 mm', coilDiameter: [Number(index), 'mm'] } as const,
      gives: { factor: Number(factor) },
      within: '0.3 %',
      source: model,
    })),
    {
      what: 'wire of 1.6 mm, coil of 18 mm, 250 N mm: factor 1.07 on 621.7 MPa',
      given: { torque: '250 N mm', wireDiameter: '1.6 mm', coilDiameter: '18 mm' },
      gives: { stress: '665.84 MPa' },
      within: '0.02 MPa',
      source: worked('(4 · 11.25² − 12.25)/(45 · 10.25) · 32 · 250/(π · 1.6³)'),
    },
  ),
  ...published(
    torsionSpringTorque,
    {
      what: 'a knee folded by 40 deg beyond the free angle of a spring that it winds',
      given: { jointAngle: '60 deg', freeAngle: '20 deg', winds: 'growing', rate: '2 N m/rad' },
      gives: { torque: '-1.3963 N m', windup: '40 deg', energy: '0.48739 J' },
      source: worked('2 · 40 π/180; half of it times the angle'),
    },
    {
      what: 'on the other side of the free angle',
      given: { jointAngle: '60 deg', freeAngle: '20 deg', winds: 'falling', rate: '2 N m/rad' },
      gives: { torque: '0 N m', windup: '0 deg' },
      source: worked('legs that press and do not pull'),
    },
  ),
  ...published(
    woundTorsionSpring,
    ...springs.wound.map(({ given: [wire, coil, bodyCoils, windup], inner, body }) => ({
      what: `one wire on more coils, wound by ${windup} rad`,
      given: {
        wireDiameter: metres(wire as number),
        coilDiameter: metres(coil as number),
        bodyCoils: bodyCoils as number,
        windup: [windup as number, 'rad'],
      } as const,
      gives: { innerDiameter: printed(inner, 'mm'), bodyLength: printed(body, 'mm') },
      source: model,
    })),
  ),
  ...published(
    springWire,
    {
      what: 'music wire of 7.25 mm',
      given: { wire: 'musicWire', wireDiameter: '7.25 mm' },
      gives: { tensileStrength: '1492 MPa' },
      source: { level: 'unverified', where: 'worked problem for an engineering examination: music wire' },
    },
    {
      what: 'oil-tempered wire of 10 mm',
      given: { wire: 'oilTempered', wireDiameter: '10 mm' },
      gives: { tensileStrength: '1032 MPa' },
      source: { level: 'unverified', where: 'worked problem for an engineering examination: oil-tempered wire' },
    },
    {
      what: 'stainless wire: moduli and density',
      given: { wire: 'stainless', wireDiameter: '1.6 mm' },
      gives: { modulus: '180000 MPa', shearModulus: '70000 MPa', density: '7900 kg/m^3' },
      source: sheet,
    },
  ),
  ...published(
    springAcrossJoint,
    ...springs.across.map(({ given: [fixedUp, fixedForward, movingDown, movingForward, jointAngle], length, arm }) => ({
      what: `ends turned by ${jointAngle} rad`,
      given: {
        fixedUp: metres(fixedUp as number),
        fixedForward: metres(fixedForward as number),
        movingDown: metres(movingDown as number),
        movingForward: metres(movingForward as number),
        jointAngle: [jointAngle as number, 'rad'],
      } as const,
      gives: { length: printed(length, 'mm'), arm: printed(arm, 'mm') },
      source: { level: 'computed', where: 'turned points, length by differences (tests/oracles/structures-springs.py)' } as const,
    })),
  ),
  ...published(
    springOverTravel,
    ...springs.travel.map(({ given: [fixedUp, fixedForward, movingDown, movingForward, from, to], shortest, longest }) => ({
      what: `searched from ${from} to ${to} rad`,
      given: {
        fixedUp: metres(fixedUp as number),
        fixedForward: metres(fixedForward as number),
        movingDown: metres(movingDown as number),
        movingForward: metres(movingForward as number),
        from: [from as number, 'rad'],
        to: [to as number, 'rad'],
      } as const,
      gives: { shortest: printed(shortest, 'mm'), longest: printed(longest, 'mm') },
      source: { level: 'computed', where: 'search over the travel (tests/oracles/structures-springs.py)' } as const,
    })),
  ),
]
