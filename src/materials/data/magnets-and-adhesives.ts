import {
  ADHESIVE_MEMORY,
  ANAEROBIC_PRIMER,
  ANAEROBIC_SHEAR,
  CRAWFORD,
  DOWLING,
  EMISSIVITY_TABLES,
  EPOXY_SHEAR,
  MAGNET_SHEETS,
} from '../sources.js'
import { tableMaterial } from '../table-material.js'

/** Sintered neodymium-iron-boron magnet of the plain grades (no temperature suffix). */
export const ndfeb = /* @__PURE__ */ tableMaterial(
  {
    name: 'NdFeB',
    title: 'sintered neodymium-iron-boron magnet, plain grade',
    aliases: ['neodymium', 'neodymium magnet', 'magnet'],
    family: 'magnet',
    process: 'sintered',
    remarks: [
      'brittle: glue it, never press it; chips fly when magnets jump together',
      'suffix M works to 100 °C, H 120 °C, SH 150 °C; the limit falls with the working point',
    ],
  },
  {
    density: [7500, 7400, 7800, 'kg/m^3', MAGNET_SHEETS],
    modulus: [160, 150, 160, 'GPa', MAGNET_SHEETS],
    poissonRatio: [0.24, 0.22, 0.26, '1', MAGNET_SHEETS],
    tensileStrength: [80, 60, 90, 'MPa', MAGNET_SHEETS, 'brittle; scatter is wide'],
    flexuralStrength: [290, 250, 400, 'MPa', MAGNET_SHEETS],
    serviceTemperature: [80, 70, 80, 'degC', MAGNET_SHEETS, 'plain grade'],
    thermalConductivity: [8, 6, 10, 'W/(m K)', MAGNET_SHEETS],
    specificHeat: [450, 350, 502, 'J/(kg K)', MAGNET_SHEETS],
    thermalExpansion: [-1.5, -4.8, -0.8, 'ppm/K', MAGNET_SHEETS, 'across the magnetisation: it shrinks when warmed'],
    thermalExpansionAcrossLayers: [5.2, 3.4, 6.5, 'ppm/K', MAGNET_SHEETS, 'along the magnetisation'],
    emissivity: [0.3, 0.1, 0.6, '1', EMISSIVITY_TABLES, 'nickel plated; bare is higher'],
  },
)

/** Two-part structural epoxy, cured at room temperature. */
export const epoxy = /* @__PURE__ */ tableMaterial(
  {
    name: 'epoxy',
    title: 'two-part structural epoxy, cured at room temperature',
    aliases: ['epoxy resin', 'two-part epoxy'],
    family: 'adhesive',
    process: 'cured',
    strengthCurve: {
      points: [
        [23, 1, 1, 1],
        [45, 0.35, 0.5, 0.7],
        [65, 0, 0.05, 0.35],
        [80, 0, 0, 0.1],
      ],
      source: ADHESIVE_MEMORY,
      conditions: 'half at 10 K below the glass transition, gone at 10 K above',
    },
    remarks: ['never the sole retention of a loaded part; sensitises skin: gloves and air', 'a hot cure lifts the glass transition'],
  },
  {
    density: [1200, 1100, 1300, 'kg/m^3', CRAWFORD],
    modulus: [2.8, 1.5, 3.5, 'GPa', DOWLING, 'the source gives 3.5'],
    poissonRatio: [0.35, 0.33, 0.4, '1', DOWLING, 'the source gives 0.33'],
    tensileStrength: [40, 25, 60, 'MPa', ADHESIVE_MEMORY],
    shearStrength: [15, 8, 25, 'MPa', EPOXY_SHEAR, 'on clean steel, the source has at least 13; on prints the layers fail at 3 to 8'],
    strengthKept1000Hours: [0.4, 0.3, 0.5, '1', ADHESIVE_MEMORY, 'steady load, 23 °C'],
    strengthKept1Year: [0.25, 0.15, 0.35, '1', ADHESIVE_MEMORY, 'steady load, 23 °C, with ageing'],
    strengthConditionedRatio: [0.9, 0.8, 1, '1', ADHESIVE_MEMORY],
    strengthSaturatedRatio: [0.7, 0.5, 0.85, '1', ADHESIVE_MEMORY],
    fatigueRatio: [0.25, 0.2, 0.3, '1', ADHESIVE_MEMORY],
    glassTransitionTemperature: [55, 45, 65, 'degC', ADHESIVE_MEMORY, 'cured at room temperature'],
    serviceTemperature: [50, 42, 60, 'degC', ADHESIVE_MEMORY, 'cured at room temperature; a hot cure lifts it to 80 to 120'],
    thermalConductivity: [0.23, 0.18, 0.3, 'W/(m K)', CRAWFORD],
    specificHeat: [1000, 800, 1300, 'J/(kg K)', CRAWFORD, 'the source gives 800'],
    thermalExpansion: [70, 50, 90, 'ppm/K', CRAWFORD],
  },
)

/** Anaerobic retaining compound between metal parts. */
export const anaerobic = /* @__PURE__ */ tableMaterial(
  {
    name: 'anaerobic',
    title: 'anaerobic retaining compound, metal on metal',
    aliases: ['retaining compound', 'threadlocker', 'anaerobic adhesive'],
    family: 'adhesive',
    process: 'cured',
    strengthCurve: {
      points: [
        [23, 1, 1, 1],
        [80, 0.55, 0.7, 0.8],
        [120, 0.4, 0.5, 0.6],
        [150, 0.25, 0.35, 0.45],
        [180, 0, 0.1, 0.25],
      ],
      source: ADHESIVE_MEMORY,
      conditions: 'standard grade',
    },
    remarks: [
      'cures between metals only, and stress-cracks ABS, PC and other glassy plastics',
      'never the sole retention of a loaded part',
    ],
  },
  {
    density: [1100, 1050, 1200, 'kg/m^3', ADHESIVE_MEMORY],
    modulus: [1.2, 0.5, 2, 'GPa', ADHESIVE_MEMORY],
    poissonRatio: [0.4, 0.35, 0.45, '1', ADHESIVE_MEMORY],
    shearStrength: [
      22,
      15,
      30,
      'MPa',
      ANAEROBIC_SHEAR,
      'steel on steel, gap 0.02 to 0.10 mm; strong grades 25; stainless, aluminium 0.5 to 0.8',
    ],
    strengthKept1000Hours: [0.5, 0.4, 0.6, '1', ADHESIVE_MEMORY],
    strengthKept1Year: [0.4, 0.3, 0.5, '1', ADHESIVE_MEMORY, 'with ageing'],
    strengthConditionedRatio: [0.95, 0.85, 1, '1', ADHESIVE_MEMORY],
    strengthSaturatedRatio: [0.75, 0.6, 0.9, '1', ADHESIVE_MEMORY],
    fatigueRatio: [0.25, 0.2, 0.3, '1', ADHESIVE_MEMORY],
    serviceTemperature: [140, 120, 150, 'degC', ANAEROBIC_PRIMER],
    thermalConductivity: [0.15, 0.1, 0.2, 'W/(m K)', ADHESIVE_MEMORY],
    thermalExpansion: [80, 60, 100, 'ppm/K', ADHESIVE_MEMORY],
  },
)
