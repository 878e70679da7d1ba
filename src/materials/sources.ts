import type { Source } from '../formula/index.js'

const published = (where: string): Source => ({ level: 'published', where })
const standard = (where: string): Source => ({ level: 'standard', where })
const computed = (where: string): Source => ({ level: 'computed', where })
const commonPractice = (where: string): Source => ({ level: 'commonPractice', where })
const unverified = (where: string): Source => ({ level: 'unverified', where })
const assumption = (where: string): Source => ({ level: 'assumption', where })

// Opened and read.
export const CRAWFORD = /* @__PURE__ */ published('Crawford, Plastics Engineering, 3rd ed., table 1.8')
export const DOWLING = /* @__PURE__ */ published('Dowling, Mechanical Behavior of Materials, 4th ed., table 5.2')
export const CRC_FRICTION = /* @__PURE__ */ published(
  'Shackelford & Alexander, CRC Materials Science and Engineering Handbook, 2001, table 399',
)
export const THERMAL_TABLE = /* @__PURE__ */ published(
  'table "Thermal Properties of Plastic Materials" (compiler not named; expansion, deflection temperatures, conductivity, service range)',
)
export const PRINTED_HDT = /* @__PURE__ */ published('printing service, table of heat deflection by ASTM D648 from makers of materials')
export const FRICTION_2025 = /* @__PURE__ */ published(
  'Materials Science-Poland 2025, doi 10.2478/msp-2025-0039, tables (printed PLA and PA6, dry sliding; counterface not stated in what was read)',
)
export const WEAR_2025 = /* @__PURE__ */ computed(
  'depth per distance over pressure, from Materials Science-Poland 2025, doi 10.2478/msp-2025-0039, table of friction and wear',
)
export const INTERLAYER_PLA = /* @__PURE__ */ published(
  '3D Printing and Additive Manufacturing, doi 10.1089/3dp.2020.0109, abstract (PLA across layers 22.8 MPa, 47.8 % below bulk filament)',
)
export const TPU_WATER = /* @__PURE__ */ published(
  'preprint 202604.1293, 2026, abstract (printed TPU 60A to 98A in saline; diffusivity and uptake)',
)
export const GUARDED_PLATE = /* @__PURE__ */ published(
  'Baraboi, Sova & Nastase 2026, Materials 19:2793, abstract (guarded hot plate on printed plates)',
)
export const ZMESKAL = /* @__PURE__ */ published('Zmeskal et al. 2020, AIP Conf. Proc. 2305:020022, abstract (printed PLA)')
export const RODRIGUEZ = /* @__PURE__ */ published('Rodriguez et al. 2023, Materials 16:7384, abstract (printed TPU)')
export const HELIYON = /* @__PURE__ */ published('Heliyon 2023, 9:e15023, table 6 (printed polymers)')
export const DANDREA = /* @__PURE__ */ published("D'Andrea et al. 2026, Procedia Structural Integrity 76 (printed PA12)")
export const FAUST = /* @__PURE__ */ published(
  'Faust et al. 2021, Polymers 13:3637, abstract (printed nylons, expansion and moisture growth)',
)
export const HOU = /* @__PURE__ */ published('Hou & Panesar 2025, Composites A 108528, abstract (moisture and printed short-fibre nylon)')
export const PEEK_PAPER = /* @__PURE__ */ published('review of PEEK in a Polymers paper on printed composites, introduction')
export const PET_GENERAL = /* @__PURE__ */ published('Encyclopedia of Physical Science and Technology, "Plastics Engineering", table I')
export const ASTM_D671 = /* @__PURE__ */ computed(
  'Goodman line on bending fatigue by ASTM D671 (1800 cycles/min, R = -1) tabulated by a moulder: stress for 1e6 cycles carried to R = 0.1',
)
export const MAGNET_SHEETS = /* @__PURE__ */ published('physical properties of sintered NdFeB as four magnet makers print them')
export const INCROPERA = /* @__PURE__ */ published('Incropera et al., Fundamentals of Heat and Mass Transfer, table A.1')
export const PHILPOT = /* @__PURE__ */ published('Philpot, Mechanics of Materials, 2017, table D.1b')
export const EMISSIVITY_TABLES = /* @__PURE__ */ published('three emissivity tables (after Thome 2008; two infrared-instrument manuals)')
export const CREEP_FIT = /* @__PURE__ */ unverified(
  'creep moduli at 1 h and 1000 h of moulded grades as data sheets to ISO 899-1 print them; coefficient and exponent computed from them',
)
export const ISO_898 = /* @__PURE__ */ standard(
  'ISO 898-1, mechanical properties by property class (read in reproductions of its load tables)',
)

export const ABS_NATURAL_MOISTURE = /* @__PURE__ */ computed(
  'Materials 2023, 16:938, abstract (ABS filament: 0.05 % of water for each 10 % of humidity)',
)
export const ABS_STOCK_SHEET = /* @__PURE__ */ published(
  'data sheet of ABS stock shapes (water by ASTM D570: 0.30 % in a day, 0.70 % at saturation; friction on steel 0.35)',
)

export const AM_DATABASE = /* @__PURE__ */ published(
  'additive.tools, open database of printed materials, page of the polymer (ranges over several papers, flat and upright)',
)
export const UPRIGHT_AM_DATABASE = /* @__PURE__ */ computed(
  'strength upright over flat, middle and ends of the ranges of additive.tools, open database of printed materials',
)
export const PROPERTY_DATABASE = /* @__PURE__ */ published(
  'MakeItFrom, database of material properties, page of the polymer (after Harper, Modern Plastics Handbook, 1999, and Brydson, Plastics Materials, 1999)',
)
export const PLASTICS_ENCYCLOPEDIA = /* @__PURE__ */ published(
  'Modern Plastics Encyclopedia 99, as maropolymeronline.com reproduces it (polypropylene)',
)
export const PP_STOCK_SHEET = /* @__PURE__ */ published('data sheet of PP stock shapes (ISO 527, DIN 53444, DIN 52612; friction on steel)')
export const PP_CREEP = /* @__PURE__ */ computed(
  'coefficient from 4 MPa at 1 % strain after 1000 h (DIN 53444) of a data sheet of PP stock shapes with 1.4 GPa at once; exponent unverified',
)
export const PETG_SHEET = /* @__PURE__ */ published(
  'data sheet of PETG sheet (ASTM D648: 69 °C at 1.8 MPa; D696: 68 ppm/K; D570: 0.2 % in a day; largest use 70 °C) and MakeItFrom, page PETG',
)
export const PC_MOULDING_SHEET = /* @__PURE__ */ published(
  'data sheet of an extrusion grade of PC (ISO 527: 2.4 GPa, 67 MPa; ISO 62: 0.12 and 0.30 %)',
)
export const PC_CREEP = /* @__PURE__ */ computed(
  'from 2.4 GPa at once, 2.2 after 1 h and 1.9 after 1000 h (ISO 899-1) of a data sheet of PC; a second sheet has the same 1.9 GPa',
)
export const PC_STOCK_SHEET = /* @__PURE__ */ published(
  'data sheet of PC stock shapes (glass transition 150 °C, 65 ppm/K, 130 °C at 1.8 MPa, 125 and 115 °C for 5000 and 20 000 h)',
)
export const POM_STOCK_SHEET = /* @__PURE__ */ published(
  'data sheet of POM-C rod (ISO 306, 75, 11359, 62; glass transition -65 °C, melting 166 °C)',
)
export const POM_CREEP = /* @__PURE__ */ computed(
  'from 2.85, 2.5 and 1.3 GPa at once, after 1 h and 1000 h (ISO 899-1) of a data sheet of POM-C; another grade 2.75, 2.4 and 1.2 GPa',
)
export const POM_WARM = /* @__PURE__ */ computed(
  'data sheet of POM-H: 68 MPa and 3.25 GPa at 23 °C, 31 MPa and 0.70 GPa at 100 °C (ASTM D638); the other points unverified',
)
export const ENGINEERING_PLASTICS = /* @__PURE__ */ published('Engineering Plastics Handbook, table 5.5 (acetal homopolymer and copolymer)')
export const ASA_GUIDE = /* @__PURE__ */ published('technical guide of a maker of ASA, table of six moulding grades (ISO 527, 75, 1183)')
export const POLYAMIDE_CONSTANTS = /* @__PURE__ */ published(
  'Brandrup & Immergut, Polymer Handbook, "Physical Constants of Various Polyamides" (water at saturation: PA6 9.5, PA12 1.6 %)',
)
export const PA6_OVERVIEW = /* @__PURE__ */ published(
  'page of a supplier on PA6 (water 3 % at 50 % humidity, 9.5 % soaked; glass transition from 50 °C dry to 0 °C)',
)
export const PA6_MOULDING_SHEET = /* @__PURE__ */ published(
  'data sheet of an unfilled PA6 moulding grade (ISO 11357: melting 225 °C; ISO 75: 160 and 60 °C; ISO 11359: 120 ppm/K)',
)
export const CAST_NYLON_SWELLING = /* @__PURE__ */ computed(
  "length change over water taken up: cast PA6 0.85 % at 2.5 % and 2.4 % at 7.2 % of water; a maker's page on PA6 2 % at 9 %",
)
export const FUSED_PA12_SHEET = /* @__PURE__ */ published(
  'technical fact sheet of fused PA12 (ASTM D638: 1.8 GPa and 48 MPa flat and upright, Poisson 0.43 to 0.47; melting 187 °C)',
)
export const ALUMINIUM_SHEET = /* @__PURE__ */ published('data sheets of 6061-T6 with the typical values of the Aluminum Association')
export const STAINLESS_SHEETS = /* @__PURE__ */ published(
  'data sheets of annealed bar and tube of the grade (ASTM A213 and A276 minimum strengths, physical properties)',
)
export const ALLOY_STEEL_SHEETS = /* @__PURE__ */ published(
  'data sheets of 4140 (42CrMo4): 7850 kg/m³, 205 GPa, Poisson 0.29, 42.7 W/(m K), 473 J/(kg K), 12.3 ppm/K',
)
export const SPRING_WIRE_PAGE = /* @__PURE__ */ published(
  'spring maker, page on EN 10270-1 (class SM, 2 mm: 1760 to 1970 MPa; 206 GPa; 7.85 kg/dm³; -30 to 100 °C)',
)
export const BRASS_SHEETS = /* @__PURE__ */ published(
  'data sheets of CW608N and CuZn40 (R410: 410 and 230 MPa; 102 GPa; 109 to 117 W/(m K); 20.4 to 21 ppm/K)',
)
export const EPOXY_SHEAR = /* @__PURE__ */ published(
  'Cusens & Smith 1980, The Structural Engineer 58A:1, abstract (four epoxies on steel, cured at 20 to 80 °C: at least 13 MPa)',
)
export const ANAEROBIC_SHEAR = /* @__PURE__ */ published(
  'page on ISO 10123 (pin and collar: some anaerobic adhesives reach about 3700 psi)',
)
export const ANAEROBIC_PRIMER = /* @__PURE__ */ published(
  'primer of a maker of anaerobic adhesives (working range -40 to 150 °C, special grades to 210 °C)',
)
export const PLASTIC_EMISSIVITIES = /* @__PURE__ */ published(
  'manual of an infrared thermometer, 8 to 14 µm at 70 °C (PVC 0.93, laminate 0.91, most organic materials about 0.95)',
)

export const PRINT_SHEETS = /* @__PURE__ */ published(
  'open data set h2c-materials (github.com/faridbnv, 2026), quartiles over makers’ sheets of printed bars; ends are the 5 and 95 % points',
)
export const PRINT_SHEET_ROWS = /* @__PURE__ */ published(
  'makers’ sheets of printed bars, row by row in the open data set h2c-materials (github.com/faridbnv, 2026)',
)
export const PRINT_SHEETS_RATIO = /* @__PURE__ */ computed(
  'upright over flat strength: medians of makers’ sheets (open data set h2c-materials, 2026) lessened by a quarter, because independent bars of PLA and PETG reach two thirds of their makers’ ratio (J. Carter, open data set tensile_test, 2026)',
)
export const FLAT_AND_UPRIGHT = /* @__PURE__ */ computed(
  'upright over flat strength of printed bars, 5 a set, three printers (J. Carter, open data set tensile_test, 2026) and of makers’ sheets (open data set h2c-materials, 2026)',
)
export const PRINTED_FATIGUE = /* @__PURE__ */ computed(
  'power law through the failures of 10 to 12 printed bars in tension (R = 0.05, 10 Hz, run-out at 1e6; a study quoted bar by bar in the open data set h2c-materials, 2026) over the static strength that the load levels are even shares of',
)
export const CRAWFORD_STRAIN = /* @__PURE__ */ published(
  'Crawford, Plastics Engineering, 3rd ed., p. 19 (design strain 1 % in general, about 0.5 % for brittle thermoplastics) and p. 64 (1.5 % for PP)',
)
export const ASA_MOULDING_SHEET = /* @__PURE__ */ published(
  'data sheet of a heat-resistant moulding grade of ASA (ISO 527: 2.5 GPa, 54 MPa; 0.17 W/(m K); 80 to 110 ppm/K; water 0.35 % at 50 % humidity, 1.65 % soaked; Vicat B50 104 °C)',
)
export const ASA_CREEP = /* @__PURE__ */ computed(
  'from 2.5 GPa at once and 1.25 GPa after 1000 h (ISO 527, ISO 899-1) of a data sheet of a moulding grade of ASA; exponent from the shape of ABS',
)

export const MAKERS_ROWS = /* @__PURE__ */ published(
  'makers’ sheets of printed bars, row by row in the open data set MonkeyTDS (github.com/Monkey-Machina, 2026)',
)
export const MAKERS_UPRIGHT = /* @__PURE__ */ computed(
  'modulus upright over flat of makers’ sheets of printed bars (ISO 527; open data sets MonkeyTDS and h2c-materials, 2026) times the modulus along the layers; too few makers for quantiles: the range takes in every one of them',
)
export const MAKERS_RATIO = /* @__PURE__ */ computed(
  'upright over flat strength of makers’ sheets of printed bars (ISO 527; open data set MonkeyTDS, 2026)',
)
export const MAKERS_WET = /* @__PURE__ */ computed(
  'wet or conditioned over dry, means of printed bars along the layers (ISO 527; dried or immersed at 60 °C for 48 h; makers’ sheets in the open data sets MonkeyTDS and h2c-materials, 2026)',
)
export const PETG_IMMERSED = /* @__PURE__ */ published(
  'maker’s test of moulded copolyester bars in water at 23 °C for a year, quoted in the open data set h2c-materials, 2026',
)
export const PLA_IMMERSED = /* @__PURE__ */ published(
  'Banjo et al. 2022, Composites C 7:100243, abstract (bending of printed PLA after 7 days in water at 21 and 70 °C)',
)
export const PRINT_TRIBOMETER = /* @__PURE__ */ published(
  'Polymers 2023, 15:4112, abstract and introduction (printed ABS, PC and PLA on a tribometer; dry, oil and grease)',
)
export const PA6_DAMP = /* @__PURE__ */ computed(
  'conditioned over dry (ISO 527) of data sheets: PA6 2.9 and 1.5 GPa, 80 and 50 MPa; PA66 3.1 and 1.4 GPa, 82 and 55 MPa; cast PA6 3.2 and 1.9 GPa',
)
export const PA6_GLASS_DAMP = /* @__PURE__ */ computed(
  'conditioned over dry (ISO 527) of a data sheet of glass-filled PA66: 9.0 and 5.7 GPa, 160 and 110 MPa',
)
export const PA6_GLASS_SHEET = /* @__PURE__ */ published(
  'data sheet of PA6 with 30 % of glass beads (ISO 11359, 30 to 100 °C; ISO 62-4: 2 % in saturated air)',
)
export const PA6_GLASS_SOAKED = /* @__PURE__ */ computed(
  'water of PA6 at saturation, 9.5 % (Brandrup & Immergut), in the 70 to 85 % by mass that is polymer',
)
export const PA12_DATABASE = /* @__PURE__ */ published(
  'Matmatch, database of materials, page PA12 (largest service temperature for long 70 to 80 °C)',
)
export const PA12_CAST_SHEET = /* @__PURE__ */ published(
  'data sheet of cast PA12 (moisture absorption 0.75 to 0.9 %, at saturation 1.0 to 1.1 %)',
)

// Read for the mixtures, the elastomers and the directions of prints.
export const MIX_CARBON = /* @__PURE__ */ computed(
  'mixture relations of this library (fibreVolumeShare, ruleOfMixtures, halpinTsai, fibreExpansion), 15 % by mass of carbon fibre (10 to 20 % in the names of filaments; 1760 kg/m³, 230 GPa, 795 J/(kg K), 10.5 W/(m K), -0.41 ppm/K: data sheet of a standard PAN fibre; Poisson’s ratio 0.2 and 14 GPa across: Michigan Technological University, properties of selected fibres) in the unfilled polymer of this table',
)
export const MIX_GLASS = /* @__PURE__ */ computed(
  'mixture relations of this library (fibreVolumeShare, ruleOfMixtures, halpinTsai, fibreExpansion), short E-glass (5 to 30 % in the names of filaments; 2540 kg/m³, 72.4 GPa, 840 J/(kg K), 1.3 W/(m K), 5 ppm/K: Hyer 1998 as a text on fibre-reinforced strengthening quotes it; Poisson’s ratio 0.2) in the unfilled polymer of this table',
)
export const FILLED_AS_BASE = /* @__PURE__ */ computed(
  'between no change and that of the unfilled polymer in this table, because the fibres take up no water and do not creep',
)
export const UNFILLED_LIMIT = /* @__PURE__ */ published(
  'limit of the unfilled polymer in this table, below which short fibres do not bring it',
)
export const CRAWFORD_FILLED = /* @__PURE__ */ published(
  'Crawford, Plastics Engineering, 3rd ed., table 1.8, nylon 66 with 33 % of glass (largest operating temperature 100 °C)',
)
export const CARDS = /* @__PURE__ */ published(
  'open material cards of FreeCAD (github.com/FreeCAD/FreeCAD, 2026), averages of a database of makers’ sheets',
)
export const MTU = /* @__PURE__ */ published(
  'Michigan Technological University, table of selected fibres and matrices (PEEK: 3.6 GPa, Poisson’s ratio 0.37)',
)
export const AES_CARD = /* @__PURE__ */ published(
  'values of its two nearest kin: ABS 0.35 (Dowling, table 5.2) and 0.39 to 0.42, AES 0.39 to 0.41 (cards of a materials database, estimates)',
)
export const SAN_HEAT = /* @__PURE__ */ published(
  'Crawford, Plastics Engineering, 3rd ed., table 1.8: SAN, of which ASA is made, and ABS, both 1300 J/(kg K)',
)
export const HALF_ANISOTROPY = /* @__PURE__ */ computed(
  'three quarters of that along the layers; half of it to all of it (Prog. Addit. Manuf. 2019, s40964-019-00098-2, abstract)',
)
export const LAYER_CRITERIA = /* @__PURE__ */ computed('von Mises, 1/√3; ends: Tresca, 1/2, and the largest principal stress, 1')
export const ADDITIVE_SWELLING = /* @__PURE__ */ computed(
  'three quarters of additiveSwelling, half of it to all of it: PA6 in water reaches 0.58 to 0.89, dried epoxy grows by 0.93 % in volume for 1 % of water (Berry & Pritchet 1984, IBM J. Res. Dev. 28:662, abstract)',
)
export const SWELLING_OF_FILLED = /* @__PURE__ */ computed('half of additiveSwelling: nearly none along the fibres, all of it across them')
export const HALF_OF_SATURATION = /* @__PURE__ */ computed(
  'half of what it takes up in water: uptake in proportion to humidity, as ABS shows it (Materials 2023, 16:938, abstract)',
)
export const URETHANE_DATA = /* @__PURE__ */ published(
  'thermal data of polymers by a maker of instruments, entry TPU (1.10 to 1.25 g/cm³, 1.85 J/(g K), 130 to 180 ppm/K)',
)
export const LI_2026 = /* @__PURE__ */ published(
  'Li et al. 2026, Procedia Structural Integrity 77:316, figure 3 (printed PLA in water: content to 0.9 %)',
)
export const CRC_POLYESTER = /* @__PURE__ */ published(
  'Shackelford & Alexander, CRC Materials Science and Engineering Handbook, 2001, table 399 (moulded thermoplastic polyester on steel 0.13, glass reinforced 0.14, by ASTM D1894 0.16 and 0.17)',
)

// Believed, not opened.
export const FFF_CONSENSUS = /* @__PURE__ */ unverified(
  'data sheets and papers on fused-filament printing taken together; none opened for this value',
)
export const SLS_CONSENSUS = /* @__PURE__ */ unverified('data sheets of sintered PA12 taken together; none opened for this value')
export const POLYMER_HANDBOOKS = /* @__PURE__ */ unverified('polymer handbooks (Brandrup & Immergut; Mark; Domininghaus)')
export const MOULDING_SHEETS = /* @__PURE__ */ unverified('data sheets of moulding grades to ISO 10350-1')
export const PLASTICS_PRACTICE = /* @__PURE__ */ unverified(
  'BS 4618 and plastics design practice: share of short-term strength for long loads',
)
export const FATIGUE_PRACTICE = /* @__PURE__ */ unverified(
  'polymer fatigue practice: 15 to 30 % of tensile strength at 1e6 cycles, R = 0.1',
)
export const METALS_HANDBOOK = /* @__PURE__ */ unverified('ASM Metals Handbook')
export const BOLTS_WARM = /* @__PURE__ */ unverified('ISO 898-1:1988, yield stress at elevated temperature by property class')
export const STAINLESS_WARM = /* @__PURE__ */ unverified(
  'EN 10028-7, 0.2 % proof strength of 1.4301 and 1.4401 at elevated temperature; modulus EN 10088-1',
)
export const ALUMINIUM_WARM = /* @__PURE__ */ unverified(
  'Aluminum Association, typical yield strength of 6061-T6 at temperature; modulus EN 1999-1-2',
)
export const METALS_STANDARD = /* @__PURE__ */ unverified('product standards of the alloy (EN 755-2, EN 10088, EN 10270, EN 12164)')
export const CRANK = /* @__PURE__ */ unverified('water diffusion in polymers, papers and handbooks taken together')
export const SHIFT_MEMORY = /* @__PURE__ */ unverified(
  'activation energies of glassy polymers below the glass transition, 100 to 250 kJ/mol',
)
export const FRICTION_MEMORY = /* @__PURE__ */ unverified('friction of plastics on steel, handbooks taken together')
export const GREASE_PRACTICE = /* @__PURE__ */ commonPractice('greased polymer on steel')
export const BEARING_MEMORY = /* @__PURE__ */ unverified(
  'plain-bearing handbooks: limiting pressure times speed, unlubricated; wear factors',
)
export const ADHESIVE_MEMORY = /* @__PURE__ */ unverified('adhesive handbooks and data sheets taken together')

export const CRYSTALLINE_SHIFT = /* @__PURE__ */ unverified(
  'creep curves of moulded acetal, PP and polyamide at 23 to 80 °C: creep over the short-term strain at the same temperature hardly depends on it',
)

// Ours.
export const PRINT_ASSUMED = /* @__PURE__ */ assumption('taken from the unfilled or moulded polymer; no measurement of prints was found')
export const DRY_ASSUMED = /* @__PURE__ */ assumption('hardly hygroscopic: a few per cent at most')
