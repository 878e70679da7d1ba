import { formula } from '../formula/index.js'

/** Kinds of spring wire. */
export const SPRING_WIRES = ['musicWire', 'hardDrawn', 'oilTempered', 'stainless'] as const

/** Tensile strength of a wire of one millimetre, Pa, the power of the diameter with which it falls, moduli and density. */
const WIRES = {
  musicWire: { strength: 2060e6, power: 0.163, modulus: 206e9, shearModulus: 81.5e9, density: 7850 },
  hardDrawn: { strength: 1510e6, power: 0.201, modulus: 206e9, shearModulus: 81.5e9, density: 7850 },
  oilTempered: { strength: 1610e6, power: 0.193, modulus: 206e9, shearModulus: 79.5e9, density: 7850 },
  stainless: { strength: 1867e6, power: 0.146, modulus: 180e9, shearModulus: 70e9, density: 7900 },
} as const

/** Least tensile strength of spring wire by its diameter, with its moduli and density. Thin wire is stronger. */
export const springWire = /* @__PURE__ */ formula('materials.springWire', {
  title: 'tensile strength of spring wire',
  inputs: {
    /** Kind of wire: music wire, hard-drawn, oil-tempered carbon steel, or stainless chromium-nickel steel (302, 1.4310). */
    wire: { oneOf: SPRING_WIRES },
    /** Diameter of the wire. */
    wireDiameter: { kind: 'length', above: 0 },
  },
  output: {
    /** Least tensile strength. */
    tensileStrength: 'stress',
    /** Modulus. */
    modulus: 'modulus',
    /** Shear modulus. */
    shearModulus: 'modulus',
    /** Density. */
    density: 'density',
  },
  assumes: ['as drawn and at room temperature', 'stress-relieved after coiling'],
  source: [
    {
      level: 'unverified',
      where: 'strength as A over a power of the diameter: a reference handbook for engineering examinations, read in two worked problems',
    },
    { level: 'unverified', where: 'hard-drawn: handbook for engineering examinations; stainless: Shigley, table of spring wires' },
    { level: 'unverified', where: 'printed design sheet of an extension spring to EN 13906-2: 180 and 70 GPa, 7.90 kg/dm³ of wire 1.4310' },
    { level: 'unverified', where: 'EN 13906-1: 206 and 81.5 GPa of drawn, 79.5 GPa of oil-tempered carbon steel' },
  ],
  valid: {
    'a wire of 0.3 to 10 mm': ({ wireDiameter }) => wireDiameter >= 0.3e-3 * (1 - 1e-9) && wireDiameter <= 10e-3 * (1 + 1e-9),
    'stainless wire up to 2.5 mm': ({ wire, wireDiameter }) => wire !== 'stainless' || wireDiameter <= 2.5e-3 * (1 + 1e-9),
  },
  si: ({ wire, wireDiameter }) => {
    const { strength, power, modulus, shearModulus, density } = WIRES[wire]
    return { tensileStrength: strength * (wireDiameter * 1e3) ** -power, modulus, shearModulus, density }
  },
})
