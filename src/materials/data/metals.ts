import {
  ALLOY_STEEL_SHEETS,
  ALUMINIUM_SHEET,
  ALUMINIUM_WARM,
  BOLTS_WARM,
  BRASS_SHEETS,
  DOWLING,
  EMISSIVITY_TABLES,
  FRICTION_MEMORY,
  INCROPERA,
  ISO_898,
  METALS_HANDBOOK,
  METALS_STANDARD,
  PHILPOT,
  SPRING_WIRE_PAGE,
  STAINLESS_SHEETS,
  STAINLESS_WARM,
} from '../sources.js'
import { tableMaterial } from '../table-material.js'
import type { TemperatureCurve } from '../temperature-curve.js'
import { METAL_EMISSIVITY } from './shared.js'

const STEEL_STRENGTH: TemperatureCurve = {
  points: [
    [23, 1, 1, 1],
    [100, 0.9, 0.925, 0.98],
    [200, 0.81, 0.84, 0.94],
    [250, 0.77, 0.795, 0.9],
  ],
  source: BOLTS_WARM,
  conditions: 'yield of quenched and tempered bolts; not used above 250 °C here',
}
const STEEL_STIFFNESS: TemperatureCurve = {
  points: [
    [23, 1, 1, 1],
    [100, 0.96, 0.98, 1],
    [200, 0.92, 0.95, 0.98],
    [250, 0.89, 0.925, 0.96],
  ],
  source: METALS_HANDBOOK,
  conditions: 'ferritic steel; not used above 250 °C here',
}
const STAINLESS_STRENGTH: TemperatureCurve = {
  points: [
    [23, 1, 1, 1],
    [100, 0.72, 0.77, 0.85],
    [150, 0.65, 0.7, 0.78],
    [200, 0.58, 0.63, 0.72],
    [250, 0.53, 0.58, 0.67],
  ],
  source: STAINLESS_WARM,
  conditions: 'yield of annealed austenitic steel: a quarter is lost at 100 °C',
}
const STAINLESS_STIFFNESS: TemperatureCurve = {
  points: [
    [23, 1, 1, 1],
    [100, 0.95, 0.97, 0.99],
    [200, 0.91, 0.93, 0.96],
    [250, 0.88, 0.91, 0.94],
  ],
  source: STAINLESS_WARM,
  conditions: 'austenitic steel; not used above 250 °C here',
}

/** Wrought aluminium alloy 6061, temper T6. */
export const aluminium6061T6 = /* @__PURE__ */ tableMaterial(
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
        [149, 0.7, 0.78, 0.9],
        [204, 0.3, 0.37, 0.65],
      ],
      source: ALUMINIUM_WARM,
      conditions: 'yield after long holding, the high end after minutes: above 150 °C the temper overages',
    },
    modulusCurve: {
      points: [
        [23, 1, 1, 1],
        [100, 0.95, 0.97, 0.99],
        [150, 0.9, 0.93, 0.96],
        [204, 0.81, 0.855, 0.9],
      ],
      source: ALUMINIUM_WARM,
      conditions: 'wrought aluminium',
    },
    remarks: ['has no endurance limit: the value is for 5e8 cycles; welding undoes the temper'],
  },
  {
    density: [2700, 2690, 2720, 'kg/m^3', ALUMINIUM_SHEET],
    modulus: [68.9, 68, 72, 'GPa', ALUMINIUM_SHEET],
    poissonRatio: [0.33, 0.32, 0.35, '1', PHILPOT],
    tensileStrength: [310, 290, 320, 'MPa', PHILPOT],
    yieldStrength: [276, 240, 290, 'MPa', PHILPOT, 'Rp0.2'],
    enduranceLimit: [97, 80, 110, 'MPa', ALUMINIUM_SHEET, 'rotating bending, polished, 5e8 cycles; the source gives 96.5'],
    serviceTemperature: [130, 100, 150, 'degC', METALS_HANDBOOK],
    meltingTemperature: [582, 575, 652, 'degC', ALUMINIUM_SHEET, 'solidus'],
    thermalConductivity: [167, 154, 172, 'W/(m K)', ALUMINIUM_SHEET, 'T4 154'],
    specificHeat: [896, 880, 910, 'J/(kg K)', ALUMINIUM_SHEET],
    thermalExpansion: [23.6, 23, 24.3, 'ppm/K', ALUMINIUM_SHEET, '20 to 100 °C'],
    emissivity: [0.09, 0.04, 0.2, '1', EMISSIVITY_TABLES, 'bare sheet; anodised 0.55 to 0.97'],
    frictionOnSteel: [0.4, 0.2, 0.6, '1', FRICTION_MEMORY, 'dry, static'],
  },
)

/** Stainless steel 304, annealed. */
export const stainless304 = /* @__PURE__ */ tableMaterial(
  {
    name: 'stainless 304',
    title: 'austenitic stainless steel 304 (1.4301), annealed',
    aliases: ['304', '1.4301', 'AISI 304', '18-8', 'A2'],
    family: 'metal',
    process: 'wrought',
    strengthCurve: STAINLESS_STRENGTH,
    modulusCurve: STAINLESS_STIFFNESS,
    remarks: ['galls on itself: grease threads and pins', 'screws of class 70 are cold worked: 700 and 450 MPa'],
  },
  {
    density: [8000, 7900, 8030, 'kg/m^3', STAINLESS_SHEETS],
    modulus: [193, 190, 200, 'GPa', PHILPOT],
    poissonRatio: [0.29, 0.28, 0.31, '1', DOWLING, 'the source gives 0.283 for a close grade'],
    tensileStrength: [515, 500, 620, 'MPa', STAINLESS_SHEETS, 'minimum of the annealed grade; typical 505 to 600'],
    yieldStrength: [205, 190, 310, 'MPa', STAINLESS_SHEETS, 'Rp0.2, minimum; typical 215 to 310'],
    enduranceLimit: [240, 200, 270, 'MPa', STAINLESS_SHEETS, 'rotating bending, polished'],
    serviceTemperature: [250, 200, 800, 'degC', METALS_HANDBOOK],
    meltingTemperature: [1400, 1390, 1455, 'degC', STAINLESS_SHEETS, 'solidus'],
    thermalConductivity: [16.2, 14.9, 16.5, 'W/(m K)', STAINLESS_SHEETS],
    specificHeat: [500, 470, 510, 'J/(kg K)', STAINLESS_SHEETS],
    thermalExpansion: [17.3, 16.5, 17.8, 'ppm/K', STAINLESS_SHEETS, '0 to 100 °C'],
    emissivity: [0.2, 0.1, 0.6, '1', EMISSIVITY_TABLES, 'bare; 0.5 to 0.7 after heating'],
  },
)

/** Stainless steel 316, annealed. */
export const stainless316 = /* @__PURE__ */ tableMaterial(
  {
    name: 'stainless 316',
    title: 'austenitic stainless steel 316 (1.4401), annealed',
    aliases: ['316', '1.4401', 'AISI 316', 'A4'],
    family: 'metal',
    process: 'wrought',
    strengthCurve: STAINLESS_STRENGTH,
    modulusCurve: STAINLESS_STIFFNESS,
    remarks: ['galls on itself: grease threads and pins', 'screws of class 70 are cold worked: 700 and 450 MPa'],
  },
  {
    density: [8000, 7900, 8240, 'kg/m^3', INCROPERA, 'the source prints 8238'],
    modulus: [193, 187, 200, 'GPa', STAINLESS_SHEETS],
    poissonRatio: [0.29, 0.26, 0.31, '1', METALS_HANDBOOK],
    tensileStrength: [515, 500, 620, 'MPa', STAINLESS_SHEETS, 'minimum of the annealed grade'],
    yieldStrength: [205, 200, 290, 'MPa', STAINLESS_SHEETS, 'Rp0.2, minimum'],
    enduranceLimit: [240, 200, 270, 'MPa', METALS_HANDBOOK, 'rotating bending, polished'],
    serviceTemperature: [250, 200, 800, 'degC', METALS_HANDBOOK],
    meltingTemperature: [1375, 1370, 1440, 'degC', STAINLESS_SHEETS, 'solidus'],
    thermalConductivity: [14.6, 13.4, 16.3, 'W/(m K)', INCROPERA, 'the source gives 13.4 at 300 K, handbooks 16.3'],
    specificHeat: [480, 465, 510, 'J/(kg K)', INCROPERA, 'the source gives 468'],
    thermalExpansion: [16.5, 15.5, 17.5, 'ppm/K', STAINLESS_SHEETS, '20 to 100 °C: the sources give 16.5 to 17.5, handbooks 15.9'],
    emissivity: [0.2, 0.1, 0.6, '1', EMISSIVITY_TABLES, 'bare; 0.5 to 0.7 after heating'],
  },
)

/** Alloy steel of bolts, property class 8.8. */
export const steel88 = /* @__PURE__ */ tableMaterial(
  {
    name: 'steel 8.8',
    title: 'quenched and tempered bolt steel, property class 8.8, up to M16',
    aliases: ['8.8', 'class 8.8'],
    family: 'metal',
    process: 'wrought',
    strengthCurve: STEEL_STRENGTH,
    modulusCurve: STEEL_STIFFNESS,
  },
  {
    density: [7850, 7800, 7870, 'kg/m^3', ALLOY_STEEL_SHEETS],
    modulus: [207, 200, 212, 'GPa', PHILPOT],
    poissonRatio: [0.29, 0.28, 0.3, '1', DOWLING],
    tensileStrength: [800, 800, 930, 'MPa', ISO_898, 'minimum'],
    yieldStrength: [640, 640, 760, 'MPa', ISO_898, 'Rp0.2, minimum'],
    proofStress: [580, 580, 600, 'MPa', ISO_898],
    serviceTemperature: [150, 120, 300, 'degC', METALS_HANDBOOK],
    thermalConductivity: [48, 42, 52, 'W/(m K)', METALS_HANDBOOK],
    specificHeat: [475, 450, 490, 'J/(kg K)', ALLOY_STEEL_SHEETS],
    thermalExpansion: [11.9, 11.3, 12.4, 'ppm/K', ALLOY_STEEL_SHEETS, 'the source gives 12.3'],
    emissivity: METAL_EMISSIVITY,
  },
)

/** Alloy steel of bolts, property class 10.9. */
export const steel109 = /* @__PURE__ */ tableMaterial(
  {
    name: 'steel 10.9',
    title: 'quenched and tempered bolt steel, property class 10.9',
    aliases: ['10.9', 'class 10.9'],
    family: 'metal',
    process: 'wrought',
    strengthCurve: STEEL_STRENGTH,
    modulusCurve: STEEL_STIFFNESS,
  },
  {
    density: [7850, 7800, 7870, 'kg/m^3', ALLOY_STEEL_SHEETS],
    modulus: [207, 200, 212, 'GPa', PHILPOT],
    poissonRatio: [0.29, 0.28, 0.3, '1', DOWLING],
    tensileStrength: [1040, 1040, 1160, 'MPa', ISO_898, 'minimum'],
    yieldStrength: [940, 940, 1040, 'MPa', ISO_898, 'Rp0.2, minimum'],
    proofStress: [830, 830, 830, 'MPa', ISO_898],
    serviceTemperature: [150, 120, 300, 'degC', METALS_HANDBOOK],
    thermalConductivity: [44, 38, 50, 'W/(m K)', ALLOY_STEEL_SHEETS, 'of the alloy grade; boron steels conduct more'],
    specificHeat: [475, 450, 490, 'J/(kg K)', ALLOY_STEEL_SHEETS],
    thermalExpansion: [11.9, 11.3, 12.4, 'ppm/K', ALLOY_STEEL_SHEETS, 'the source gives 12.3'],
    emissivity: METAL_EMISSIVITY,
  },
)

/** Alloy steel of bolts, property class 12.9. */
export const steel129 = /* @__PURE__ */ tableMaterial(
  {
    name: 'steel 12.9',
    title: 'quenched and tempered bolt steel, property class 12.9',
    aliases: ['12.9', 'class 12.9', 'alloy steel', 'hardened steel'],
    family: 'metal',
    process: 'wrought',
    strengthCurve: STEEL_STRENGTH,
    modulusCurve: STEEL_STIFFNESS,
    remarks: ['plating it risks hydrogen embrittlement; drilling it risks tempering'],
  },
  {
    density: [7850, 7800, 7870, 'kg/m^3', ALLOY_STEEL_SHEETS],
    modulus: [207, 203, 212, 'GPa', PHILPOT],
    poissonRatio: [0.29, 0.28, 0.3, '1', DOWLING],
    tensileStrength: [1220, 1220, 1350, 'MPa', ISO_898, 'minimum'],
    yieldStrength: [1100, 1100, 1200, 'MPa', ISO_898, 'Rp0.2, minimum'],
    proofStress: [970, 970, 970, 'MPa', ISO_898],
    serviceTemperature: [150, 120, 300, 'degC', METALS_HANDBOOK],
    thermalConductivity: [43, 38, 48, 'W/(m K)', ALLOY_STEEL_SHEETS],
    specificHeat: [475, 450, 490, 'J/(kg K)', ALLOY_STEEL_SHEETS],
    thermalExpansion: [11.9, 11.3, 12.4, 'ppm/K', ALLOY_STEEL_SHEETS, 'the source gives 12.3'],
    emissivity: METAL_EMISSIVITY,
  },
)

/** Patented cold-drawn spring wire, about 2 mm. */
export const springSteel = /* @__PURE__ */ tableMaterial(
  {
    name: 'spring steel',
    title: 'patented cold-drawn spring wire, about 2 mm',
    aliases: ['music wire', 'piano wire', 'spring wire'],
    family: 'metal',
    process: 'wrought',
    strengthCurve: STEEL_STRENGTH,
    modulusCurve: STEEL_STIFFNESS,
    remarks: ['strength grows as the wire thins: take the wire at hand from its standard'],
  },
  {
    density: [7850, 7800, 7870, 'kg/m^3', SPRING_WIRE_PAGE],
    modulus: [206, 200, 210, 'GPa', SPRING_WIRE_PAGE],
    poissonRatio: [0.29, 0.28, 0.3, '1', DOWLING],
    tensileStrength: [1870, 1600, 2200, 'MPa', SPRING_WIRE_PAGE, '2 mm wire; class SM 1760 to 1970, SH above, SL below'],
    yieldStrength: [1500, 1200, 1800, 'MPa', METALS_STANDARD, 'about 0.8 of tensile'],
    serviceTemperature: [100, 80, 120, 'degC', SPRING_WIRE_PAGE, 'relaxation above'],
    thermalConductivity: [47, 42, 52, 'W/(m K)', METALS_HANDBOOK],
    specificHeat: [475, 450, 490, 'J/(kg K)', ALLOY_STEEL_SHEETS],
    thermalExpansion: [11.7, 11, 12.3, 'ppm/K', METALS_HANDBOOK],
    emissivity: METAL_EMISSIVITY,
  },
)

/** Free-machining brass CuZn39Pb3. */
export const brass = /* @__PURE__ */ tableMaterial(
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
    modulusCurve: {
      points: [
        [23, 1, 1, 1],
        [100, 0.94, 0.965, 0.99],
        [200, 0.87, 0.92, 0.96],
      ],
      source: METALS_HANDBOOK,
      conditions: 'short-term',
    },
  },
  {
    density: [8450, 8400, 8530, 'kg/m^3', BRASS_SHEETS, 'the source gives 8410 to 8440, 70-30 brass 8530'],
    modulus: [100, 96, 105, 'GPa', DOWLING, '70-30 brass 101'],
    poissonRatio: [0.34, 0.33, 0.36, '1', DOWLING, '70-30 brass 0.350'],
    tensileStrength: [400, 340, 470, 'MPa', BRASS_SHEETS, 'by temper; R410 at least 410'],
    yieldStrength: [200, 140, 300, 'MPa', BRASS_SHEETS, 'Rp0.2, by temper; R410 at least 230'],
    serviceTemperature: [120, 100, 200, 'degC', METALS_HANDBOOK],
    thermalConductivity: [115, 109, 123, 'W/(m K)', INCROPERA, '70-30 brass 110'],
    specificHeat: [380, 370, 390, 'J/(kg K)', INCROPERA, '70-30 brass 380'],
    thermalExpansion: [20.5, 19.5, 21.2, 'ppm/K', BRASS_SHEETS],
    emissivity: [0.1, 0.03, 0.3, '1', EMISSIVITY_TABLES, 'bare'],
    frictionOnSteel: [0.35, 0.2, 0.5, '1', FRICTION_MEMORY, 'dry, static'],
  },
)
