import type { MaterialHead } from '../record.js'
import {
  CRANK,
  CRAWFORD_FILLED,
  CRC_POLYESTER,
  FAUST,
  FILLED_AS_BASE,
  FLAT_AND_UPRIGHT,
  FRICTION_MEMORY,
  GUARDED_PLATE,
  MAKERS_ROWS,
  MAKERS_UPRIGHT,
  MAKERS_WET,
  MIX_CARBON,
  MIX_GLASS,
  MOULDING_SHEETS,
  PA6_GLASS_DAMP,
  PA6_GLASS_SHEET,
  PA6_GLASS_SOAKED,
  PRINT_ASSUMED,
  PRINT_SHEET_ROWS,
  PRINT_SHEETS,
  SWELLING_OF_FILLED,
  UNFILLED_LIMIT,
} from '../sources.js'
import { tableMaterial } from '../table-material.js'
import {
  AMORPHOUS_1_YEAR,
  AMORPHOUS_1000_HOURS,
  CRYSTALLINE_1_YEAR,
  CRYSTALLINE_1000_HOURS,
  CRYSTALLINE_ACTIVATION,
  EXPANSION_BY_FIBRES,
  FIBRE_STRAIN_LIMIT,
  FILLED_SWELLING,
  FLAT_FIBRES,
  GLASSY_ACTIVATION,
  GREASED_FRICTION,
  HARDLY_WET_SATURATED,
  HARDLY_WET_STRENGTH,
  LAYER_SHEAR_RATIO,
  PLASTIC_DIFFUSIVITY,
  PLASTIC_EMISSIVITY,
  POLYMER_FATIGUE,
} from './shared.js'

// Printed polymers with short fibres. The fibres lie along the roads and do not cross the layers: flat bars gain, upright bars lose.

const REMARKS = [
  'stiff along the roads, weak across layers: bars from one spool and two printers differ twofold; test upright coupons of your own',
  'density, strength, stiffness, layers and softening were read, heat and water are calculated from fibre and polymer; creep and fatigue are assumed from the unfilled polymer',
] as const

/** Two records as one. A call that is marked pure lets a bundler leave out the rows that nobody uses; a spread does not. */
const joined = <const A extends object, const B extends object>(one: A, other: B): Omit<A, keyof B> & B => ({ ...one, ...other })

/** What a material is, with what is remarked of it beyond the common remarks. */
const head = (
  name: string,
  title: string,
  { remark, ...more }: Pick<MaterialHead, 'family'> & Partial<MaterialHead> & { readonly remark?: string },
): MaterialHead => ({
  name,
  title: `${title}, fused filament, solid, not annealed`,
  aliases: [],
  process: 'fusedFilament',
  remarks: remark === undefined ? REMARKS : [...REMARKS, remark],
  ...more,
})

/** Rows that every filled glass shares. */
const GLASS = {
  interlayerShearRatio: LAYER_SHEAR_RATIO,
  strainLimit: FIBRE_STRAIN_LIMIT,
  strengthKept1000Hours: AMORPHOUS_1000_HOURS,
  strengthKept1Year: AMORPHOUS_1_YEAR,
  activationEnergy: GLASSY_ACTIVATION,
  fatigueRatio: POLYMER_FATIGUE,
  emissivity: PLASTIC_EMISSIVITY,
  moistureDiffusivity: PLASTIC_DIFFUSIVITY,
  moistureSwelling: FILLED_SWELLING,
  modulusConditionedRatio: HARDLY_WET_STRENGTH,
  strengthConditionedRatio: HARDLY_WET_STRENGTH,
  modulusSaturatedRatio: HARDLY_WET_SATURATED,
  strengthSaturatedRatio: HARDLY_WET_SATURATED,
  frictionOnSteel: [0.35, 0.1, 0.5, '1', FRICTION_MEMORY, 'dry; fibres wear the shaft'],
  frictionOnSteelGreased: GREASED_FRICTION,
} as const

const ABS_FILLED = /* @__PURE__ */ joined(GLASS, {
  creepCoefficient: [0.1, 0.04, 0.2, '1', PRINT_ASSUMED, '23 °C, along the roads; fibres slow it'],
  creepExponent: [0.27, 0.18, 0.35, '1', PRINT_ASSUMED, '23 °C'],
  serviceTemperature: [75, 70, 100, 'degC', UNFILLED_LIMIT],
})

const ASA_FILLED = /* @__PURE__ */ joined(GLASS, {
  creepExponent: [0.27, 0.2, 0.35, '1', FILLED_AS_BASE, '23 °C'],
  serviceTemperature: [80, 70, 92, 'degC', PRINT_ASSUMED, 'as the unfilled polymer'],
})

const POLYESTER = /* @__PURE__ */ joined(GLASS, {
  creepCoefficient: [0.1, 0.03, 0.2, '1', PRINT_ASSUMED, '23 °C, along the roads'],
  creepExponent: [0.22, 0.12, 0.3, '1', PRINT_ASSUMED, '23 °C'],
})

/** ABS with short carbon fibre, printed from filament. */
export const absCf = /* @__PURE__ */ tableMaterial(
  /* @__PURE__ */ head('ABS-CF', 'ABS with short carbon fibre', { family: 'amorphous' }),
  /* @__PURE__ */ joined(ABS_FILLED, {
    density: [1085, 1050, 1110, 'kg/m^3', PRINT_SHEETS, '10 products: quartiles 1062, 1085 and 1100'],
    modulus: [4.1, 2.7, 5.2, 'GPa', PRINT_SHEETS, '3 products: 2.7 to 5.2'],
    tensileStrength: [40, 27, 46, 'MPa', PRINT_SHEETS, '3 products: 27, 29 and 46; an independent set 44.1 ± 1.0'],
    acrossLayersRatio: [0.3, 0.2, 0.6, '1', FLAT_AND_UPRIGHT, 'one independent set, 12.1 ± 2.9 over 44.1 MPa'],
    glassTransitionTemperature: [105, 101, 108, 'degC', PRINT_SHEETS, '3 products: 104 to 105'],
    heatDeflectionTemperature045: [83, 76, 95, 'degC', PRINT_SHEETS, '3 products: 76, 78 and 95'],
    poissonRatio: [0.34, 0.32, 0.38, '1', MIX_CARBON],
    specificHeat: [1220, 1120, 1430, 'J/(kg K)', MIX_CARBON, '15 % of fibre'],
    thermalConductivity: [0.41, 0.2, 1.2, 'W/(m K)', MIX_CARBON, 'along the roads; 15 % of fibre, harmonic mean of the two bounds'],
    thermalExpansion: [17, 4, 75, 'ppm/K', MIX_CARBON, EXPANSION_BY_FIBRES],
    moistureSaturated: [0.64, 0.24, 0.9, '%', MIX_CARBON, 'the polymer alone takes up water'],
    thermalConductivityAcrossLayers: [0.17, 0.085, 0.32, 'W/(m K)', MIX_CARBON, FLAT_FIBRES],
    modulusAcrossLayers: [2.2, 1.5, 2.8, 'GPa', MIX_CARBON, 'across the fibres; the same relation gives ABS-GF 2.25, as a maker does'],
    moistureConditioned: [0.3, 0.16, 0.58, '%', MIX_CARBON, 'the polymer alone takes up water'],
  }),
)

/** ABS with short glass fibre, printed from filament. */
export const absGf = /* @__PURE__ */ tableMaterial(
  /* @__PURE__ */ head('ABS-GF', 'ABS with short glass fibre', { family: 'amorphous' }),
  /* @__PURE__ */ joined(ABS_FILLED, {
    density: [1095, 1040, 1140, 'kg/m^3', PRINT_SHEETS, '12 products: quartiles 1080, 1100 and 1112'],
    modulus: [3.1, 1.8, 4.2, 'GPa', PRINT_SHEETS, '5 products: quartiles 2.1, 3.2 and 3.8'],
    tensileStrength: [47, 36, 62, 'MPa', PRINT_SHEETS, '7 products: quartiles 37, 46 and 52; an independent set 48.7 ± 2.0'],
    acrossLayersRatio: [0.4, 0.22, 0.65, '1', FLAT_AND_UPRIGHT, 'one independent set, 11.9 ± 2.7 over 48.7 MPa; two makers 30 MPa upright'],
    glassTransitionTemperature: [104, 100, 108, 'degC', PRINT_SHEETS, '5 products: quartiles 103, 104 and 105'],
    heatDeflectionTemperature045: [93, 83, 100, 'degC', PRINT_SHEETS, '8 products: quartiles 88, 93 and 98'],
    modulusAcrossLayers: [2.2, 1.3, 2.9, 'GPa', MAKERS_UPRIGHT, 'one maker 2.25 upright over 3.16 GPa'],
    moistureConditioned: [0.5, 0.25, 0.65, '%', MAKERS_ROWS, 'the sheet gives 0.53 at 55 % humidity'],
    poissonRatio: [0.34, 0.32, 0.39, '1', MIX_GLASS],
    specificHeat: [1240, 1090, 1470, 'J/(kg K)', MIX_GLASS, '12 % of fibre'],
    thermalConductivity: [0.23, 0.18, 0.25, 'W/(m K)', MIX_GLASS, 'along the roads; 12 % of fibre, harmonic mean of the two bounds'],
    thermalExpansion: [46, 15, 100, 'ppm/K', MIX_GLASS, EXPANSION_BY_FIBRES],
    moistureSaturated: [0.66, 0.27, 0.95, '%', MIX_GLASS, 'the polymer alone takes up water; low end above what a sheet has in damp air'],
    thermalConductivityAcrossLayers: [0.15, 0.085, 0.27, 'W/(m K)', MIX_GLASS, FLAT_FIBRES],
  }),
)

/** ASA with short carbon fibre, printed from filament. */
export const asaCf = /* @__PURE__ */ tableMaterial(
  /* @__PURE__ */ head('ASA-CF', 'ASA with short carbon fibre', { family: 'amorphous' }),
  /* @__PURE__ */ joined(ASA_FILLED, {
    density: [1095, 1030, 1150, 'kg/m^3', PRINT_SHEETS, '14 products: quartiles 1072, 1095 and 1118'],
    modulus: [3.9, 1.4, 5.3, 'GPa', PRINT_SHEETS, '6 products: quartiles 2.4, 3.9 and 4.4'],
    tensileStrength: [43, 34, 50, 'MPa', PRINT_SHEETS, '6 products: quartiles 39, 41 and 47; an independent set 49.6 ± 0.5'],
    acrossLayersRatio: [0.4, 0.1, 0.75, '1', FLAT_AND_UPRIGHT, 'independent set 6.2 (3.7 to 9.1) over 49.6 MPa; 3 makers 25 to 31 upright'],
    glassTransitionTemperature: [105, 100, 108, 'degC', PRINT_SHEETS, '2 products: 105 and 107'],
    heatDeflectionTemperature045: [100, 87, 109, 'degC', PRINT_SHEETS, '7 products: quartiles 92, 100 and 102'],
    modulusAcrossLayers: [2.1, 1.0, 2.8, 'GPa', MAKERS_UPRIGHT, 'two makers 2.29 upright over 4.20 and 1.90 over 3.61 GPa'],
    moistureConditioned: [0.35, 0.25, 0.42, '%', MAKERS_ROWS, 'the sheets give 0.33 at 55 % and 0.37 at 70 % humidity'],
    poissonRatio: [0.34, 0.32, 0.4, '1', MIX_CARBON],
    specificHeat: [1220, 1120, 1430, 'J/(kg K)', MIX_CARBON, '15 % of fibre'],
    thermalConductivity: [0.37, 0.18, 1.2, 'W/(m K)', MIX_CARBON, 'along the roads; 15 % of fibre, harmonic mean of the two bounds'],
    thermalExpansion: [18, 4.1, 110, 'ppm/K', MIX_CARBON, EXPANSION_BY_FIBRES],
    moistureSaturated: [1.1, 0.56, 1.6, '%', MIX_CARBON, 'the polymer alone takes up water'],
    thermalConductivityAcrossLayers: [0.15, 0.075, 0.26, 'W/(m K)', MIX_CARBON, FLAT_FIBRES],
    creepCoefficient: [0.115, 0.04, 0.22, '1', FILLED_AS_BASE, '23 °C, along the roads'],
  }),
)

/** ASA with short glass fibre, printed from filament. */
export const asaGf = /* @__PURE__ */ tableMaterial(
  /* @__PURE__ */ head('ASA-GF', 'ASA with short glass fibre', { family: 'amorphous' }),
  /* @__PURE__ */ joined(ASA_FILLED, {
    density: [1150, 1110, 1170, 'kg/m^3', PRINT_SHEETS, '5 products: 1110 to 1170'],
    modulus: [2.5, 1.8, 3.5, 'GPa', PRINT_SHEETS, '2 products: 1.9 and 2.8'],
    tensileStrength: [48, 34, 59, 'MPa', PRINT_SHEETS, '3 products: 34, 39 and 41; three independent sets 53, 57 and 58'],
    acrossLayersRatio: [0.37, 0.24, 0.72, '1', FLAT_AND_UPRIGHT, 'three independent sets 0.26, 0.35 and 0.37; one maker 28 over 39 MPa'],
    glassTransitionTemperature: [104, 98, 108, 'degC', PRINT_SHEETS, '1 product: 104; unfilled 96 to 108'],
    heatDeflectionTemperature045: [90, 86, 98, 'degC', PRINT_SHEETS, '3 products: 86, 88 and 98'],
    poissonRatio: [0.35, 0.32, 0.4, '1', MIX_GLASS],
    specificHeat: [1230, 1090, 1430, 'J/(kg K)', MIX_GLASS, '15 % of fibre'],
    thermalConductivity: [0.22, 0.16, 0.25, 'W/(m K)', MIX_GLASS, 'along the roads; 15 % of fibre, harmonic mean of the two bounds'],
    thermalExpansion: [48, 15, 110, 'ppm/K', MIX_GLASS, EXPANSION_BY_FIBRES],
    moistureSaturated: [1.1, 0.49, 1.6, '%', MIX_GLASS, 'the polymer alone takes up water'],
    thermalConductivityAcrossLayers: [0.14, 0.075, 0.23, 'W/(m K)', MIX_GLASS, FLAT_FIBRES],
    modulusAcrossLayers: [2.1, 1.2, 2.8, 'GPa', MIX_GLASS, 'across the fibres; the same relation gives ABS-GF 2.25, as a maker does'],
    moistureConditioned: [0.32, 0.2, 0.42, '%', MIX_GLASS, 'the polymer alone takes up water'],
    creepCoefficient: [0.138, 0.06, 0.22, '1', FILLED_AS_BASE, '23 °C, along the roads'],
  }),
)

/** PET with short carbon fibre, printed from filament; as printed it is a glass. */
export const petCf = /* @__PURE__ */ tableMaterial(
  /* @__PURE__ */ head('PET-CF', 'PET with short carbon fibre', {
    family: 'amorphous',
    remark: 'as printed it is glassy and softens at its transition; annealed it crystallises and deflects at 180 to 205 °C',
  }),
  /* @__PURE__ */ joined(POLYESTER, {
    density: [1340, 1290, 1400, 'kg/m^3', PRINT_SHEETS, '5 products: 1290 to 1400'],
    modulus: [5.4, 4.6, 6.1, 'GPa', PRINT_SHEETS, '3 products: 4.7, 5.5 and 6.0'],
    modulusAcrossLayers: [
      2.7,
      1.9,
      3.8,
      'GPa',
      MAKERS_UPRIGHT,
      'two makers 2.16 upright over 4.73 and 3.56 over 5.48 GPa (annealed); a third in bending 2.25 over 5.45',
    ],
    tensileStrength: [72, 46, 100, 'MPa', PRINT_SHEETS, '4 products: quartiles 72, 74 and 78; 6 independent sets of two makers 46 to 102'],
    acrossLayersRatio: [0.33, 0.17, 0.48, '1', FLAT_AND_UPRIGHT, 'independent sets 0.18 to 0.42; three makers 28 to 35 over 74 MPa'],
    glassTransitionTemperature: [77, 70, 80, 'degC', PRINT_SHEETS, '3 products: 75, 79 and 79'],
    heatDeflectionTemperature045: [90, 74, 205, 'degC', PRINT_SHEETS, '4 products: 74 to 205, the high ones annealed'],
    heatDeflectionTemperature180: [72, 65, 182, 'degC', PRINT_SHEET_ROWS, '72 as printed with glass fibre, 182 annealed'],
    meltingTemperature: [250, 230, 258, 'degC', PRINT_SHEET_ROWS, 'where crystallised'],
    serviceTemperature: [65, 58, 150, 'degC', PRINT_ASSUMED, 'as printed'],
    moistureConditioned: [0.4, 0.25, 0.55, '%', MAKERS_ROWS, 'the sheets give 0.37 at 55 % and 0.53 at 70 % humidity'],
    poissonRatio: [0.34, 0.33, 0.38, '1', MIX_CARBON],
    specificHeat: [1030, 960, 1160, 'J/(kg K)', MIX_CARBON, '15 % of fibre'],
    thermalConductivity: [0.44, 0.2, 1.4, 'W/(m K)', MIX_CARBON, 'along the roads; 15 % of fibre, harmonic mean of the two bounds'],
    thermalExpansion: [12, 2.7, 43, 'ppm/K', MIX_CARBON, EXPANSION_BY_FIBRES],
    moistureSaturated: [0.51, 0.27, 0.81, '%', MIX_CARBON, 'the polymer alone takes up water'],
    thermalConductivityAcrossLayers: [
      0.5,
      0.2,
      0.56,
      'W/(m K)',
      GUARDED_PLATE,
      'the source gives 0.533 ± 0.021 through a printed plate; low end of the mixture',
    ],
    frictionOnSteel: [0.2, 0.1, 0.5, '1', CRC_POLYESTER, 'dry; the source gives 0.13 to 0.17; fibres wear the shaft'],
  }),
)

/** PET with short glass fibre, printed from filament; as printed it is a glass. */
export const petGf = /* @__PURE__ */ tableMaterial(
  /* @__PURE__ */ head('PET-GF', 'PET with short glass fibre', {
    family: 'amorphous',
    remark: 'as printed it is glassy and softens at its transition; annealed it crystallises and deflects far above',
  }),
  /* @__PURE__ */ joined(POLYESTER, {
    density: [1400, 1370, 1430, 'kg/m^3', PRINT_SHEETS, '3 products: 1380, 1390 and 1430'],
    modulus: [4.1, 3.2, 4.8, 'GPa', PRINT_SHEETS, '2 products: 4.1'],
    modulusAcrossLayers: [3.2, 2.2, 4.0, 'GPa', MAKERS_UPRIGHT, 'one maker 3.43 upright over 4.14 GPa'],
    tensileStrength: [69, 58, 76, 'MPa', PRINT_SHEETS, '4 products: quartiles 68, 71 and 72; two independent sets 61 and 71'],
    acrossLayersRatio: [0.4, 0.25, 0.65, '1', FLAT_AND_UPRIGHT, 'two independent sets 0.26 and 0.32; three makers 34 to 48 MPa upright'],
    glassTransitionTemperature: [72, 59, 80, 'degC', PRINT_SHEETS, '1 product: 59.5; with carbon fibre 75 to 79'],
    heatDeflectionTemperature045: [82, 75, 200, 'degC', PRINT_SHEET_ROWS, '81.6 as printed; annealed 120 to 200'],
    heatDeflectionTemperature180: [72, 65, 182, 'degC', PRINT_SHEET_ROWS, '71.8 as printed, 87.3 annealed'],
    meltingTemperature: [232, 225, 255, 'degC', PRINT_SHEET_ROWS, 'where crystallised'],
    serviceTemperature: [62, 52, 150, 'degC', PRINT_ASSUMED, 'as printed'],
    moistureConditioned: [0.3, 0.2, 0.4, '%', MAKERS_ROWS, 'the sheet gives 0.32 at 70 % humidity'],
    poissonRatio: [0.35, 0.32, 0.39, '1', MIX_GLASS],
    specificHeat: [1040, 950, 1160, 'J/(kg K)', MIX_GLASS, '15 % of fibre'],
    thermalConductivity: [0.25, 0.18, 0.28, 'W/(m K)', MIX_GLASS, 'along the roads; 15 % of fibre, harmonic mean of the two bounds'],
    thermalExpansion: [30, 12, 65, 'ppm/K', MIX_GLASS, EXPANSION_BY_FIBRES],
    moistureSaturated: [0.51, 0.24, 0.81, '%', MIX_GLASS, 'the polymer alone takes up water'],
    thermalConductivityAcrossLayers: [0.16, 0.08, 0.23, 'W/(m K)', MIX_GLASS, FLAT_FIBRES],
    frictionOnSteel: [0.2, 0.1, 0.5, '1', CRC_POLYESTER, 'dry; the source gives 0.14 to 0.16 with glass; fibres wear the shaft'],
  }),
)

/** Polylactide with short carbon fibre, printed from filament. */
export const plaCf = /* @__PURE__ */ tableMaterial(
  /* @__PURE__ */ head('PLA-CF', 'polylactide with short carbon fibre', { family: 'amorphous' }),
  /* @__PURE__ */ joined(POLYESTER, {
    density: [1250, 1200, 1340, 'kg/m^3', PRINT_SHEETS, '18 products: quartiles 1232, 1250 and 1290'],
    modulus: [3, 1.7, 4.5, 'GPa', PRINT_SHEETS, '8 products: quartiles 2.5, 2.9 and 3.5'],
    modulusAcrossLayers: [2.3, 1.4, 3.1, 'GPa', MAKERS_UPRIGHT, 'one maker 2.16 upright over 2.79 GPa'],
    tensileStrength: [42, 30, 54, 'MPa', PRINT_SHEETS, '9 products: quartiles 38, 41 and 44; two independent sets 33 and 53'],
    acrossLayersRatio: [0.47, 0.28, 0.72, '1', FLAT_AND_UPRIGHT, 'two independent sets 0.30 and 0.47; five makers 13 to 34 over 41 MPa'],
    creepCoefficient: [0.12, 0.04, 0.25, '1', PRINT_ASSUMED, '23 °C; as the unfilled polymer'],
    glassTransitionTemperature: [61, 58, 64, 'degC', PRINT_SHEETS, '7 products: quartiles 60, 62 and 62'],
    heatDeflectionTemperature045: [55, 53, 63, 'degC', PRINT_SHEETS, '10 products: quartiles 54, 55 and 59'],
    moistureConditioned: [0.42, 0.3, 0.55, '%', MAKERS_ROWS, 'the sheet gives 0.42 at 55 % humidity'],
    poissonRatio: [0.34, 0.31, 0.37, '1', MIX_CARBON],
    specificHeat: [1390, 1120, 1880, 'J/(kg K)', MIX_CARBON, '15 % of fibre'],
    thermalConductivity: [0.45, 0.15, 1.3, 'W/(m K)', MIX_CARBON, 'along the roads; 15 % of fibre, harmonic mean of the two bounds'],
    thermalExpansion: [17, 2.2, 85, 'ppm/K', MIX_CARBON, EXPANSION_BY_FIBRES],
    moistureSaturated: [0.72, 0.4, 0.9, '%', MIX_CARBON, 'the polymer alone takes up water'],
    thermalConductivityAcrossLayers: [0.2, 0.12, 0.38, 'W/(m K)', MIX_CARBON, FLAT_FIBRES],
    serviceTemperature: [48, 43, 60, 'degC', UNFILLED_LIMIT],
    modulusConditionedRatio: [0.99, 0.95, 1, '1', FILLED_AS_BASE, 'equilibrium at 50 % humidity over dry'],
    strengthConditionedRatio: [0.99, 0.95, 1, '1', FILLED_AS_BASE, 'equilibrium at 50 % humidity over dry'],
    modulusSaturatedRatio: [0.985, 0.92, 1, '1', FILLED_AS_BASE, 'soaked over dry, 21 °C'],
    strengthSaturatedRatio: [0.985, 0.92, 1, '1', FILLED_AS_BASE, 'soaked over dry, 21 °C'],
  }),
)

/** Polyamide 6 with short glass fibre, printed from filament; values dry unless the name includes conditioned or saturated. */
export const pa6Gf = /* @__PURE__ */ tableMaterial(
  /* @__PURE__ */ head('PA6-GF', 'polyamide 6 with short glass fibre, dry', {
    aliases: ['glass nylon', 'nylon glass fibre'],
    family: 'semicrystalline',
    strengthCurve: {
      points: [
        [23, 1, 1, 1],
        [60, 0.55, 0.68, 0.8],
        [80, 0.42, 0.56, 0.7],
        [120, 0.3, 0.42, 0.55],
        [160, 0.12, 0.25, 0.38],
        [215, 0, 0, 0.08],
      ],
      source: MOULDING_SHEETS,
      conditions: 'dry, along the roads, short-term',
    },
    modulusCurve: {
      points: [
        [23, 1, 1, 1],
        [60, 0.45, 0.6, 0.78],
        [80, 0.33, 0.46, 0.62],
        [120, 0.24, 0.36, 0.5],
        [160, 0.12, 0.26, 0.4],
        [215, 0, 0, 0.08],
      ],
      source: MOULDING_SHEETS,
      conditions: 'dry, along the roads, short-term',
    },
    remark: 'takes up water for months and loses about half of its stiffness',
  }),
  {
    density: [1310, 1160, 1370, 'kg/m^3', PRINT_SHEETS, '9 products: quartiles 1200, 1310 and 1340'],
    modulus: [4.3, 3, 5.4, 'GPa', PRINT_SHEETS, '4 products: quartiles 3.9, 4.3 and 4.7'],
    modulusAcrossLayers: [
      2.7,
      1.7,
      3.6,
      'GPa',
      MAKERS_UPRIGHT,
      'two makers 1.95 upright over 2.85 and 3.38 over 5.36 GPa; a third in bending 2.37 over 4.69',
    ],
    tensileStrength: [80, 62, 111, 'MPa', PRINT_SHEETS, '6 products: quartiles 76, 82 and 88; independent sets 66 (annealed) and 111'],
    acrossLayersRatio: [
      0.45,
      0.26,
      0.75,
      '1',
      FLAT_AND_UPRIGHT,
      'independent 0.28 (annealed) and 0.34; 3 makers 27, 61 and 61 over 82 MPa',
    ],
    interlayerShearRatio: LAYER_SHEAR_RATIO,
    strainLimit: FIBRE_STRAIN_LIMIT,
    strengthKept1000Hours: CRYSTALLINE_1000_HOURS,
    strengthKept1Year: CRYSTALLINE_1_YEAR,
    creepCoefficient: [0.15, 0.05, 0.3, '1', PRINT_ASSUMED, '23 °C, dry, along the roads'],
    creepExponent: [0.2, 0.12, 0.28, '1', PRINT_ASSUMED, '23 °C, dry'],
    activationEnergy: CRYSTALLINE_ACTIVATION,
    fatigueRatio: POLYMER_FATIGUE,
    glassTransitionTemperature: [68, 52, 71, 'degC', PRINT_SHEETS, '5 products: quartiles 67, 70 and 70'],
    glassTransitionConditioned: [15, 0, 35, 'degC', PRINT_ASSUMED, 'of the base polymer at 50 % humidity'],
    heatDeflectionTemperature045: [184, 164, 205, 'degC', PRINT_SHEETS, '10 products: quartiles 180, 184 and 191'],
    meltingTemperature: [221, 212, 226, 'degC', PRINT_SHEET_ROWS, 'the sheet of PA6 with carbon fibre gives 223'],
    thermalExpansion: [32, 20, 60, 'ppm/K', PA6_GLASS_SHEET, 'along the flow 30, across it 60'],
    thermalExpansionAcrossLayers: [145, 110, 220, 'ppm/K', FAUST, 'unfilled nylon 114 to 175, with carbon fibre 248'],
    emissivity: PLASTIC_EMISSIVITY,
    moistureConditioned: [2.3, 1.5, 2.8, '%', MAKERS_ROWS, 'the sheets give 2.56 at 55 % and 3.33 at 70 % humidity, 2 in saturated air'],
    moistureSaturated: [7, 4.5, 8.1, '%', PA6_GLASS_SOAKED, '4.57 after 48 h at 60 °C'],
    moistureDiffusivity: [4e-13, 1e-13, 2e-12, 'm^2/s', CRANK, '23 °C'],
    modulusConditionedRatio: [0.6, 0.4, 0.7, '1', PA6_GLASS_DAMP, 'moulded 0.63'],
    strengthConditionedRatio: [0.68, 0.5, 0.8, '1', PA6_GLASS_DAMP, 'moulded 0.69'],
    modulusSaturatedRatio: [0.335, 0.2, 0.5, '1', MAKERS_WET, 'with 4.57 % of water 0.335 along and 0.345 across the layers'],
    strengthSaturatedRatio: [0.5, 0.35, 0.62, '1', MAKERS_WET, 'with 4.57 % of water 0.50 along and 0.43 across the layers'],
    frictionOnSteel: [0.35, 0.15, 0.6, '1', FRICTION_MEMORY, 'dry; fibres wear the shaft'],
    frictionOnSteelGreased: GREASED_FRICTION,
    poissonRatio: [0.37, 0.34, 0.4, '1', MIX_GLASS],
    specificHeat: [1480, 1300, 1660, 'J/(kg K)', MIX_GLASS, '25 % of fibre'],
    thermalConductivity: [0.35, 0.26, 0.39, 'W/(m K)', MIX_GLASS, 'along the roads; 25 % of fibre, harmonic mean of the two bounds'],
    thermalConductivityAcrossLayers: [0.22, 0.12, 0.34, 'W/(m K)', MIX_GLASS, FLAT_FIBRES],
    serviceTemperature: [100, 85, 150, 'degC', CRAWFORD_FILLED],
    moistureSwelling: [0.22, 0.07, 0.4, '1', SWELLING_OF_FILLED],
  },
)
