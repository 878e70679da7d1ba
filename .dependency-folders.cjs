// Groups of files in each large folder, from the bottom up: a file imports only its own group and those before it. `rest` holds what no other group names.
const rest = undefined

module.exports = {
  // Inputs import no formula, a formula imports no drive, and a drive imports nothing that sizes or compares it.
  capstan: {
    inputs: '[a-z-]*inputs',
    formulas: rest,
    drive: 'drive[a-z-]*|friction-range|tension-notes|travel-survey',
    proposals: 'propose[a-z-]*|compare[a-z-]*|charts',
  },
  // Vectors import no mechanism, and the leg in one pose imports no stride.
  kinematics: {
    inputs: 'robot-inputs|link-inputs|four-bar-inputs|knee-drive-inputs',
    vectors: 'vectors|matrix3|columns|rotation-error|damped-rates|longest-sum',
    formulas: rest,
    chain: 'chain[a-z-]*|frames|joint-move',
    leg: 'leg[a-z-]*|coupling[a-z-]*|manipulability|workspace|workspace-section|link-compliance|foot-error|foot-stiffness|floating-robot[a-z-]*',
    stride: 'stride-follower|stride-samples|stride-demand|stride-inputs|stride-table|motor-demand',
    charts: 'charts',
  },
  // Records of the table import no formula. The allowable values at a temperature and a time need both.
  materials: {
    inputs: '[a-z-]*inputs',
    records:
      'record|record-checks|property-kinds|conditions|range-ends|evidence|names|sources|temperature-curve|lookup|plausibility|own-properties',
    formulas: rest,
    allowable: 'notes|strength-parts|strength-numbers|stiffness-numbers|warm-time|allowable|stiffness|friction|service|wall-moisture',
    creepCurves: 'creep-curves|creep-fit|creep-readings|histories',
    documents: 'document|material-schema|coupons|coupon-samples',
    charts: 'charts',
  },
  // Rows of standards come first, then formulas of one joint, then the proposals and comparisons that use them.
  fasteners: {
    inputs: '[a-z-]*inputs',
    tables: 'size-table|iso286-tables',
    formulas: rest,
    proposals: 'propose-[a-z-]*|remedies|charts',
  },
  // A network of nodes imports no motor. The mount makes a network of a motor. Limits of operation and remedies use the mount.
  thermal: {
    inputs: '[a-z-]*inputs',
    formulas: rest,
    network:
      'network[a-z-]*|course-extremes|reach|uncertain|must-be-made|limits|duty|duty-cycle|intermittent-duty|time-to-limit|temperature-log|step-response|calibrat[a-z-]*',
    mount:
      'surface|surface-coefficient|cooling-laws|mount|mount-specification|mount-board|mount-factors|mount-nodes|mount-paths|mount-loads|mount-film|motor-heat|motor-balance|motor-stall|runaway-torque|torque-limits',
    operating: 'operating|operating-duty|remedies|standard-remedies|propose[a-z-]*|charts',
  },
  // Tables and results import no search, a search imports no formula, and each study connects the two.
  study: {
    results:
      'path|show|options|table[a-z-]*|scatter|node|block-file|residuals|uncertainty-result|failure-result|failure-chances-result|fit-result|robust-result|optimum',
    searches:
      'search|search-problem|evolve|crossover|fronts|local-descent|quadratic-step|unit-box|option-search|fit-search|kriging|correlation|share-bound',
    models:
      'model|distribution|uncertain-model|constraints|design|design-axis|design-choice|robust-limits|row-loop|sweep|limit-state|limit-states|scenario',
    studies: rest,
  },
  // Special functions and solvers import errors, roots and linear algebra alone. Probability needs functions, and samples need probability.
  numeric: {
    errors: 'error',
    algebra: 'linear|definite|orthogonal|cubic|root|simplex|interpolate',
    functions: 'chebyshev|coefficients|bessel|gamma|beta|erf|mittag-leffler',
    solvers: rest,
    probability: 'distributions|quantiles',
    samples: 'random|sampling|sobol-numbers',
  },
  // Shapes import no layout, and a layout imports no file format.
  drawing: {
    shapes: 'geometry|font|numbers|items|hatch|path|arrows',
    layout: 'labels|dimensions|view|view-layout|drawing',
    formats: 'style|svg|dxf[a-z-]*',
    figures: 'figure|bars|plot|template',
  },
}
