import { defineMaterial, type StrengthCurve } from '../record.js'
import {
  APPENDIX_E,
  DOWLING,
  EMISSIVITY_TABLES,
  FRICTION_MEMORY,
  INCROPERA,
  ISO_898,
  METALS_HANDBOOK,
  METALS_STANDARD,
  PHILPOT,
} from '../sources.js'
import { METAL_EMISSIVITY } from './shared.js'

const STEEL_CURVE: StrengthCurve = {
  points: [
    [23, 1, 1, 1],
    [150, 0.92, 0.97, 1],
    [250, 0.85, 0.92, 1],
  ],
  source: METALS_HANDBOOK,
  conditions: 'short-term; not used above 250 °C here',
}

/** Wrought aluminium alloy 6061, temper T6. */
export const aluminium6061T6 = /* @__PURE__ */ defineMaterial(
  {
    name: 'aluminium 6061-T6',
    title: 'wrought aluminium alloy 6061, temper T6',
    aliases: ['6061', '6061-T6', 'aluminum 6061-T6', 'aluminium', 'aluminum'],
    family: 'metal',
    process: 'wrought',
    strengthCurve: {
      points: [
        [23, 1, 1, 1],
        [100, 0.9, 0.95, 1],
        [150, 0.78, 0.86, 0.92],
        [200, 0.5, 0.65, 0.78],
      ],
      source: METALS_HANDBOOK,
      conditions: 'short-term; hours above 150 °C overage the temper',
    },
    remarks: ['has no endurance limit: the value is for 5e8 cycles; welding undoes the temper'],
  },
  {
    density: [2700, 2690, 2720, 'kg/m^3', APPENDIX_E, 'the source gives 2710'],
    modulus: [68.9, 68, 72, 'GPa', APPENDIX_E],
    poissonRatio: [0.33, 0.32, 0.35, '1', PHILPOT],
    tensileStrength: [310, 290, 320, 'MPa', PHILPOT],
    yieldStrength: [276, 240, 290, 'MPa', PHILPOT, 'Rp0.2'],
    enduranceLimit: [97, 80, 110, 'MPa', METALS_HANDBOOK, 'rotating bending, polished, 5e8 cycles'],
    serviceTemperature: [130, 100, 150, 'degC', METALS_HANDBOOK],
    meltingTemperature: [582, 575, 652, 'degC', METALS_HANDBOOK, 'solidus'],
    thermalConductivity: [167, 154, 172, 'W/(m K)', METALS_HANDBOOK],
    specificHeat: [896, 880, 910, 'J/(kg K)', METALS_HANDBOOK],
    thermalExpansion: [23.6, 23, 24.3, 'ppm/K', APPENDIX_E, 'the source gives 24'],
    emissivity: [0.09, 0.04, 0.2, '1', EMISSIVITY_TABLES, 'bare sheet; anodised 0.55 to 0.97'],
    frictionOnSteel: [0.4, 0.2, 0.6, '1', FRICTION_MEMORY, 'dry, static'],
  },
)

/** Stainless steel 304, annealed. */
export const stainless304 = /* @__PURE__ */ defineMaterial(
  {
    name: 'stainless 304',
    title: 'austenitic stainless steel 304 (1.4301), annealed',
    aliases: ['304', '1.4301', 'AISI 304', '18-8', 'A2'],
    family: 'metal',
    process: 'wrought',
    strengthCurve: STEEL_CURVE,
    remarks: ['galls on itself: grease threads and pins'],
  },
  {
    density: [8000, 7900, 8030, 'kg/m^3', METALS_HANDBOOK],
    modulus: [193, 190, 200, 'GPa', PHILPOT],
    poissonRatio: [0.29, 0.28, 0.31, '1', DOWLING, 'the source gives 0.283 for a close grade'],
    tensileStrength: [515, 500, 620, 'MPa', METALS_STANDARD, 'minimum of the annealed grade'],
    yieldStrength: [205, 190, 290, 'MPa', METALS_STANDARD, 'Rp0.2, minimum'],
    enduranceLimit: [240, 200, 270, 'MPa', METALS_HANDBOOK, 'rotating bending, polished'],
    serviceTemperature: [250, 200, 800, 'degC', METALS_HANDBOOK],
    thermalConductivity: [16.2, 14.9, 16.5, 'W/(m K)', METALS_HANDBOOK],
    specificHeat: [500, 470, 510, 'J/(kg K)', METALS_HANDBOOK],
    thermalExpansion: [17.3, 16.5, 17.8, 'ppm/K', METALS_HANDBOOK],
    emissivity: [0.2, 0.1, 0.6, '1', EMISSIVITY_TABLES, 'bare; 0.5 to 0.7 after heating'],
  },
)

/** Stainless steel 316, annealed. */
export const stainless316 = /* @__PURE__ */ defineMaterial(
  {
    name: 'stainless 316',
    title: 'austenitic stainless steel 316 (1.4401), annealed',
    aliases: ['316', '1.4401', 'AISI 316', 'A4'],
    family: 'metal',
    process: 'wrought',
    strengthCurve: STEEL_CURVE,
    remarks: ['galls on itself: grease threads and pins'],
  },
  {
    density: [8000, 7900, 8240, 'kg/m^3', INCROPERA, 'the source prints 8238'],
    modulus: [193, 190, 200, 'GPa', METALS_HANDBOOK],
    poissonRatio: [0.29, 0.27, 0.31, '1', METALS_HANDBOOK],
    tensileStrength: [515, 500, 620, 'MPa', METALS_STANDARD, 'minimum of the annealed grade'],
    yieldStrength: [205, 200, 290, 'MPa', METALS_STANDARD, 'Rp0.2, minimum'],
    enduranceLimit: [240, 200, 270, 'MPa', METALS_HANDBOOK, 'rotating bending, polished'],
    serviceTemperature: [250, 200, 800, 'degC', METALS_HANDBOOK],
    thermalConductivity: [14.6, 13.4, 16.3, 'W/(m K)', INCROPERA, 'the source gives 13.4 at 300 K, handbooks 16.3'],
    specificHeat: [480, 465, 510, 'J/(kg K)', INCROPERA, 'the source gives 468'],
    thermalExpansion: [15.9, 15.5, 17, 'ppm/K', METALS_HANDBOOK],
    emissivity: [0.2, 0.1, 0.6, '1', EMISSIVITY_TABLES, 'bare; 0.5 to 0.7 after heating'],
  },
)

/** Alloy steel of bolts, property class 8.8. */
export const steel88 = /* @__PURE__ */ defineMaterial(
  {
    name: 'steel 8.8',
    title: 'quenched and tempered bolt steel, property class 8.8, up to M16',
    aliases: ['8.8', 'class 8.8'],
    family: 'metal',
    process: 'wrought',
    strengthCurve: STEEL_CURVE,
  },
  {
    density: [7850, 7800, 7870, 'kg/m^3', METALS_HANDBOOK],
    modulus: [207, 200, 212, 'GPa', PHILPOT],
    poissonRatio: [0.29, 0.28, 0.3, '1', DOWLING],
    tensileStrength: [800, 800, 930, 'MPa', ISO_898, 'minimum'],
    yieldStrength: [640, 640, 760, 'MPa', ISO_898, 'Rp0.2, minimum'],
    proofStress: [580, 580, 600, 'MPa', ISO_898],
    serviceTemperature: [150, 120, 300, 'degC', METALS_HANDBOOK],
    thermalConductivity: [48, 42, 52, 'W/(m K)', METALS_HANDBOOK],
    specificHeat: [475, 450, 490, 'J/(kg K)', METALS_HANDBOOK],
    thermalExpansion: [11.9, 11.3, 12.3, 'ppm/K', METALS_HANDBOOK],
    emissivity: METAL_EMISSIVITY,
  },
)

/** Alloy steel of bolts, property class 10.9. */
export const steel109 = /* @__PURE__ */ defineMaterial(
  {
    name: 'steel 10.9',
    title: 'quenched and tempered bolt steel, property class 10.9',
    aliases: ['10.9', 'class 10.9'],
    family: 'metal',
    process: 'wrought',
    strengthCurve: STEEL_CURVE,
  },
  {
    density: [7850, 7800, 7870, 'kg/m^3', METALS_HANDBOOK],
    modulus: [207, 200, 212, 'GPa', PHILPOT],
    poissonRatio: [0.29, 0.28, 0.3, '1', DOWLING],
    tensileStrength: [1040, 1040, 1160, 'MPa', ISO_898, 'minimum'],
    yieldStrength: [940, 940, 1040, 'MPa', ISO_898, 'Rp0.2, minimum'],
    proofStress: [830, 830, 830, 'MPa', ISO_898],
    serviceTemperature: [150, 120, 300, 'degC', METALS_HANDBOOK],
    thermalConductivity: [45, 40, 50, 'W/(m K)', METALS_HANDBOOK],
    specificHeat: [475, 450, 490, 'J/(kg K)', METALS_HANDBOOK],
    thermalExpansion: [11.9, 11.3, 12.3, 'ppm/K', METALS_HANDBOOK],
    emissivity: METAL_EMISSIVITY,
  },
)

/** Alloy steel of bolts, property class 12.9. */
export const steel129 = /* @__PURE__ */ defineMaterial(
  {
    name: 'steel 12.9',
    title: 'quenched and tempered bolt steel, property class 12.9',
    aliases: ['12.9', 'class 12.9', 'alloy steel', 'hardened steel'],
    family: 'metal',
    process: 'wrought',
    strengthCurve: STEEL_CURVE,
    remarks: ['plating it risks hydrogen embrittlement; drilling it risks tempering'],
  },
  {
    density: [7850, 7800, 7870, 'kg/m^3', METALS_HANDBOOK],
    modulus: [207, 203, 212, 'GPa', PHILPOT],
    poissonRatio: [0.29, 0.28, 0.3, '1', DOWLING],
    tensileStrength: [1220, 1220, 1350, 'MPa', ISO_898, 'minimum'],
    yieldStrength: [1100, 1100, 1200, 'MPa', ISO_898, 'Rp0.2, minimum'],
    proofStress: [970, 970, 970, 'MPa', ISO_898],
    serviceTemperature: [150, 120, 300, 'degC', METALS_HANDBOOK],
    thermalConductivity: [43, 38, 48, 'W/(m K)', METALS_HANDBOOK],
    specificHeat: [475, 450, 490, 'J/(kg K)', METALS_HANDBOOK],
    thermalExpansion: [11.9, 11.3, 12.3, 'ppm/K', METALS_HANDBOOK],
    emissivity: METAL_EMISSIVITY,
  },
)

/** Patented cold-drawn spring wire, about 2 mm. */
export const springSteel = /* @__PURE__ */ defineMaterial(
  {
    name: 'spring steel',
    title: 'patented cold-drawn spring wire, about 2 mm',
    aliases: ['music wire', 'piano wire', 'spring wire'],
    family: 'metal',
    process: 'wrought',
    strengthCurve: STEEL_CURVE,
    remarks: ['strength grows as the wire thins: take the wire at hand from its standard'],
  },
  {
    density: [7850, 7800, 7870, 'kg/m^3', METALS_HANDBOOK],
    modulus: [206, 200, 210, 'GPa', METALS_STANDARD],
    poissonRatio: [0.29, 0.28, 0.3, '1', DOWLING],
    tensileStrength: [1900, 1600, 2200, 'MPa', METALS_STANDARD, '2 mm wire'],
    yieldStrength: [1500, 1200, 1800, 'MPa', METALS_STANDARD, 'about 0.8 of tensile'],
    serviceTemperature: [100, 80, 120, 'degC', METALS_STANDARD, 'relaxation above'],
    thermalConductivity: [47, 42, 52, 'W/(m K)', METALS_HANDBOOK],
    specificHeat: [475, 450, 490, 'J/(kg K)', METALS_HANDBOOK],
    thermalExpansion: [11.7, 11, 12.3, 'ppm/K', METALS_HANDBOOK],
    emissivity: METAL_EMISSIVITY,
  },
)

/** Free-machining brass CuZn39Pb3. */
export const brass = /* @__PURE__ */ defineMaterial(
  {
    name: 'brass',
    title: 'free-machining brass CuZn39Pb3',
    aliases: ['CuZn39Pb3', 'CW614N'],
    family: 'metal',
    process: 'wrought',
    strengthCurve: {
      points: [
        [23, 1, 1, 1],
        [100, 0.9, 0.95, 1],
        [200, 0.65, 0.8, 0.9],
      ],
      source: METALS_HANDBOOK,
      conditions: 'short-term',
    },
  },
  {
    density: [8470, 8400, 8530, 'kg/m^3', INCROPERA, '70-30 brass 8530'],
    modulus: [100, 96, 105, 'GPa', DOWLING, '70-30 brass 101'],
    poissonRatio: [0.34, 0.33, 0.36, '1', DOWLING, '70-30 brass 0.350'],
    tensileStrength: [400, 340, 470, 'MPa', METALS_STANDARD, 'by temper'],
    yieldStrength: [200, 140, 300, 'MPa', METALS_STANDARD, 'Rp0.2, by temper'],
    serviceTemperature: [120, 100, 200, 'degC', METALS_HANDBOOK],
    thermalConductivity: [115, 109, 123, 'W/(m K)', INCROPERA, '70-30 brass 110'],
    specificHeat: [380, 370, 390, 'J/(kg K)', INCROPERA, '70-30 brass 380'],
    thermalExpansion: [20.5, 19.5, 21.2, 'ppm/K', METALS_HANDBOOK],
    emissivity: [0.1, 0.03, 0.3, '1', EMISSIVITY_TABLES, 'bare'],
    frictionOnSteel: [0.35, 0.2, 0.5, '1', FRICTION_MEMORY, 'dry, static'],
  },
)
